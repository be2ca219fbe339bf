import type { Limb } from '../../../shared/bows.ts';
import { type BowState, leaning } from '../bow.ts';
import type { HalfBow } from '../curve.ts';
import { type LimbProfile, layersOf, sizesOf } from '../limb-profile.ts';
import { march } from '../march.ts';
import type { Mesh } from '../mesh.ts';
import { sectionStiffness } from '../section.ts';

/** Strain of the surface at full draw, whichever face has more; no unit. */
export interface StrainPlace {
  limb: Limb;
  fromFadeIn: number;
  strain: number;
}

/** A place that bends more after the work than before: a hinge. */
export interface Hinge {
  limb: Limb;
  fromFadeIn: number;
  /** Part by which its strain rises. */
  risePart: number;
}

/** Bending moment along one drawn limb, in lbf, as straight lines between the nodes of the mesh. */
function momentAlong(half: HalfBow, mesh: Mesh, state: BowState['upper'], leanRad: number) {
  const places: number[] = [];
  const moments: number[] = [];
  march(leaning(half, leanRad), mesh, state.pull, (fromFadeIn, _x, _y, _theta, moment) => {
    places.push(fromFadeIn);
    moments.push(moment);
  });
  return (s: number) => {
    const next = places.findIndex((place) => place >= s);
    // Past the place where the string leaves a recurve there is no bending.
    if (next < 0) return 0;
    const [to, m1] = [places[next] ?? s, moments[next] ?? 0];
    const [from, m0] = [places[next - 1] ?? to, moments[next - 1] ?? m1];
    return to === from ? m1 : m0 + ((m1 - m0) * (s - from)) / (to - from);
  };
}

/**
 * Surface strain of one limb at full draw: distance of the farther face from the neutral axis
 * times the change of curvature, M / EI.
 * @param places inches from the fade
 */
export function limbStrain(
  limb: Limb,
  profile: LimbProfile,
  drawn: { half: HalfBow; mesh: Mesh; state: BowState['upper']; leanRad: number },
  places: readonly number[],
): StrainPlace[] {
  const momentAt = momentAlong(drawn.half, drawn.mesh, drawn.state, drawn.leanRad);
  const sizes = sizesOf(profile);
  return places.map((fromFadeIn) => {
    const { bellyWidthIn, backWidthIn, thicknessIn } = sizes(fromFadeIn);
    const layers = layersOf(profile.layup, thicknessIn);
    const { edgeRadiusIn } = profile;
    const section = sectionStiffness({ layers, bellyWidthIn, backWidthIn, edgeRadiusIn });
    const fartherIn = Math.max(section.neutralAxisIn, thicknessIn - section.neutralAxisIn);
    const bend = Math.abs(momentAt(fromFadeIn)) / section.eiLbfIn2;
    return { limb, fromFadeIn, strain: fartherIn * bend };
  });
}

/** Places an inch apart, with the stations and the tip left out where they coincide. */
export function strainPlaces({ lengthIn, stations }: LimbProfile): number[] {
  const whole = Array.from({ length: Math.floor(lengthIn) }, (_, i) => i);
  const at = stations.map((station) => station.fromFadeIn);
  return [...new Set([...whole, ...at])].sort((a, b) => a - b);
}

/** Strain at one place before and after the work and finishing. */
export interface StrainChange {
  limb: Limb;
  fromFadeIn: number;
  before: number;
  after: number;
}

/** Both lists in step. */
export function strainAlong(
  before: readonly StrainPlace[],
  after: readonly StrainPlace[],
): StrainChange[] {
  return before.map(({ limb, fromFadeIn, strain }, i) => ({
    limb,
    fromFadeIn,
    before: strain,
    after: after[i]?.strain ?? 0,
  }));
}

export const peakOf = (places: readonly StrainPlace[]) =>
  places.reduce((peak, { strain }) => Math.max(peak, strain), 0);

/** A hinge from this rise on. Common practice. */
export const hingeRise = 0.05;
/** A place strained less than this part of the peak breaks nothing, however much it rises. */
const strainedPart = 0.25;

/** Places of both lists, in step, where strain rises by more than a twentieth. */
export function hingesOf(before: readonly StrainPlace[], after: readonly StrainPlace[]): Hinge[] {
  const enough = strainedPart * peakOf(after);
  return before.flatMap((was, i) => {
    const now = after[i]?.strain ?? 0;
    const risePart = was.strain > 0 ? now / was.strain - 1 : 0;
    if (now < enough || risePart <= hingeRise) return [];
    return [{ limb: was.limb, fromFadeIn: was.fromFadeIn, risePart }];
  });
}
