import { refuseField } from '../../shared/errors.ts';
import { instantMs } from './instant.ts';
import { refuseOddTemperature } from './temperature.ts';

/** A surface temperature as it was read. */
export interface SurfaceReading {
  /** ISO-8601 UTC. */
  at: string;
  surfaceF: number;
}

/** How long a temperature must hold to choose the recoat line, minutes (UFGS 09971). */
export const heldForMin = 60;

/**
 * How often the surface is read, minutes: each hour, each half hour above 100 F (UFGS 09971).
 */
export function readEveryMin(surfaceF: number): number {
  return surfaceF > 100 ? 30 : 60;
}

const msPerMinute = 60_000;

interface Timed {
  ms: number;
  surfaceF: number;
}

function inOrder(log: readonly SurfaceReading[]): Timed[] {
  if (log.length === 0) refuseField('surface', 'Read the surface temperature first.');
  return log
    .map(({ at, surfaceF }) => {
      refuseOddTemperature('surface', surfaceF, 'The surface');
      return { ms: instantMs('surface', at), surfaceF };
    })
    .sort((a, b) => a.ms - b.ms);
}

/** Coolest reading of the shortest run that starts here and lasts an hour; null where none lasts. */
function coolestOfHour(readings: readonly Timed[], start: number): number | null {
  let coolest = Number.POSITIVE_INFINITY;
  for (const reading of readings.slice(start)) {
    coolest = Math.min(coolest, reading.surfaceF);
    const from = readings[start]?.ms ?? reading.ms;
    if (reading.ms - from >= heldForMin * msPerMinute) return coolest;
  }
  return null;
}

/**
 * Highest surface temperature held for an hour or more, Fahrenheit: the warmest run of readings
 * over an hour, each run counted by its coolest reading. One warm reading is not an hour. Where
 * the readings do not span an hour yet, the coolest of them.
 *
 * Source of the rule: UFGS 09971, table of recoat windows.
 * @param log readings since the coat, in any order; at least one.
 * @throws ShopError BAD_INPUT where there is none, or one cannot be read.
 */
export function heldSurfaceF(log: readonly SurfaceReading[]): number {
  const readings = inOrder(log);
  const runs = readings
    .map((_, start) => coolestOfHour(readings, start))
    .filter((coolest) => coolest !== null);
  return runs.length > 0
    ? Math.max(...runs)
    : Math.min(...readings.map((reading) => reading.surfaceF));
}

/**
 * Longest time without a reading, minutes, up to `until` (ISO-8601 UTC).
 * See {@link readEveryMin}.
 * @throws ShopError BAD_INPUT as {@link heldSurfaceF}.
 */
export function longestUnreadMin(log: readonly SurfaceReading[], until: string): number {
  const instants = [...inOrder(log).map((reading) => reading.ms), instantMs('until', until)];
  const gaps = instants.slice(1).map((ms, index) => ms - (instants[index] ?? ms));
  return Math.max(...gaps) / msPerMinute;
}
