import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { dayOf } from '../../../parts/days.ts';

export type StepKind = 'sent' | 'next' | 'later' | 'storage-fee' | 'unclaimed';

/** One line of a hold's dated list. */
export interface LadderStep {
  id: string;
  kind: StepKind;
  on: string;
  /** How it was sent, and the note; empty for what lies ahead. */
  words: string;
}

/** Reminders first where a day holds several. */
const order: readonly StepKind[] = ['sent', 'next', 'later', 'storage-fee', 'unclaimed'];

/**
 * What was sent, what comes next and what after it, by day. Rungs of the ladder show only while
 * they lie ahead of the next reminder: one that was passed over is not made up for.
 */
export function ladderSteps(hold: HoldDetail): LadderStep[] {
  const { remindOn, storageFeeOn, abandonedOn, releasedAt } = hold;
  const sent = hold.reminders.map(({ id, sentAt, how, note }) => ({
    id,
    kind: 'sent' as const,
    on: dayOf(sentAt),
    words: note === '' ? how : `${how}: ${note}`,
  }));
  if (releasedAt !== null) return sent;
  const ahead = (kind: StepKind, on: string | null): LadderStep[] =>
    on === null ? [] : [{ id: `${kind} ${on}`, kind, on, words: '' }];
  const later = hold.ladder.filter((day) => remindOn !== null && day > remindOn);
  return [
    ...sent,
    ...ahead('next', remindOn),
    ...later.flatMap((day) => ahead('later', day)),
    ...ahead('storage-fee', storageFeeOn),
    ...ahead('unclaimed', abandonedOn),
  ].toSorted((a, b) => a.on.localeCompare(b.on) || order.indexOf(a.kind) - order.indexOf(b.kind));
}
