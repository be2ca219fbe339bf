import type { OpenShop } from '../../storage/context.ts';
import type { FindingRow } from '../../storage/tables.ts';

/** Findings noted on one order, in the order they were recorded. */
export async function storedFindings(db: OpenShop['read'], orderId: string): Promise<FindingRow[]> {
  return db
    .selectFrom('finding')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('id')
    .execute();
}
