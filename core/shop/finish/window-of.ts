import type { RecoatWindow } from '../../../shared/contract/finish.ts';
import { settledAfterMin } from '../../finish/air.ts';
import { minutesBetween } from '../../finish/instant.ts';
import { recoat } from '../../finish/recoat.ts';
import type { SurfaceReading } from '../../finish/surface-log.ts';
import type { AirReadingRow } from '../../storage/tables.ts';
import type { FinishRows, StoredCoat } from './stored.ts';

const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;

/** Coats that stand, oldest first. */
export function standingCoats(rows: Pick<FinishRows, 'coats'>): StoredCoat[] {
  return rows.coats.filter(alive);
}

export function lastCoat(rows: Pick<FinishRows, 'coats'>): StoredCoat | null {
  return standingCoats(rows).at(-1) ?? null;
}

/** Since when a coated bow has hung in the finish room: as noted, else since its coat. */
function hangsSince(coat: StoredCoat): string {
  return coat.hung_since ?? coat.at;
}

/**
 * Surface temperatures since a coat: those read on this bow; the room's air once the bow has hung
 * in it long enough to have its temperature; and what was measured just before the coat.
 */
export function surfaceLog(
  coat: StoredCoat,
  surfaces: FinishRows['surfaces'],
  room: readonly AirReadingRow[],
): SurfaceReading[] {
  const since = hangsSince(coat);
  const own = surfaces
    .filter((row) => row.at >= coat.at)
    .map((row) => ({ at: row.at, surfaceF: row.surface_f }));
  const hanging = room
    .filter((row) => row.at >= coat.at && minutesBetween(since, row.at) >= settledAfterMin)
    .map((row) => ({ at: row.at, surfaceF: row.air_f }));
  const before =
    coat.air === null ? [] : [{ at: coat.at, surfaceF: coat.air.surface_f ?? coat.air.air_f }];
  return [...before, ...own, ...hanging];
}

/**
 * Where the recoat window of a bow stands; null before its first coat.
 * @param room readings of the air since the coat that stand.
 * @param now ISO-8601 UTC; a coat after it means that the computer's clock was set back.
 */
export function windowOf(
  rows: Pick<FinishRows, 'coats' | 'surfaces'>,
  room: readonly AirReadingRow[],
  now: string,
): RecoatWindow | null {
  const coat = lastCoat(rows);
  if (coat === null) return null;
  const unknown = { heldF: null, opensAt: null, closesAt: null, doubts: [] };
  if (coat.at > now) {
    const sentence = 'The last coat lies after now: look at the clock of the computer.';
    return { ...unknown, state: 'before', sentence };
  }
  const log = surfaceLog(coat, rows.surfaces, room).filter((reading) => reading.at <= now);
  if (log.length === 0) {
    const sentence = 'Read the surface: nothing was read since the last coat.';
    return { ...unknown, state: 'off-sheet', sentence };
  }
  return recoat(coat.sheet.recoat, coat.at, log, now);
}
