import type { OpenShop } from '../../storage/context.ts';
import type { RemovalCutRow, RemovalFaceRow } from '../../storage/tables.ts';

/** What the given removals took: off the edges, from the fade outwards, and off the faces. */
export interface RemovalParts {
  cuts: RemovalCutRow[];
  faces: RemovalFaceRow[];
}

export async function removalParts(
  db: OpenShop['read'],
  removals: readonly { id: string }[],
): Promise<RemovalParts> {
  if (removals.length === 0) return { cuts: [], faces: [] };
  const ids = removals.map(({ id }) => id);
  const cuts = await db
    .selectFrom('removal_cut')
    .selectAll()
    .where('removal_id', 'in', ids)
    .orderBy('limb', 'desc')
    .orderBy('from_fade_in')
    .execute();
  const faces = await db
    .selectFrom('removal_face')
    .selectAll()
    .where('removal_id', 'in', ids)
    .orderBy('limb', 'desc')
    .orderBy('face')
    .execute();
  return { cuts, faces };
}
