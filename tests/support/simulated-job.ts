import {
  type BiteMethod,
  candidateOf,
  limbBite,
} from '../../core/limb/workdown/next-bite-candidate.ts';
import { type BowResponse, bowResponse } from '../../core/limb/workdown/next-bite-response.ts';
import { hands, type JobWorld } from '../../demo-data/simulated/job-world.ts';
import { drawIn, type SimulatedBow } from '../../demo-data/simulated/simulated-bow.ts';
import type { Sanding } from '../../shared/weight-plan.ts';
import { seededRandom } from './random.ts';
import { simulatedBow } from './simulated-job-bow.ts';
import { type LimbsNow, limitBroken, refusalOf } from './simulated-job-limits.ts';
import { narrowing } from './simulated-job-methods.ts';

const both = { upper: null, lower: null };
const names = ['upper', 'lower'] as const;

export interface SimulatedJob {
  seed: number;
  bow: SimulatedBow;
  response: BowResponse;
  targetLbf: number;
  kind: 'narrow' | 'thin both faces';
  /** Wishes refused before this one, because no method reaches them inside the limits. */
  refused: number;
}

export const sandingMean = hands.sandingThou.mean;
/** Part of the weight that a thousandth off all four faces takes, by the model. */
export const perThou = ({ upper, lower }: BowResponse) =>
  upper.perThouBothFaces.drop + lower.perThouBothFaces.drop;

export const arrivalWidths = ({ measured }: SimulatedBow) => ({
  upper: measured.upper.profile.stations.map(({ bellyWidthIn }) => bellyWidthIn),
  lower: measured.lower.profile.stations.map(({ bellyWidthIn }) => bellyWidthIn),
});

/** Most that a method takes off both limbs alike inside the limits, as part of the weight. */
function mostDrop(bow: SimulatedBow, response: BowResponse, method: BiteMethod): number {
  const widthsIn = arrivalWidths(bow);
  const now: LimbsNow = {
    widthsIn,
    arrivalWidthsIn: widthsIn,
    thinnedThou: { upper: 0, lower: 0 },
    sandingThou: sandingMean,
  };
  for (let steps = 1; ; steps += 1) {
    const [upper, lower] = names.map((name) => limbBite(response, method, name, steps, both));
    if (upper === undefined || lower === undefined) return 0;
    const whole = candidateOf(upper, lower);
    if (refusalOf(bow, now, whole.removal) !== null) {
      return 1 - (1 - whole.modelledDrop) ** ((steps - 1) / steps);
    }
  }
}

/** Part of what a method can take that is planned with: the rest is for tiller. */
const plannedPart = 0.85;

/**
 * A bow and what is wanted of it: 2 to 10 lb and at most a fifth less. Narrowed where the limits
 * allow, thinned where they do not; a wish that neither can reach is refused and another one made.
 */
export function simulatedJob(seed: number): SimulatedJob {
  const random = seededRandom(Math.imul(seed + 1, 0x9e3779b1));
  for (let refused = 0; ; refused += 1) {
    const bow = simulatedBow(random);
    const places = { upper: bow.placesIn, lower: bow.placesIn };
    const solved = bowResponse(bow.measured, { drawIn, placesIn: places, segments: 12 });
    if (solved.status !== 'converged') continue;
    const response = solved.value;
    const most = Math.min(10, bow.arrivalLbf / 5);
    const targetLbf = bow.arrivalLbf - (2 + (most - 2) * random());
    const afterSanding = bow.arrivalLbf * (1 - perThou(response) * sandingMean);
    const needed = 1 - targetLbf / afterSanding;
    const thin: BiteMethod = { kind: 'thin both faces' };
    const job = { seed, bow, response, targetLbf, refused };
    if (plannedPart * mostDrop(bow, response, narrowing(bow)) >= needed) {
      return { ...job, kind: 'narrow' };
    }
    if (plannedPart * mostDrop(bow, response, thin) >= needed) {
      return { ...job, kind: 'thin both faces' };
    }
  }
}

export interface JobOutcome {
  /** True weight less target, lbf. */
  overLbf: number;
  /** True tiller less target, inches. */
  tillerOffIn: number;
  broken: boolean;
  weighings: number;
  stop: string;
  sanding: Sanding;
}

export function outcomeOf(
  job: SimulatedJob,
  world: JobWorld,
  stop: string,
  sanding: Sanding,
): JobOutcome {
  return {
    overLbf: world.trueLbf - job.targetLbf,
    tillerOffIn: world.trueTillerIn - job.bow.targetTillerIn,
    broken: limitBroken(job.bow, world.truth),
    weighings: world.weighings,
    stop,
    sanding,
  };
}
