import { refuseField } from '../../shared/errors.ts';
import { minutesAfter, minutesBetween, spanText } from './instant.ts';
import { type RecoatBand, type RecoatSpan, spansAt } from './recoat-window.ts';
import {
  heldSurfaceF,
  longestUnreadMin,
  readEveryMin,
  type SurfaceReading,
} from './surface-log.ts';
import { temperatureText } from './temperature.ts';

/**
 * `before`: too early. `open`: coat it. `scuff`: scuff, then coat it. `closed`: no coat now, later
 * perhaps. `off-sheet`: the sheet has no line for this temperature.
 */
export type RecoatState = 'before' | 'open' | 'scuff' | 'closed' | 'off-sheet';

export interface Recoat {
  state: RecoatState;
  /** Temperature that chose the line: the highest surface temperature held for an hour, F. */
  heldF: number;
  /** Start of the next span a coat may follow in, ISO-8601 UTC; null inside one, or without one. */
  opensAt: string | null;
  /** End of the span running now, ISO-8601 UTC; null outside one, or where it has no end. */
  closesAt: string | null;
  /** The state in one short sentence. */
  sentence: string;
  /** What makes the answer doubtful, one sentence each. */
  doubts: string[];
}

const minutesPerHour = 60;

function doubtsOf(log: readonly SurfaceReading[], heldF: number, now: string): string[] {
  const unread = longestUnreadMin(log, now);
  const every = readEveryMin(heldF);
  return unread > every
    ? [
        `The surface was not read for ${spanText(unread)}: read it every ${every === 60 ? 'hour' : 'half hour'}.`,
      ]
    : [];
}

function inSpan(span: RecoatSpan, since: number): Pick<Recoat, 'state' | 'sentence'> {
  const left =
    span.toH === null ? '' : ` within ${spanText(Math.floor(span.toH * minutesPerHour - since))}`;
  return span.scuff
    ? { state: 'scuff', sentence: `Scuff the film, then coat${left}.` }
    : { state: 'open', sentence: `Open: the next coat may follow${left}.` };
}

function outside(
  spans: readonly RecoatSpan[],
  next: RecoatSpan | undefined,
  since: number,
): Pick<Recoat, 'state' | 'sentence'> {
  if (next === undefined) {
    return { state: 'closed', sentence: "Closed: ask the finish's sheet what a late coat needs." };
  }
  const wait = spanText(Math.ceil(next.fromH * minutesPerHour - since));
  const coat = next.scuff ? 'scuff and coat' : 'the next coat may follow';
  return next === spans[0]
    ? { state: 'before', sentence: `Too early: ${coat} in ${wait}.` }
    : { state: 'closed', sentence: `Closed now: ${coat} in ${wait}.` };
}

/**
 * Whether another coat may follow. Both ends of a span belong to it.
 *
 * Source of the choice by temperature: UFGS 09971, table of recoat windows (the line of the
 * highest surface temperature held for an hour at any time between the coats).
 * @param coatedAt end of the last coat, ISO-8601 UTC.
 * @param log surface readings; those from the coat to now count, and there must be one.
 * @param now ISO-8601 UTC.
 * @throws ShopError BAD_INPUT for an odd table, no reading since the coat, or a coat after now.
 */
export function recoat(
  bands: readonly RecoatBand[],
  coatedAt: string,
  log: readonly SurfaceReading[],
  now: string,
): Recoat {
  const since = minutesBetween(coatedAt, now);
  if (since < 0) refuseField('coatedAt', 'The last coat lies after now. Correct its time.');
  const counting = log.filter(
    ({ at }) => minutesBetween(coatedAt, at) >= 0 && minutesBetween(at, now) >= 0,
  );
  const heldF = heldSurfaceF(counting);
  const doubts = doubtsOf(counting, heldF, now);
  const spans = spansAt(bands, heldF);
  if (spans === null) {
    const sentence = `The sheet has no recoat line for ${temperatureText(heldF)}.`;
    return { state: 'off-sheet', heldF, opensAt: null, closesAt: null, sentence, doubts };
  }
  const at = (hours: number | null) =>
    hours === null ? null : minutesAfter('coatedAt', coatedAt, hours * minutesPerHour);
  const running = spans.find(
    ({ fromH, toH }) =>
      fromH * minutesPerHour <= since && (toH === null || since <= toH * minutesPerHour),
  );
  if (running !== undefined) {
    return { heldF, doubts, opensAt: null, closesAt: at(running.toH), ...inSpan(running, since) };
  }
  const next = spans.find(({ fromH }) => fromH * minutesPerHour > since);
  return {
    heldF,
    doubts,
    opensAt: at(next?.fromH ?? null),
    closesAt: null,
    ...outside(spans, next, since),
  };
}
