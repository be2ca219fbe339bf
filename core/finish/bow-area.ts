import { refuseField } from '../../shared/errors.ts';

/** A place along a limb as measured; all inches. */
export interface AreaStation {
  fromFadeIn: number;
  widthIn: number;
  /** null where only the width was measured. */
  thicknessIn: number | null;
}

export interface LimbToCoat {
  /** At least one, in any order. */
  stations: readonly AreaStation[];
  /** Fade to tip along the limb; null where it was not measured: then the last station ends it. */
  lengthIn: number | null;
}

export interface BowToCoat {
  /** Measured limbs; where one of two was not measured, the other counts twice. */
  limbs: readonly LimbToCoat[];
  /** Fade to fade; null where it was not measured. */
  riserLengthIn: number | null;
  /** The riser did not come, or is not coated. */
  limbsOnly: boolean;
}

/** Thickness of a limb nobody measured, inches. Our own choice; it weighs little in the area. */
export const usualThicknessIn = 0.45;

/**
 * Round a riser with its window, shelf and grip, inches; and its length where it was not measured.
 * Our own choice for a one-piece bow: a block of 1 3/4 by 2 1/4 in is 8 in round.
 */
export const riserAllowance = { girthIn: 8, lengthIn: 20 };

/** All four sides at a place: both faces and both edges. */
function girthIn(station: AreaStation, thicknessIn: number): number {
  return 2 * (station.widthIn + (station.thicknessIn ?? thicknessIn));
}

function meanThickness(stations: readonly AreaStation[]): number {
  const known = stations.flatMap(({ thicknessIn }) => (thicknessIn === null ? [] : [thicknessIn]));
  return known.length === 0
    ? usualThicknessIn
    : known.reduce((sum, each) => sum + each, 0) / known.length;
}

/**
 * Both faces and both edges of a limb, square inches: the girth runs straight from station to
 * station; from the fade to the first and from the last to the tip it stays as there.
 * @throws ShopError BAD_INPUT where there is no station.
 */
export function limbAreaIn2({ stations, lengthIn }: LimbToCoat): number {
  const along = stations.toSorted((a, b) => a.fromFadeIn - b.fromFadeIn);
  const thicknessIn = meanThickness(along);
  const [first, last] = [along[0], along.at(-1)];
  if (first === undefined || last === undefined) {
    refuseField('stations', 'Measure the limb at one place or more.');
  }
  const between = along.slice(1).reduce((sum, station, index) => {
    const before = along[index] ?? station;
    const mean = (girthIn(before, thicknessIn) + girthIn(station, thicknessIn)) / 2;
    return sum + mean * (station.fromFadeIn - before.fromFadeIn);
  }, 0);
  const toTip = Math.max(0, (lengthIn ?? last.fromFadeIn) - last.fromFadeIn);
  return (
    girthIn(first, thicknessIn) * first.fromFadeIn + between + girthIn(last, thicknessIn) * toTip
  );
}

/** The riser by allowance, square inches. See {@link riserAllowance}. */
export function riserAreaIn2(lengthIn: number | null): number {
  return riserAllowance.girthIn * (lengthIn ?? riserAllowance.lengthIn);
}

/**
 * What is coated of a bow, square inches.
 * @throws ShopError BAD_INPUT where no limb was measured.
 */
export function bowAreaIn2({ limbs, riserLengthIn, limbsOnly }: BowToCoat): number {
  if (limbs.length === 0) refuseField('limbs', 'Measure the limbs first.');
  const measured = limbs.reduce((sum, limb) => sum + limbAreaIn2(limb), 0);
  const both = (measured * 2) / limbs.length;
  return both + (limbsOnly ? 0 : riserAreaIn2(riserLengthIn));
}
