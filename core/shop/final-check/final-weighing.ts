import type { OpenShop } from '../../storage/context.ts';
import { lastBiteAt } from './last-work.ts';

/** No weighing of the phase "final" since the last bite, the struck-out ones not counted. */
export async function finalWeighingMissing(
  db: OpenShop['read'],
  orderId: string,
): Promise<boolean> {
  const weighing = await db
    .selectFrom('reading')
    .select('id')
    .where('order_id', '=', orderId)
    .where('phase', '=', 'final')
    .where('struck_reason', 'is', null)
    .where('weighed_at', '>', (await lastBiteAt(db, orderId)) ?? '')
    .executeTakeFirst();
  return weighing === undefined;
}
