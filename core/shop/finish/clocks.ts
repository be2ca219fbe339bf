import type { Clock } from '../../../shared/contract/clocks.ts';
import { type ClockKind, type CureStep, clockKindLabels } from '../../../shared/finish.ts';
import { instantMs } from '../../finish/instant.ts';
import type { AirReadingRow, BatchRow } from '../../storage/tables.ts';
import { cureOf } from './cure-of.ts';
import type { FinishRows } from './stored.ts';
import { lastCoat, windowOf } from './window-of.ts';

/** How long a clock that has ended is still shown. */
const shownPastMs = 24 * 60 * 60_000;

type Between = Pick<Clock, 'from' | 'until'>;

/** A clock as it stands now; null where it ended long ago, or never began. */
function clockOf(
  kind: ClockKind,
  of: Pick<Clock, 'orderId' | 'batchId' | 'label'>,
  { from, until }: Between,
  now: string,
): Clock | null {
  if (until <= from) return null;
  const past = until <= now;
  if (past && instantMs('now', now) - instantMs('until', until) > shownPastMs) return null;
  return {
    id: `${kind} ${of.batchId ?? of.orderId ?? ''}`,
    kind,
    ...of,
    from,
    until,
    state: past ? 'past' : 'running',
    words: clockKindLabels[kind],
  };
}

const known = (clock: Clock | null): Clock[] => (clock === null ? [] : [clock]);

/** Induction, then pot life; none of a batch that was thrown away. Pure. */
export function batchClocks(
  batch: Pick<
    BatchRow,
    'id' | 'name' | 'mixed_at' | 'usable_from' | 'usable_until' | 'discarded_at'
  >,
  now: string,
): Clock[] {
  if (batch.discarded_at !== null) return [];
  const of = { orderId: null, batchId: batch.id, label: batch.name };
  const standing = { from: batch.mixed_at, until: batch.usable_from };
  const life = { from: batch.mixed_at, until: batch.usable_until };
  // Once it may be used, that it had to stand is of no interest.
  const induction = batch.usable_from > now ? clockOf('induction', of, standing, now) : null;
  return [...known(induction), ...known(clockOf('pot-life', of, life, now))];
}

const cureKinds: readonly (readonly [CureStep, ClockKind])[] = [
  ['handle', 'handle'],
  ['stringAndFlex', 'string-and-flex'],
  ['wrap', 'wrap'],
  ['full', 'full-cure'],
];

export interface ClockedOrder {
  id: string;
  number: string;
  /** More coats may follow: only then does a recoat window matter. */
  inFinish: boolean;
  rows: Pick<FinishRows, 'coats' | 'surfaces'>;
}

/** Recoat window and the four times after the last coat. Pure. */
export function orderClocks(
  order: ClockedOrder,
  room: readonly AirReadingRow[],
  now: string,
): Clock[] {
  const coat = lastCoat(order.rows);
  const cure = cureOf(order.rows);
  if (coat === null || cure === null) return [];
  const of = { orderId: order.id, batchId: null, label: order.number };
  const clocks = cureKinds.flatMap(([step, kind]) =>
    known(clockOf(kind, of, { from: coat.at, until: cure[step] }, now)),
  );
  const window = order.inFinish ? windowOf(order.rows, room, now) : null;
  const until = (kind: ClockKind, at: string | null | undefined) =>
    typeof at === 'string' ? known(clockOf(kind, of, { from: coat.at, until: at }, now)) : [];
  return [
    ...until('recoat-opens', window?.opensAt),
    ...until('recoat-closes', window?.closesAt),
    ...clocks,
  ];
}

/** Soonest end first; what has ended before what still runs. */
export function inOrder(clocks: readonly Clock[]): Clock[] {
  const key = (clock: Clock) => `${clock.until} ${clock.id}`;
  return clocks.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
}
