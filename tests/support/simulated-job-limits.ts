import type { MeasuredBow, MeasuredLimb } from '../../core/limb/modelled-bow.ts';
import type { BowRemoval } from '../../core/limb/predict-removal.ts';
import type { LimbRemoval } from '../../core/limb/removal.ts';
import type { SimulatedBow } from '../../demo-data/simulated/simulated-bow.ts';

/** Limits by kind of bow (common practice); a hybrid is held to those of a longbow but its tip. */
export const limits = {
  longbow: { tipIn: 3 / 8, widthToThickness: 1.5, sideLeft: 0.5 },
  hybrid: { tipIn: 7 / 16, widthToThickness: 1.5, sideLeft: 0.5 },
  recurve: { tipIn: 1 / 2, widthToThickness: 3, sideLeft: 0.7 },
} as const;
export const leastGlassIn = 0.03;
export const leastGlassPart = 0.75;

interface Sizes {
  widthIn: number;
  thicknessIn: number;
  arrivalWidthIn: number;
}

/** Least width that a cut place may have, inches. */
export function leastWidthIn(bow: SimulatedBow, fromFadeIn: number, at: Sizes): number {
  const { tipIn, widthToThickness, sideLeft } = limits[bow.kind];
  const lengthIn = bow.truth.upper.profile.lengthIn;
  const along = fromFadeIn >= 2 && fromFadeIn <= lengthIn - 4;
  return Math.max(
    Math.cbrt(sideLeft) * at.arrivalWidthIn,
    along ? widthToThickness * at.thicknessIn : 0,
    fromFadeIn === lengthIn ? tipIn : 0,
  );
}

export function leastGlass(arrivalGlassIn: number): number {
  return Math.max(leastGlassIn, leastGlassPart * arrivalGlassIn);
}

function brokenOn(bow: SimulatedBow, now: MeasuredLimb, before: MeasuredLimb): boolean {
  const glass = now.profile.layup.bellyGlassIn;
  const back = now.profile.layup.backGlassIn;
  const least = leastGlass(before.profile.layup.bellyGlassIn);
  if (Math.min(glass, back) < least) return true;
  return before.profile.stations.some((station) => {
    if (!bow.placesIn.includes(station.fromFadeIn)) return false;
    const at = now.profile.stations.find(({ fromFadeIn }) => fromFadeIn === station.fromFadeIn);
    if (at === undefined || at.bellyWidthIn === station.bellyWidthIn) return false;
    const sizes = {
      widthIn: at.bellyWidthIn,
      thicknessIn: at.thicknessIn,
      arrivalWidthIn: station.bellyWidthIn,
    };
    return at.bellyWidthIn < leastWidthIn(bow, station.fromFadeIn, sizes);
  });
}

/** Whether the true bow breaks a limit: at the places that are measured and were cut, and its glass. */
export function limitBroken(bow: SimulatedBow, truth: MeasuredBow): boolean {
  return brokenOn(bow, truth.upper, bow.truth.upper) || brokenOn(bow, truth.lower, bow.truth.lower);
}

/** Three standard deviations of two sides cut to a line and two readings of a calliper, inches. */
const cutMarginIn = 3 * Math.hypot(0.01 * Math.SQRT2, 0.005 * Math.SQRT2);
/** Three deviations of one face: sanding, four bites of thinning, one reading of the thickness. */
const faceMarginThou = 3 * Math.hypot(0.6, 0.3 * 2);
const thicknessMarginIn = 3 * 0.003;

export interface LimbsNow {
  widthsIn: { upper: readonly number[]; lower: readonly number[] };
  arrivalWidthsIn: { upper: readonly number[]; lower: readonly number[] };
  thinnedThou: { upper: number; lower: number };
  /** Off each face, that is still to come. */
  sandingThou: number;
}

/** The predicate of the shop for one bow: what is measured and meant, with a margin for the hand. */
export function refusalOf(
  bow: SimulatedBow,
  now: LimbsNow,
  { upper, lower }: BowRemoval,
): string | null {
  const tooNarrow = (name: 'upper' | 'lower', limb: LimbRemoval) =>
    limb.cuts.some(({ fromFadeIn, leftIn, rightIn }, i) => {
      const [widthIn = 0, arrivalWidthIn = 0] = [
        now.widthsIn[name][i],
        now.arrivalWidthsIn[name][i],
      ];
      const measuredIn = bow.measured[name].profile.stations[i]?.thicknessIn ?? 0;
      const thicknessIn = measuredIn + thicknessMarginIn;
      const least = leastWidthIn(bow, fromFadeIn, { widthIn, thicknessIn, arrivalWidthIn });
      return leftIn + rightIn > 0 && widthIn - leftIn - rightIn - cutMarginIn < least;
    });
  const tooThin = (name: 'upper' | 'lower', limb: LimbRemoval) => {
    const glassIn = bow.measured[name].profile.layup.bellyGlassIn;
    const thou = now.thinnedThou[name] + now.sandingThou + limb.bellyThou + faceMarginThou;
    return limb.bellyThou > 0 && glassIn - thou / 1000 < leastGlass(glassIn);
  };
  if (tooNarrow('upper', upper) || tooNarrow('lower', lower)) return 'The limb gets too narrow.';
  if (tooThin('upper', upper) || tooThin('lower', lower)) return 'The glass gets too thin.';
  return null;
}
