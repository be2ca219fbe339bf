import type { CoatPurpose, CureStep } from '../../../shared/finish.ts';
import { minutesBetween, spanText } from '../../finish/instant.ts';
import { airTroublesAt } from '../finish/air-now.ts';
import { cureOf } from '../finish/cure-of.ts';
import { lastGritTrouble } from '../finish/last-grits.ts';
import type { RoomRows } from '../finish/room-rows.ts';
import type { FinishRows } from '../finish/stored.ts';
import { sheetOf } from '../finish/system-row.ts';
import { lastCoat, standingCoats } from '../finish/window-of.ts';
import { type RecordState, stateOf } from './record-state.ts';

/** What the finish room's records say to the gates of the stages. */
export interface FinishState {
  lastGrit: RecordState;
  system: RecordState;
  air: RecordState;
  stringAndFlex: RecordState;
  wrap: RecordState;
  /** Purposes of the coats that stand. */
  coats: readonly CoatPurpose[];
  lastCoatAt: string | null;
}

const none = { state: 'none' } as const;
const ok = { state: 'ok' } as const;

function gritState({ sandings }: FinishRows): RecordState {
  const trouble = lastGritTrouble(sandings);
  if (trouble === 'none') return none;
  const latest = sandings.findLast((row) => row.struck_reason === null);
  return stateOf(trouble, latest?.at ?? '');
}

/** Without a system only the dew point can be looked at; the choice itself is asked for apart. */
function airState(rows: FinishRows, room: RoomRows): RecordState {
  if (room.air === null || rows.chosen === null) return none;
  if (room.clockTrouble !== null) return stateOf(room.clockTrouble, room.air.at);
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

/** Pure: what the rows of an order and of the room amount to. */
export function finishStateOf(rows: FinishRows, room: RoomRows): FinishState {
  return {
    lastGrit: gritState(rows),
    system: rows.chosen === null ? none : ok,
    air: airState(rows, room),
    stringAndFlex: cureState(rows, room, 'stringAndFlex'),
    wrap: cureState(rows, room, 'wrap'),
    coats: standingCoats(rows).map((row) => row.purpose),
    lastCoatAt: lastCoat(rows)?.at ?? null,
  };
}
