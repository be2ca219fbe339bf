import { limbs } from '../../../shared/bows.ts';
import type { LimbOutline } from '../../../shared/contract/inscriptions.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';

/** How wide the limbs of an order's bow are, as last measured and still standing. */
export async function outlinesOf(db: OpenShop['read'], order: OrderRow): Promise<LimbOutline[]> {
  if (order.bow_id === null) return [];
  const version = await db
    .selectFrom('geometry')
    .select('id')
    .where('bow_id', '=', order.bow_id)
    .where('struck_reason', 'is', null)
    .where('limb_set_id', 'is', order.limb_set_id)
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (version === undefined) return [];
  const rows = await db
    .selectFrom('geometry_station')
    .select(['limb', 'from_fade_in', 'width_in'])
    .where('geometry_id', '=', version.id)
    .orderBy('from_fade_in')
    .execute();
  return limbs
    .map((limb) => ({
      limb,
      stations: rows
        .filter((row) => row.limb === limb)
        .slice(0, 200)
        .map((row) => ({ fromFadeIn: row.from_fade_in, widthIn: row.width_in })),
    }))
    .filter(({ stations }) => stations.length > 0);
}
