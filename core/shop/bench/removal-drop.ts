import type { RemovalMethod } from '../../../shared/bench.ts';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { BenchLimbWork } from '../../../shared/contract/bench-work.ts';
import { refuseField } from '../../../shared/errors.ts';
import { type BowResponse, executionSd, remeasured } from '../../limb/index.ts';

/** What a removal takes, as part of the weight by the model, and one standard deviation of it. */
export interface Drop {
  drop: number;
  sd: number;
}

export type LimbWorks = Record<Limb, BenchLimbWork>;

/** Left over at a place by less than this is nothing to cut from, inches. */
const leastLeftIn = 0.1;

function narrowingDrop(response: BowResponse, works: LimbWorks): Drop {
  const widths = (limb: Limb) =>
    response[limb].stations.map(({ widthIn, fromFadeIn }, i) => {
      const { offLeftIn = 0, offRightIn = 0 } = works[limb].cuts[i] ?? {};
      const off = offLeftIn + offRightIn;
      if (off === 0) return null;
      if (widthIn - off >= leastLeftIn) return widthIn - off;
      return refuseField(
        `other.${limb}`,
        `The ${limb} limb is ${widthIn.toFixed(3)} in wide ${fromFadeIn.toFixed(1)} in from the fade: this is more than comes off.`,
      );
    });
  const after = { upper: widths('upper'), lower: widths('lower') };
  // Both sides are cut to a line, each with its own miss: the root of two, as of two readings.
  const meant = remeasured(response, after, executionSd.cutIn);
  return { drop: meant.modelledDrop, sd: placesSd(meant.places) };
}

export const placesSd = (places: readonly { dropPerIn: number; sdIn: number }[]): number =>
  Math.hypot(...places.map(({ dropPerIn, sdIn }) => dropPerIn * sdIn));

/** One face of one limb with what came off it, thousandths, and one standard deviation of that. */
export interface FaceOff {
  limb: Limb;
  face: 'back' | 'belly';
  thou: number;
  sdThou: number;
}

/** What came off the faces, each by itself. */
export function facesDrop(response: BowResponse, faces: readonly FaceOff[]): Drop {
  const per = ({ limb, face }: FaceOff) => {
    const { perThouBelly, perThouBothFaces } = response[limb];
    return face === 'belly' ? perThouBelly.drop : perThouBothFaces.drop - perThouBelly.drop;
  };
  const log = faces.reduce((sum, one) => sum + per(one) * one.thou, 0);
  return {
    drop: Math.max(0, 1 - Math.exp(-log)),
    sd: Math.hypot(...faces.map((one) => per(one) * one.sdThou)),
  };
}

/** What a hand misses by on one face, thousandths. */
export const handSdThou = (method: RemovalMethod, thou: number): number =>
  method === 'strokes' ? executionSd.strokePart * thou : executionSd.thinThou;

/** The faces of both limbs' work that anything comes off. */
export function facesOf(works: LimbWorks): { limb: Limb; face: 'back' | 'belly'; thou: number }[] {
  return limbs.flatMap((limb) => [
    ...(works[limb].bellyThou > 0
      ? [{ limb, face: 'belly' as const, thou: works[limb].bellyThou }]
      : []),
    ...(works[limb].backThou > 0
      ? [{ limb, face: 'back' as const, thou: works[limb].backThou }]
      : []),
  ]);
}

/** What a bite takes by what was meant, before anything is measured again. */
export function intendedDrop(response: BowResponse, method: RemovalMethod, works: LimbWorks): Drop {
  if (method === 'narrow') return narrowingDrop(response, works);
  const faces = facesOf(works).map((one) => ({ ...one, sdThou: handSdThou(method, one.thou) }));
  return facesDrop(response, faces);
}

const fullOf = ({ cuts, bellyThou, backThou }: BenchLimbWork): number => {
  const side = Math.max(0, ...cuts.flatMap((cut) => [cut.offLeftIn, cut.offRightIn]));
  return side > 0 ? side : Math.max(bellyThou, backThou);
};

/**
 * The same work with another full amount; every place keeps its part of it. A limb that was to be
 * left alone is cut as the plan's cut runs.
 */
export function workWithAmount(
  work: BenchLimbWork,
  method: RemovalMethod,
  amount: number,
  parts: readonly number[],
): BenchLimbWork {
  const full = fullOf(work);
  if (full > 0) {
    const part = amount / full;
    const cuts = work.cuts.map((cut) => ({
      ...cut,
      offLeftIn: cut.offLeftIn * part,
      offRightIn: cut.offRightIn * part,
    }));
    return { ...work, cuts, bellyThou: work.bellyThou * part, backThou: work.backThou * part };
  }
  if (method !== 'narrow') {
    return { ...work, bellyThou: amount, backThou: method === 'scrape' ? 0 : amount };
  }
  const cuts = work.cuts.map((cut, i) => {
    const off = amount * (parts[i] ?? 0);
    return { ...cut, offLeftIn: off, offRightIn: off };
  });
  return { ...work, cuts };
}
