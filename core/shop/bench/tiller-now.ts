import type { StringTrack } from '../../../shared/bench.ts';
import type { TillerReadingRow, WeightPlanRow } from '../../storage/tables.ts';
import { inputOf } from '../plans/stored.ts';
import type { StoredReading } from '../readings/stored.ts';

const alive = (row: { struck_reason: string | null }) => row.struck_reason === null;

export interface TillerNow {
  /** Upper minus lower string distance at the fades, inches. */
  nowIn: number;
  upperTrack: StringTrack | null;
  lowerTrack: StringTrack | null;
  /** Read after the last removal. */
  isCurrent: boolean;
}

interface TillerSeen extends Omit<TillerNow, 'isCurrent'> {
  at: string;
}

/** The newest of what was read by itself and with a weighing; tracks only come with the former. */
export function tillerOf(
  plan: WeightPlanRow,
  readings: readonly StoredReading[],
  tillers: readonly TillerReadingRow[],
): TillerSeen {
  const first: TillerSeen = {
    at: plan.accepted_at,
    nowIn: inputOf(plan).wish.tillerIn,
    upperTrack: null,
    lowerTrack: null,
  };
  const read = tillers.filter(alive).map(
    (row): TillerSeen => ({
      at: row.read_at,
      nowIn: row.tiller_in,
      upperTrack: row.upper_track,
      lowerTrack: row.lower_track,
    }),
  );
  const weighed = readings.filter(alive).flatMap(({ tiller_in, weighed_at }): TillerSeen[] => {
    if (tiller_in === null) return [];
    return [{ at: weighed_at, nowIn: tiller_in, upperTrack: null, lowerTrack: null }];
  });
  const all = [first, ...[...read, ...weighed].filter(({ at }) => at > plan.accepted_at)];
  const last = all.toSorted((a, b) => (a.at < b.at ? -1 : 1)).at(-1) ?? first;
  const tracked = all.filter(({ upperTrack }) => upperTrack !== null).at(-1);
  const { upperTrack = null, lowerTrack = null } = tracked ?? {};
  return { ...last, upperTrack, lowerTrack };
}
