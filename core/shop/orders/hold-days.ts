import type { WaitingPolicy } from '../../../shared/waiting-policy.ts';
import type { HoldRow } from '../../storage/tables.ts';
import { addDays, dayOf } from '../day.ts';

/** Between reminders of a hold that has no ladder, days; shop policy. */
const usualPauseDays = 7;

/** The days on which a customer is reminded of a hold, oldest first; none for other kinds of hold. */
export function ladderOf(hold: Pick<HoldRow, 'kind' | 'since'>, policy: WaitingPolicy): string[] {
  if (hold.kind !== 'customer') return [];
  const since = dayOf(hold.since);
  return policy.reminderDays.map((days) => addDays(since, days));
}

/** Days that the shop's policy gives a new hold; `remindOn` was given by hand. */
export function firstDays(
  hold: Pick<HoldRow, 'kind' | 'since'>,
  remindOn: string | null,
  policy: WaitingPolicy,
): Pick<HoldRow, 'remind_on' | 'storage_fee_on' | 'abandoned_on'> {
  if (hold.kind !== 'customer') {
    return { remind_on: remindOn, storage_fee_on: null, abandoned_on: null };
  }
  const since = dayOf(hold.since);
  return {
    remind_on: remindOn ?? ladderOf(hold, policy)[0] ?? null,
    storage_fee_on: addDays(since, policy.storageFeeDays),
    abandoned_on: addDays(since, policy.abandonedDays),
  };
}

/**
 * When to remind next after a reminder went out on `today`. A reminder sent early or late counts
 * for the day it was due on; after the last rung nothing is left but fee and unclaimed goods.
 */
export function nextReminder(
  hold: Pick<HoldRow, 'kind' | 'since' | 'remind_on'>,
  today: string,
  policy: WaitingPolicy,
): string | null {
  if (hold.kind !== 'customer') return addDays(today, usualPauseDays);
  const done = hold.remind_on !== null && hold.remind_on > today ? hold.remind_on : today;
  return ladderOf(hold, policy).find((rung) => rung > done) ?? null;
}
