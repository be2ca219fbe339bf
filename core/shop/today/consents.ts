import { type ConsentKind, type ConsentState, consentLabels } from '../../../shared/consents.ts';
import type { TodayItem } from '../../../shared/contract/today.ts';
import { addDays, dayOf } from '../day.ts';
import { daysBetween } from './calendar.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/** A consent that waits or no longer fits; the newest of its kind on the order. */
export interface Unanswered {
  kind: ConsentKind;
  askedAt: string;
  state: ConsentState | 'none';
  /** Instant of the last reminder; none yet where it is left out. */
  remindedAt?: string | null;
  /** It was granted before what it referred to changed. */
  wasGranted?: boolean;
}

const names = (asked: readonly Unanswered[]) =>
  asked.map(({ kind }, i) => (i === 0 ? consentLabels[kind] : consentLabels[kind].toLowerCase()));

function listed(asked: readonly Unanswered[]): string {
  const all = names(asked);
  const last = all.pop() ?? '';
  return all.length === 0 ? last : `${all.join(', ')} and ${last}`;
}

/** Day of the ladder that has come and was not reminded of since; null where there is none. */
function reminderDue(
  { askedAt, remindedAt = null }: Unanswered,
  day: string,
  reminderDays: readonly number[],
): string | null {
  const waited = daysBetween(dayOf(askedAt), day);
  const step = reminderDays.filter((days) => days <= waited).at(-1);
  if (step === undefined) return null;
  const due = addDays(dayOf(askedAt), step);
  return remindedAt !== null && dayOf(remindedAt) >= due ? null : due;
}

/**
 * What the customer was asked and has not answered, one item for each order. It waits until the
 * first reminder day; from then on it asks to be followed up. Where the order is on hold, the hold
 * carries the reminders. A text that no longer fits must be asked again.
 */
export function unanswered(
  asked: readonly Unanswered[],
  order: TodayOrder,
  day: string,
  reminderDays: readonly number[],
): TodayItem[] {
  if (!inWork(order)) return [];
  const place = { kind: 'consent', room: 'office' } as const;
  const outdated = asked
    .filter(({ state }) => state === 'outdated')
    .map((consent) =>
      about(order, {
        ...place,
        group: 'today',
        what: `${consentLabels[consent.kind]} was ${consent.wasGranted === true ? 'granted' : 'asked'}, but what it referred to has changed: ask again.`,
        since: dayOf(consent.askedAt),
        opens: `consents:${consent.kind}`,
      }),
    );
  const open = asked.filter(({ state }) => state === 'waiting');
  const [first] = open.toSorted((a, b) => (a.askedAt < b.askedAt ? -1 : 1));
  if (first === undefined) return outdated;
  const since = dayOf(first.askedAt);
  // Each text has a ladder of its own; the one whose day came last asks for the day.
  const days = open.flatMap((consent) => reminderDue(consent, day, reminderDays) ?? []).sort();
  const due = order.held ? null : (days.at(-1) ?? null);
  const what =
    due === null
      ? `${listed(open)}: asked, no answer yet.`
      : `${listed(open)}: no answer. Follow it up; no reply never means yes.`;
  const group = due === null ? 'waiting' : 'today';
  const opens = open.length === 1 ? `consents:${first.kind}` : 'consents';
  return [...outdated, about(order, { ...place, group, what, dueOn: due, since, opens })];
}
