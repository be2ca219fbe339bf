import type { OpenShop } from '../../storage/context.ts';

/** What was taken off last on an order and is not struck out. */
export async function lastRemovalId(db: OpenShop['read'], orderId: string): Promise<string | null> {
  const row = await db
    .selectFrom('removal')
    .select('id')
    .where('order_id', '=', orderId)
    .where('struck_reason', 'is', null)
    .where('done_at', 'is not', null)
    .orderBy('done_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.id ?? null;
}
