import { airTroubles } from '../../finish/air.ts';
import { minutesBetween, spanText } from '../../finish/instant.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import type { AirReadingRow } from '../../storage/tables.ts';
import type { FinishRows } from './stored.ts';
import { lastCoat } from './window-of.ts';

/**
 * How long a reading of the air stands for the room, minutes. Common practice of coating
 * inspection: before the start, and every four hours of the work.
 */
export const airStandsMin = 240;

/** What is known of one bow's surface and its time in the room. */
export interface BowInRoom {
  /** Measured just now; null where it was not. */
  surfaceF: number | null;
  /** Hanging in the finish room since then, ISO-8601 UTC; null where nobody said. */
  hungSince: string | null;
}

/** Latest own surface reading inside the time that a reading stands, Fahrenheit. */
function ownSurfaceF(rows: Pick<FinishRows, 'surfaces'>, at: string): number | null {
  const latest = rows.surfaces.filter((row) => row.at <= at).at(-1);
  if (latest === undefined || minutesBetween(latest.at, at) > airStandsMin) return null;
  return latest.surface_f;
}

function hungMin(rows: Pick<FinishRows, 'coats'>, bow: BowInRoom, at: string): number {
  const coat = lastCoat(rows);
  const since = bow.hungSince ?? coat?.hung_since ?? coat?.at ?? null;
  return since === null ? 0 : Math.max(0, minutesBetween(since, at));
}

/**
 * What is wrong with the air for a coat on this bow, one sentence each. An old reading says
 * nothing about the air of now.
 * @param at instant of the coat, ISO-8601 UTC; the reading lies before it.
 */
export function airTroublesAt(
  reading: AirReadingRow,
  sheet: FinishSheet,
  rows: Pick<FinishRows, 'surfaces' | 'coats'>,
  bow: BowInRoom,
  at: string,
): string[] {
  const age = minutesBetween(reading.at, at);
  if (age > airStandsMin) {
    return [`The air was read ${spanText(age)} ago: read it again.`];
  }
  return airTroubles(sheet.air, {
    airF: reading.air_f,
    humidityPercent: reading.humidity_percent,
    surfaceF: bow.surfaceF ?? ownSurfaceF(rows, at) ?? reading.surface_f,
    hungMin: hungMin(rows, bow, at),
  });
}
