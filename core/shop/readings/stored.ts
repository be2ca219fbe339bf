import type { OpenShop } from '../../storage/context.ts';
import type { ReadingRow } from '../../storage/tables.ts';
import type { Pull } from './weights.ts';

export interface StoredReading extends ReadingRow {
  pulls: Pull[];
}

async function readingsWhere(
  db: OpenShop['read'],
  column: 'order_id' | 'bow_id',
  ids: readonly string[],
): Promise<StoredReading[]> {
  if (ids.length === 0) return [];
  const rows = await db
    .selectFrom('reading')
    .selectAll()
    .where(column, 'in', ids)
    .orderBy('weighed_at')
    .orderBy('id')
    .execute();
  const pulls = await db
    .selectFrom('reading_pull')
    .innerJoin('reading', 'reading.id', 'reading_pull.reading_id')
    .select(['reading_pull.reading_id', 'reading_pull.draw_in', 'reading_pull.force_lbf'])
    .where(`reading.${column}`, 'in', ids)
    .orderBy('reading_pull.position')
    .execute();
  const byReading = Map.groupBy(pulls, (pull) => pull.reading_id);
  return rows.map((row) => ({
    ...row,
    pulls: (byReading.get(row.id) ?? []).map((pull) => ({
      drawIn: pull.draw_in,
      forceLbf: pull.force_lbf - row.rig_zero_lbf,
    })),
  }));
}

/** Weighings of the given orders with their pulls, oldest first. The rig's zero is taken off. */
export function storedReadings(
  db: OpenShop['read'],
  orderIds: readonly string[],
): Promise<StoredReading[]> {
  return readingsWhere(db, 'order_id', orderIds);
}

/** Weighings of one bow across all its orders, as {@link storedReadings} gives them. */
export function storedReadingsOfBow(db: OpenShop['read'], bowId: string): Promise<StoredReading[]> {
  return readingsWhere(db, 'bow_id', [bowId]);
}
