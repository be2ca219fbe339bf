import type { ConsentReminderRow } from '../../storage/agreement-tables.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ConsentAnswerRow, ConsentRow } from '../../storage/tables.ts';

export interface StoredConsent extends ConsentRow {
  answers: ConsentAnswerRow[];
  /** Reminders that went out, oldest first. */
  reminders: ConsentReminderRow[];
  /** Another bow or owner has been put on the order since this was asked. */
  otherBow: boolean;
}

/** Consents of the given orders with their answers, both in the order they were recorded. */
export async function storedConsents(
  db: OpenShop['read'],
  orderIds: readonly string[],
): Promise<StoredConsent[]> {
  if (orderIds.length === 0) return [];
  const rows = await db
    .selectFrom('consent')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .orderBy('asked_at')
    .orderBy('id')
    .execute();
  const answers = await db
    .selectFrom('consent_answer')
    .innerJoin('consent', 'consent.id', 'consent_answer.consent_id')
    .selectAll('consent_answer')
    .where('consent.order_id', 'in', orderIds)
    .orderBy('consent_answer.recorded_at')
    .orderBy('consent_answer.id')
    .execute();
  const reminders = await db
    .selectFrom('consent_reminder')
    .innerJoin('consent', 'consent.id', 'consent_reminder.consent_id')
    .selectAll('consent_reminder')
    .where('consent.order_id', 'in', orderIds)
    .orderBy('consent_reminder.sent_at')
    .orderBy('consent_reminder.id')
    .execute();
  const bowChanges = await db
    .selectFrom('order_history')
    .select(['order_id', 'at'])
    .where('order_id', 'in', orderIds)
    .where('kind', 'in', ['bow', 'owner'])
    .execute();
  return rows.map((row) => ({
    ...row,
    otherBow: bowChanges.some(({ order_id, at }) => order_id === row.order_id && at > row.asked_at),
    answers: answers.filter((answer) => answer.consent_id === row.id),
    reminders: reminders.filter((reminder) => reminder.consent_id === row.id),
  }));
}
