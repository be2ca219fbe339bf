import type { OpenShop } from '../../storage/context.ts';
import type { ReadingRow } from '../../storage/tables.ts';
import type { Pull } from './weights.ts';

export interface StoredReading extends ReadingRow {
  pulls: Pull[];
}

/** Weighings of the given orders with their pulls, oldest first. The rig's zero is taken off. */
export async function storedReadings(
  db: OpenShop['read'],
  orderIds: readonly string[],
): Promise<StoredReading[]> {
  if (orderIds.length === 0) return [];
  const rows = await db
    .selectFrom('reading')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .orderBy('weighed_at')
    .orderBy('id')
    .execute();
  const pulls = await db
    .selectFrom('reading_pull')
    .innerJoin('reading', 'reading.id', 'reading_pull.reading_id')
    .select(['reading_pull.reading_id', 'reading_pull.draw_in', 'reading_pull.force_lbf'])
    .where('reading.order_id', 'in', orderIds)
    .orderBy('reading_pull.position')
    .execute();
  return rows.map((row) => ({
    ...row,
    pulls: pulls
      .filter((pull) => pull.reading_id === row.id)
      .map((pull) => ({ drawIn: pull.draw_in, forceLbf: pull.force_lbf - row.rig_zero_lbf })),
  }));
}
