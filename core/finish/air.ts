import { refuseField } from '../../shared/errors.ts';
import { decimal } from '../../shared/measure.ts';
import { dewPointF, leastMarginF } from './dew-point.ts';
import { refuseBelowZero, refuseUnlessPercent } from './refuse.ts';
import { differenceText, refuseOddTemperature, temperatureText } from './temperature.ts';

/** Limits of a finish's sheet while it is put on, ends included. Fahrenheit; percent humidity. */
export interface AirLimits {
  airF: { from: number; to: number };
  humidityPercent: { from: number; to: number };
}

/** The finish room before a coat. */
export interface RoomNow {
  airF: number;
  humidityPercent: number;
  /** As measured on the bow; null where it was not. */
  surfaceF: number | null;
  /** Minutes the bow has hung in this room. */
  hungMin: number;
}

/** After that long in a room a bow has the room's temperature. Common practice. */
export const settledAfterMin = 120;

/** Keeps a margin of exactly 5.4 F from failing by binary dust. */
const hair = 1e-9;

/** @throws ShopError BAD_INPUT where a range does not rise or humidity leaves 0 to 100. */
export function refuseOddAirLimits({ airF, humidityPercent }: AirLimits): void {
  if (!(airF.from < airF.to)) refuseField('airF', 'The air temperatures of the sheet must rise.');
  const { from, to } = humidityPercent;
  if (!(from >= 0 && from < to && to <= 100)) {
    refuseField(
      'humidityPercent',
      'The humidity limits of the sheet must rise from 0 to 100 percent.',
    );
  }
}

/** The surface as measured, else the room's once the bow has hung long enough; else null. */
export function surfaceOrRoomF(room: RoomNow): number | null {
  return room.surfaceF ?? (room.hungMin >= settledAfterMin ? room.airF : null);
}

function outside(
  what: string,
  value: number,
  { from, to }: { from: number; to: number },
  text: (value: number) => string,
): string[] {
  if (value >= from && value <= to) return [];
  const side = value < from ? `under ${text(from)}` : `over ${text(to)}`;
  return [`${what} is ${text(value)}, ${side} on the sheet.`];
}

/** Down to a tenth, so that too little never reads as enough. */
function tenthBelow(value: number): number {
  return Math.floor(value * 10 + hair) / 10;
}

function dewTroubles(room: RoomNow): string[] {
  const surfaceF = surfaceOrRoomF(room);
  if (surfaceF === null) {
    return ['Measure the surface, or let the bow hang in the room for 2 h.'];
  }
  const marginF = surfaceF - dewPointF(room.airF, room.humidityPercent);
  if (marginF >= leastMarginF - hair) return [];
  const where =
    marginF < 0
      ? `${differenceText(-marginF)} under the dew point`
      : `only ${differenceText(tenthBelow(marginF))} above the dew point`;
  return [`The surface is ${where}: it must be ${differenceText(leastMarginF)} above.`];
}

/**
 * What is wrong with the room before a coat, one sentence each; empty where a coat may go on.
 * @throws ShopError BAD_INPUT for odd limits, or readings outside -40 to 122 F and 0 to 100 percent.
 */
export function airTroubles(limits: AirLimits, room: RoomNow): string[] {
  refuseOddAirLimits(limits);
  refuseOddTemperature('airF', room.airF, 'The air');
  refuseUnlessPercent('humidityPercent', room.humidityPercent, 'Humidity');
  refuseBelowZero('hungMin', room.hungMin, 'The time the bow has hung');
  if (room.surfaceF !== null) refuseOddTemperature('surfaceF', room.surfaceF, 'The surface');
  return [
    ...outside('The air', room.airF, limits.airF, temperatureText),
    ...outside(
      'Humidity',
      room.humidityPercent,
      limits.humidityPercent,
      (percent) => `${decimal(percent)} percent`,
    ),
    ...dewTroubles(room),
  ];
}
