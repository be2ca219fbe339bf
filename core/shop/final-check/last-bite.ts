import type { OpenShop } from '../../storage/context.ts';

/** Instant of the last bite of an order, the struck-out ones not counted; null where there is none. */
export async function lastBiteAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  const bite = await db
    .selectFrom('entry')
    .select((eb) => eb.fn.max('recorded_at').as('at'))
    .where('order_id', '=', orderId)
    .where('item', '=', 'removal')
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  return bite?.at ?? null;
}
