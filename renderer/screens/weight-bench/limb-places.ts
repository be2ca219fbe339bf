import type { Limb } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { LimbAnswer, MethodAnswer } from '../../../shared/plan-answer.ts';
import type { PlanLimbInput } from '../../../shared/plan-input.ts';
import type { LimbPlace } from '../../parts/limb-drawing/limb-geometry.ts';

type Face = 'back' | 'belly';

/** The face on which the cut shows: the one that is narrowed, the back where both are. */
export const shownFace = ({ removal }: LimbAnswer): Face =>
  removal.face === 'belly' ? 'belly' : 'back';

/** Outline points where there are some (a full answer), else the stations alone. */
const pointsOf = ({ outline, stations }: LimbAnswer) => (outline.length > 1 ? outline : stations);

type Station = LimbAnswer['stations'][number];

/**
 * What comes off anywhere along the limb: straight from station to station, as it is cut. The
 * outline's own new edge is a smooth curve through the stations, which swings a little beyond.
 */
function offBetween({ stations }: LimbAnswer, off: (station: Station) => number) {
  return (fromFadeIn: number): number => {
    const after = stations.findIndex((one) => one.fromFadeIn >= fromFadeIn);
    const [a, b] = [stations[Math.max(0, after - 1)], stations[after]];
    if (a === undefined || b === undefined) return 0;
    const [from, to] = [Math.max(0, off(a)), Math.max(0, off(b))];
    const length = b.fromFadeIn - a.fromFadeIn;
    return length <= 0 ? to : from + ((to - from) * (fromFadeIn - a.fromFadeIn)) / length;
  };
}

/** Seen on one face: both edges alike, for a plan cuts both sides the same. */
export function widthPlaces(limb: LimbAnswer): LimbPlace[] {
  const face = shownFace(limb);
  const offAt = offBetween(limb, (one) => (one.presentWidthIn[face] - one.newWidthIn[face]) / 2);
  return pointsOf(limb).map(({ fromFadeIn, presentWidthIn }) => {
    const half = presentWidthIn[face] / 2;
    const off = offAt(fromFadeIn);
    return { fromFadeIn, topIn: half, bottomIn: half, offTopIn: off, offBottomIn: off };
  });
}

/** Seen on edge, the back on top. */
export function thicknessPlaces(limb: LimbAnswer): LimbPlace[] {
  const { back, belly } = limb.offThou;
  const backPart = back + belly === 0 ? 0.5 : back / (back + belly);
  const offAt = offBetween(limb, (one) => one.presentThicknessIn - one.newThicknessIn);
  return pointsOf(limb).map(({ fromFadeIn, presentThicknessIn }) => {
    const half = presentThicknessIn / 2;
    const off = offAt(fromFadeIn);
    return {
      fromFadeIn,
      topIn: half,
      bottomIn: half,
      offTopIn: backPart * off,
      offBottomIn: (1 - backPart) * off,
    };
  });
}

/** A limb nobody reckoned yet: as it is. Stations that are no numbers yet are left out. */
export function presentPlaces({ stations }: PlanLimbInput): LimbPlace[] {
  return stations
    .filter(({ fromFadeIn, backWidthIn }) => fromFadeIn >= 0 && backWidthIn > 0)
    .toSorted((a, b) => a.fromFadeIn - b.fromFadeIn)
    .map(({ fromFadeIn, backWidthIn }) => ({
      fromFadeIn,
      topIn: backWidthIn / 2,
      bottomIn: backWidthIn / 2,
      offTopIn: 0,
      offBottomIn: 0,
    }));
}

export const takesWidth = ({ upper, lower }: MethodAnswer): boolean =>
  upper.offTotalIn > 0 || lower.offTotalIn > 0;

export const takesThickness = ({ upper, lower }: MethodAnswer): boolean =>
  [upper, lower].some(({ offThou }) => offThou.back > 0 || offThou.belly > 0);

/** Neighbouring places that rise too much, as stretches along one limb; inches from the fade. */
export function hingeStretches({ strain }: MethodAnswer, limb: Limb): [number, number][] {
  const at = strain.hinges
    .filter((hinge) => hinge.limb === limb)
    .map(({ fromFadeIn }) => fromFadeIn)
    .toSorted((a, b) => a - b);
  const [from, to] = [at[0], at.at(-1)];
  return from === undefined || to === undefined ? [] : [[from, to]];
}

/** A station for a rule: `12 1/2`. */
export const stationText = (fromFadeIn: number): string =>
  Number.isNaN(fromFadeIn) ? '?' : inchFraction(fromFadeIn);

/** The same with its sizes, for whoever does not see the drawing. */
export function stationLabel(limb: Limb, station: PlanLimbInput['stations'][number]): string {
  const { fromFadeIn, backWidthIn, thicknessIn } = station;
  const thou = decimal(1000 * thicknessIn);
  return `${limb === 'upper' ? 'Upper' : 'Lower'} limb, station ${stationText(fromFadeIn)} in: ${backWidthIn.toFixed(3)} in wide, ${thou} thou thick`;
}
