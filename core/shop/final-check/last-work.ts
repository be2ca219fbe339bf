import type { EntryItem } from '../../../shared/entries.ts';
import type { OpenShop } from '../../storage/context.ts';

async function lastAt(
  db: OpenShop['read'],
  orderId: string,
  items: readonly EntryItem[],
): Promise<string | null> {
  const last = await db
    .selectFrom('entry')
    .select((eb) => eb.fn.max('recorded_at').as('at'))
    .where('order_id', '=', orderId)
    .where('item', 'in', items)
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  return last?.at ?? null;
}

/** Instant of the last bite of an order, the struck-out ones not counted; null where there is none. */
export function lastBiteAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  return lastAt(db, orderId, ['removal']);
}

/** Instant of the last bite or coat: what was looked over before it must be looked over again. */
export function lastWorkAt(db: OpenShop['read'], orderId: string): Promise<string | null> {
  return lastAt(db, orderId, ['removal', 'coat', 'first-clear']);
}
