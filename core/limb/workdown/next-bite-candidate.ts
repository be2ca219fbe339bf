import type { BowRemoval } from '../predict-removal.ts';
import { type LimbRemoval, nothingTaken } from '../removal.ts';
import type { SideCut } from '../side-cut.ts';
import type { BowResponse, Effect, LimbResponse } from './next-bite-response.ts';

/** How the bow is brought down, and the smallest step of it that a hand can do. */
export type BiteMethod =
  | {
      kind: 'narrow';
      /** Part of the full cut at each place of the response, 0 to 1: how the cut blends out. */
      parts: { upper: readonly number[]; lower: readonly number[] };
      stepIn?: number;
      /** Steps of the full cut already taken: a part of a step left over then comes with a later one. */
      stepsDone?: { upper: number; lower: number };
    }
  | { kind: 'thin both faces' | 'belly scrape' | 'sanding strokes'; stepThou?: number };

/** Smallest doable steps (common practice): per side; both faces; belly; a light pass on both. */
export const smallestSteps = {
  narrowIn: 1 / 64,
  thinThou: 1,
  scrapeThou: 1,
  strokeThou: 0.25,
} as const;

/** How far a hand misses, one standard deviation (common practice). */
export const executionSd = {
  /** Cut to a line, per side and place, inches. */
  cutIn: 0.01,
  /** Thinning, per face, thousandths. */
  thinThou: 0.3,
  /** Strokes under a thousandth, part of the amount. */
  strokePart: 0.3,
} as const;

export type Side = 'left' | 'right';

/** Towards which side a limb's tip tracks; null where it runs true. */
export interface Tracking {
  upper: Side | null;
  lower: Side | null;
}

/** One limb's part of a bite, and what it does by the linear response. */
export interface LimbBite {
  steps: number;
  removal: LimbRemoval;
  effect: Effect;
  /** What the hand may miss by, as part of the weight, one standard deviation. */
  missSd: number;
}

export interface Candidate {
  upper: LimbBite;
  lower: LimbBite;
  removal: BowRemoval;
  /** Part of its weight that the model takes off the bow. */
  modelledDrop: number;
  tillerChangeIn: number;
  missSd: number;
}

const noBite: LimbBite = {
  steps: 0,
  removal: nothingTaken,
  effect: { drop: 0, tillerIn: 0 },
  missSd: 0,
};

/** Rounding of a whole number of steps must not lose one of them. */
const almost = 1e-9;

/**
 * Per side, rounded down to steps. A tip that tracks to one side gets a step of the other side
 * there, so that the width in total stays the same.
 */
function sideSteps(steps: number, tracksTo: Side | null): { left: number; right: number } {
  const shift = steps > 0 ? 1 : 0;
  if (tracksTo === 'left') return { left: steps + shift, right: steps - shift };
  if (tracksTo === 'right') return { left: steps - shift, right: steps + shift };
  return { left: steps, right: steps };
}

interface Narrowing {
  parts: readonly number[];
  steps: number;
  stepsDone: number;
  stepIn: number;
  face: BowResponse['face'];
  tracksTo: Side | null;
}

function narrowed(limb: LimbResponse, narrowing: Narrowing): LimbBite {
  const { parts, steps, stepsDone, stepIn, face, tracksTo } = narrowing;
  const whole = (amount: number, part: number) => Math.floor(amount * part + almost);
  let [drop, tillerIn, missVar] = [0, 0, 0];
  const cuts = limb.stations.map(({ fromFadeIn, widthIn, perIn }, i): SideCut => {
    const part = parts[i] ?? 0;
    const here = sideSteps(whole(stepsDone + steps, part) - whole(stepsDone, part), tracksTo);
    const [leftIn, rightIn] = [here.left * stepIn, here.right * stepIn];
    const cutIn = leftIn + rightIn;
    // Stiffness goes with the width: the slope belongs to its logarithm.
    const inches = cutIn < widthIn ? -widthIn * Math.log(1 - cutIn / widthIn) : Infinity;
    drop += perIn.drop * inches;
    tillerIn += perIn.tillerIn * inches;
    const sides = Number(leftIn > 0) + Number(rightIn > 0);
    missVar += sides * (perIn.drop * executionSd.cutIn) ** 2;
    return { fromFadeIn, leftIn, rightIn };
  });
  return {
    steps,
    removal: { ...nothingTaken, face, cuts },
    effect: { drop, tillerIn },
    missSd: Math.sqrt(missVar),
  };
}

function thinned(
  limb: LimbResponse,
  kind: Exclude<BiteMethod['kind'], 'narrow'>,
  steps: number,
  stepThou: number,
): LimbBite {
  const thou = steps * stepThou;
  const belly = kind === 'belly scrape';
  const per = belly ? limb.perThouBelly : limb.perThouBothFaces;
  const missThou =
    kind === 'sanding strokes'
      ? executionSd.strokePart * thou
      : executionSd.thinThou * (belly ? 1 : Math.SQRT1_2);
  return {
    steps,
    removal: { ...nothingTaken, bellyThou: thou, backThou: belly ? 0 : thou },
    effect: { drop: per.drop * thou, tillerIn: per.tillerIn * thou },
    missSd: missThou * per.drop,
  };
}

const stepThouOf = {
  'thin both faces': smallestSteps.thinThou,
  'belly scrape': smallestSteps.scrapeThou,
  'sanding strokes': smallestSteps.strokeThou,
};

/** A limb's part of a bite in whole steps, for a response, a method and a tracking tip. */
export function limbBite(
  response: BowResponse,
  method: BiteMethod,
  name: 'upper' | 'lower',
  steps: number,
  tracking: Tracking,
): LimbBite {
  if (steps === 0) return noBite;
  const limb = response[name];
  if (method.kind === 'narrow') {
    const { parts, stepIn = smallestSteps.narrowIn, stepsDone } = method;
    return narrowed(limb, {
      parts: parts[name],
      steps,
      stepsDone: stepsDone?.[name] ?? 0,
      stepIn,
      face: response.face,
      tracksTo: tracking[name],
    });
  }
  return thinned(limb, method.kind, steps, method.stepThou ?? stepThouOf[method.kind]);
}

export function candidateOf(upper: LimbBite, lower: LimbBite): Candidate {
  return {
    upper,
    lower,
    removal: { upper: upper.removal, lower: lower.removal },
    modelledDrop: 1 - Math.exp(-upper.effect.drop - lower.effect.drop),
    tillerChangeIn: upper.effect.tillerIn + lower.effect.tillerIn,
    missSd: Math.hypot(upper.missSd, lower.missSd),
  };
}
