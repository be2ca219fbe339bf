import type { RemovalRecord } from '../../../shared/contract/bench-records.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../storage/tables.ts';
import { removalParts } from './removal-parts.ts';
import { storedRemovalWords } from './removal-words.ts';

/** A removal with everything it took, cuts from the fade outwards. */
export interface StoredRemoval extends RemovalRow {
  cuts: RemovalCutRow[];
  faces: RemovalFaceRow[];
}

/** Removals of an order in the order they were done, the struck-out ones too. */
export async function storedRemovals(
  db: OpenShop['read'],
  orderId: string,
): Promise<StoredRemoval[]> {
  const rows = await db
    .selectFrom('removal')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('planned_at')
    .orderBy('id')
    .execute();
  const { cuts, faces } = await removalParts(db, rows);
  return rows.map((row) => ({
    ...row,
    cuts: cuts.filter((cut) => cut.removal_id === row.id),
    faces: faces.filter((face) => face.removal_id === row.id),
  }));
}

export async function removalsOf(shop: OpenShop, orderId: string): Promise<RemovalRecord[]> {
  const rows = await storedRemovals(shop.read, orderId);
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return rows.toReversed().map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    method: row.method,
    words: storedRemovalWords(row, row.cuts, row.faces).slice(0, 600),
    note: row.note,
    at: row.done_at ?? row.planned_at,
    remeasuredAt: row.remeasured_at,
    personName: names.get(row.person_id) ?? '',
    struckReason: row.struck_reason,
  }));
}
