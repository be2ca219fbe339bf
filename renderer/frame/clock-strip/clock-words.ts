import dayjs from 'dayjs';
import type { Clock } from '../../../shared/contract/clocks.ts';
import type { ClockKind } from '../../../shared/finish.ts';
import { momentText } from '../../parts/days.ts';
import type { MarkKind } from '../../parts/mark.tsx';
import { runningText } from './clock-text.ts';

export interface ClockWords {
  /** Shape beside the words; null while it runs and nobody need hurry. */
  kind: MarkKind | null;
  text: string;
}

/** From here on somebody should hurry, ms. */
const nearMs = 15 * 60_000;

/** What an end means before and after it; the clock's own words where they fit both. */
const endWords: Partial<Record<ClockKind, { running: string; past: string }>> = {
  induction: { running: 'May be used', past: 'May be used' },
  'pot-life': { running: 'Pot life ends', past: 'Pot life past' },
  'recoat-opens': { running: 'Recoat opens', past: 'Recoat open' },
  'recoat-closes': { running: 'Recoat closes', past: 'Recoat window past' },
};

/** Whose end closes something. The ends of the others open it. */
const closing: readonly ClockKind[] = ['pot-life', 'recoat-closes'];

const pastKind = (kind: ClockKind): MarkKind =>
  kind === 'pot-life' ? 'stop' : kind === 'recoat-closes' ? 'attention' : 'done';

/** `11:10` of the day that is shown, else with the day. */
function since(instant: string, nowMs: number): string {
  return dayjs(instant).isSame(dayjs(nowMs), 'day')
    ? dayjs(instant).format('HH:mm')
    : momentText(instant);
}

export const isPast = ({ until }: Pick<Clock, 'until'>, nowMs: number) =>
  nowMs >= Date.parse(until);

/** A clock in words at this moment: how long it still runs, or that it is past and since when. */
export function clockWords(clock: Clock, nowMs: number): ClockWords {
  const { kind, words, until } = clock;
  const ended = endWords[kind] ?? { running: words, past: words };
  if (isPast(clock, nowMs)) {
    return { kind: pastKind(kind), text: `${ended.past} since ${since(until, nowMs)}` };
  }
  const leftMs = Date.parse(until) - nowMs;
  const isNear = closing.includes(kind) && leftMs <= nearMs;
  return { kind: isNear ? 'attention' : null, text: `${ended.running} in ${runningText(leftMs)}` };
}

const family = (kind: ClockKind) => {
  if (kind === 'induction' || kind === 'pot-life') return 'pot';
  return kind === 'recoat-opens' || kind === 'recoat-closes' ? 'recoat' : 'cure';
};

/** Past and closed: what somebody must act on. */
const isAlarm = (clock: Clock, nowMs: number) =>
  closing.includes(clock.kind) && isPast(clock, nowMs);

/** Of several that follow each other the one that ends next; where none runs, the latest past. */
function standing(clocks: readonly Clock[], nowMs: number): Clock | undefined {
  const ordered = clocks.toSorted((a, b) => a.until.localeCompare(b.until));
  return ordered.find((clock) => !isPast(clock, nowMs)) ?? ordered.at(-1);
}

/**
 * The clocks a quiet strip shows: one for each cup, window and cure. What is past and shut comes
 * first, then what ends soonest, then what has opened.
 */
export function stripClocks(clocks: readonly Clock[], nowMs: number): Clock[] {
  const groups = Map.groupBy(
    clocks,
    ({ kind, orderId, batchId, label }) => `${family(kind)} ${orderId ?? batchId ?? label}`,
  );
  const rank = (clock: Clock) => (isAlarm(clock, nowMs) ? 0 : isPast(clock, nowMs) ? 2 : 1);
  return [...groups.values()]
    .map((group) => standing(group, nowMs))
    .filter((clock) => clock !== undefined)
    .sort((a, b) => rank(a) - rank(b) || a.until.localeCompare(b.until));
}

/** Said aloud when a clock passes, and only then. */
export function passedWords(clocks: readonly Clock[], nowMs: number): string {
  return clocks
    .filter((clock) => isPast(clock, nowMs))
    .map((clock) => `${clock.label}: ${clockWords(clock, nowMs).text}`)
    .join('. ');
}
