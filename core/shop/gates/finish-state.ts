import type { CoatPurpose, CureStep } from '../../../shared/finish.ts';
import { minutesBetween, spanText } from '../../finish/instant.ts';
import type { AirReadingRow } from '../../storage/tables.ts';
import { airTroublesAt } from '../finish/air-now.ts';
import { lotsTrouble, potLifeTrouble } from '../finish/batch-troubles.ts';
import { cureOf } from '../finish/cure-of.ts';
import { lastGritTrouble } from '../finish/last-grits.ts';
import type { RoomRows } from '../finish/room-rows.ts';
import type { FinishRows } from '../finish/stored.ts';
import { sheetOf } from '../finish/system-row.ts';
import { lastCoat, standingCoats, windowOf } from '../finish/window-of.ts';

/**
 * What the records say of one thing a gate asks for. `none`: they say nothing. `at`: instant of
 * the record that stands against it.
 */
export type RecordState =
  | { state: 'none' }
  | { state: 'ok' }
  | { state: 'trouble'; sentence: string; at: string };

/** What the finish room's records say to the gates. */
export interface FinishState {
  /** A coat that is about to be recorded: then only its own records count. */
  proposed: boolean;
  lastGrit: RecordState;
  system: RecordState;
  air: RecordState;
  potLife: RecordState;
  lots: RecordState;
  window: RecordState;
  stringAndFlex: RecordState;
  wrap: RecordState;
  /** Purposes of the coats that stand. */
  coats: readonly CoatPurpose[];
  lastCoatAt: string | null;
}

const none = { state: 'none' } as const;
const ok = { state: 'ok' } as const;

export const stateOf = (sentence: string | null, at: string): RecordState =>
  sentence === null ? ok : { state: 'trouble', sentence, at };

function gritState({ sandings }: FinishRows): RecordState {
  const trouble = lastGritTrouble(sandings);
  if (trouble === 'none') return none;
  const latest = sandings.findLast((row) => row.struck_reason === null);
  return stateOf(trouble, latest?.at ?? '');
}

/** Without a system only the dew point can be looked at; the choice itself is asked for apart. */
function airState(rows: FinishRows, room: RoomRows): RecordState {
  if (room.air === null || rows.chosen === null) return none;
  const bow = { surfaceF: null, hungSince: null };
  const [trouble] = airTroublesAt(room.air, sheetOf(rows.chosen), rows, bow, room.now);
  return stateOf(trouble ?? null, room.air.at);
}

const cureWords: Record<CureStep, string> = {
  handle: 'dry to handle',
  stringAndFlex: 'safe to string and flex',
  wrap: 'safe to wrap',
  full: 'fully cured',
};

/** No gate opens by a clock that was set back. */
function cureState(rows: FinishRows, room: RoomRows, step: CureStep): RecordState {
  const cure = cureOf(rows);
  const coat = lastCoat(rows);
  if (cure === null || coat === null) return none;
  if (room.clockTrouble !== null) return stateOf(room.clockTrouble, coat.at);
  if (coat.at > room.now) {
    return stateOf('The last coat lies after now: look at the clock of the computer.', coat.at);
  }
  const left = minutesBetween(room.now, cure[step]);
  if (left <= 0) return ok;
  const sentence = `Not yet ${cureWords[step]}: by the finish's sheet in ${spanText(Math.ceil(left))}.`;
  return stateOf(sentence, coat.at);
}

/** What the recoat window is judged by: the air since the last coat, and whether the clock is right. */
export interface WindowAt {
  airs: readonly AirReadingRow[];
  clockTrouble: string | null;
  /** ISO-8601 UTC. */
  now: string;
}

/** Open before the first coat, inside the sheet's window, or where the sheet asks for a scuff that was done. */
export function windowState(
  rows: Pick<FinishRows, 'coats' | 'surfaces'>,
  { airs, clockTrouble, now }: WindowAt,
  isScuffed: boolean,
): RecordState {
  const coat = lastCoat(rows);
  if (coat === null) return ok;
  if (clockTrouble !== null) return stateOf(clockTrouble, coat.at);
  const window = windowOf(rows, airs, now);
  if (window === null || window.state === 'open') return ok;
  if (window.state === 'scuff' && isScuffed) return ok;
  return stateOf(window.sentence, coat.at);
}

/** A batch of the chosen finish that may be used now, where it is one that is mixed at all. */
function batchStates(rows: FinishRows, room: RoomRows): Pick<FinishState, 'potLife' | 'lots'> {
  if (rows.chosen === null) return { potLife: none, lots: none };
  if (sheetOf(rows.chosen).kind !== 'two-part') return { potLife: ok, lots: ok };
  const own = room.batches.filter((row) => row.finish_system_id === rows.chosen?.finish_system_id);
  const usable = own.find((row) => potLifeTrouble(row, room.now) === null);
  if (usable === undefined) return { potLife: none, lots: none };
  return { potLife: ok, lots: stateOf(lotsTrouble(usable.lots, room.now), usable.mixed_at) };
}

/** Pure: what the rows of an order and of the room amount to. */
export function finishStateOf(rows: FinishRows, room: RoomRows): FinishState {
  return {
    proposed: false,
    lastGrit: gritState(rows),
    system: rows.chosen === null ? none : ok,
    air: airState(rows, room),
    ...batchStates(rows, room),
    window: rows.coats.length === 0 ? none : windowState(rows, room, false),
    stringAndFlex: cureState(rows, room, 'stringAndFlex'),
    wrap: cureState(rows, room, 'wrap'),
    coats: standingCoats(rows).map((row) => row.purpose),
    lastCoatAt: lastCoat(rows)?.at ?? null,
  };
}
