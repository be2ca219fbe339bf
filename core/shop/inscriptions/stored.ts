import type {
  InscriptionLayout,
  InscriptionLayoutRecord,
} from '../../../shared/contract/inscriptions.ts';
import type { InscriptionRow } from '../../storage/agreement-tables.ts';
import type { OpenShop } from '../../storage/context.ts';

type Db = OpenShop['read'];

/** Layouts of the given orders, by order; an order has one at most. */
export async function storedLayouts(
  db: Db,
  orderIds: readonly string[],
): Promise<Map<string, InscriptionRow>> {
  const rows = await db
    .selectFrom('inscription')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .execute();
  return new Map(rows.map((row) => [row.order_id, row]));
}

export async function storedLayout(db: Db, orderId: string): Promise<InscriptionRow | null> {
  return (await storedLayouts(db, [orderId])).get(orderId) ?? null;
}

export function layoutColumns(layout: InscriptionLayout) {
  return {
    position: layout.position,
    maker_mark: layout.makerMark,
    surface: layout.surface,
    manner: layout.manner,
    ink: layout.ink,
    letter_height_in: layout.letterHeightIn,
    old_marking: layout.oldMarking,
    note: layout.note,
  };
}

/** How and where the lines of an order are put on the bow, or null until somebody says. */
export async function layoutOf(
  shop: OpenShop,
  orderId: string,
): Promise<InscriptionLayoutRecord | null> {
  const row = await storedLayout(shop.read, orderId);
  if (row === null) return null;
  const person = await shop.read
    .selectFrom('person')
    .select('name')
    .where('id', '=', row.person_id)
    .executeTakeFirst();
  return {
    id: row.id,
    rowVersion: row.row_version,
    position: row.position,
    makerMark: row.maker_mark,
    surface: row.surface,
    manner: row.manner,
    ink: row.ink,
    letterHeightIn: row.letter_height_in,
    oldMarking: row.old_marking,
    note: row.note,
    recordedAt: row.recorded_at,
    personName: person?.name ?? '',
  };
}
