import type { OpenShop } from '../../storage/context.ts';
import type { UndershootRow } from '../../storage/tables.ts';

/** Offers of an order, in the order they were made, struck-out ones too. */
export async function storedUndershoots(
  db: OpenShop['read'],
  orderId: string,
): Promise<UndershootRow[]> {
  return db
    .selectFrom('undershoot')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('proposed_at')
    .orderBy('id')
    .execute();
}
