import type { HoldDetail, Reminder } from '../../../shared/contract/holds.ts';
import type { WaitingPolicy } from '../../../shared/waiting-policy.ts';
import type { OpenShop } from '../../storage/context.ts';
import { waitingPolicyOf } from '../setup/shop.ts';
import { holdOf } from './cards.ts';
import { ladderOf } from './hold-days.ts';

/** How long the shop waits for its customers, as it says now. */
export async function waitingPolicyNow(db: OpenShop['read']): Promise<WaitingPolicy> {
  return waitingPolicyOf(await db.selectFrom('shop').selectAll().executeTakeFirstOrThrow());
}

async function remindersOf(shop: OpenShop, orderId: string): Promise<Map<string, Reminder[]>> {
  const rows = await shop.read
    .selectFrom('reminder')
    .innerJoin('hold', 'hold.id', 'reminder.hold_id')
    .innerJoin('person', 'person.id', 'reminder.person_id')
    .selectAll('reminder')
    .select('person.name as person_name')
    .where('hold.order_id', '=', orderId)
    .orderBy('reminder.sent_at')
    .orderBy('reminder.id')
    .execute();
  const told = rows.map((row) => ({
    holdId: row.hold_id,
    reminder: {
      id: row.id,
      sentAt: row.sent_at,
      how: row.how,
      note: row.note,
      personName: row.person_name,
    },
  }));
  const byHold = Map.groupBy(told, (each) => each.holdId);
  return new Map([...byHold].map(([id, list]) => [id, list.map((each) => each.reminder)]));
}

/** Holds of an order, newest first, with their ladders and what was sent. */
export async function holdsOf(shop: OpenShop, orderId: string): Promise<HoldDetail[]> {
  const rows = await shop.read
    .selectFrom('hold')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('since', 'desc')
    .orderBy('id', 'desc')
    .limit(200)
    .execute();
  if (rows.length === 0) return [];
  const policy = await waitingPolicyNow(shop.read);
  const reminders = await remindersOf(shop, orderId);
  return rows.map((row) => ({
    ...holdOf(row),
    ladder: ladderOf(row, policy),
    reminders: (reminders.get(row.id) ?? []).slice(-200),
  }));
}
