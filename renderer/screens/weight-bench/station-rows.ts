import { type Limb, limbs } from '../../../shared/bows.ts';
import type { PlanInput, PlanLimbInput, PlanStationInput } from '../../../shared/plan-input.ts';

export interface StationRow {
  fromFadeIn: number;
  /** Its place in each limb's own list; null where that limb has no station there. */
  upper: number | null;
  lower: number | null;
}

/** Stations of both limbs side by side, from fade to tip; those that are no number yet come last. */
export function stationRows({ upper, lower }: Pick<PlanInput['bow'], Limb>): StationRow[] {
  const rows: StationRow[] = [];
  for (const [limb, { stations }] of [
    ['upper', upper],
    ['lower', lower],
  ] as const) {
    for (const [index, { fromFadeIn }] of stations.entries()) {
      const row = rows.find((one) => one[limb] === null && Object.is(one.fromFadeIn, fromFadeIn));
      if (row === undefined) rows.push({ fromFadeIn, upper: null, lower: null, [limb]: index });
      else row[limb] = index;
    }
  }
  const rank = ({ fromFadeIn }: StationRow) =>
    Number.isNaN(fromFadeIn) ? Number.POSITIVE_INFINITY : fromFadeIn;
  return rows.sort((a, b) => rank(a) - rank(b) || 0);
}

/** A limb keeps three stations at least. */
export const fewestStations = 3;
export const mostStations = 40;

function between(a: PlanStationInput, b: PlanStationInput): PlanStationInput {
  const half = (x: number, y: number) => Number(((x + y) / 2).toFixed(4));
  return {
    fromFadeIn: half(a.fromFadeIn, b.fromFadeIn),
    bellyWidthIn: half(a.bellyWidthIn, b.bellyWidthIn),
    backWidthIn: half(a.backWidthIn, b.backWidthIn),
    thicknessIn: half(a.thicknessIn, b.thicknessIn),
  };
}

/** A new station half way to the next one (from the last: to the one before), with sizes between. */
export function withStationAfter(limb: PlanLimbInput, index: number): PlanLimbInput {
  const { stations } = limb;
  const isLast = index >= stations.length - 1;
  const [a, b] = isLast
    ? [stations.at(-2), stations.at(-1)]
    : [stations[index], stations[index + 1]];
  if (a === undefined || b === undefined || stations.length >= mostStations) return limb;
  return {
    ...limb,
    stations: stations.toSpliced(isLast ? stations.length - 1 : index + 1, 0, between(a, b)),
  };
}

export function withoutStation(limb: PlanLimbInput, index: number): PlanLimbInput {
  if (limb.stations.length <= fewestStations) return limb;
  return { ...limb, stations: limb.stations.toSpliced(index, 1) };
}

/** Stations out of order, which no limb has; said by limb. */
export function orderTrouble(bow: Pick<PlanInput['bow'], Limb>): string | null {
  for (const limb of limbs) {
    const at = bow[limb].stations.map(({ fromFadeIn }) => fromFadeIn);
    const bad = at.findIndex((here, i) => i > 0 && here <= (at[i - 1] ?? 0));
    if (bad !== -1) {
      return `Stations of the ${limb} limb are out of order: ${at[bad]} in follows ${at[bad - 1]} in.`;
    }
  }
  return null;
}
