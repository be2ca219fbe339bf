import { type NextBiteOptions, nextBite } from '../../core/limb/next-bite.ts';
import { type BiteMethod, candidateOf, limbBite } from '../../core/limb/next-bite-candidate.ts';
import { type BowResponse, bowResponse, withWidths } from '../../core/limb/next-bite-response.ts';
import { surpriseOf } from '../../core/limb/surprise.ts';
import {
  measuredBareEffectiveness,
  recordRemoval,
  recordWeighing,
  startWorkdown,
  type WorkdownState,
} from '../../core/limb/workdown.ts';
import { remeasuredSdIn, removalSdLbf, weighingSd } from '../../core/limb/workdown-spread.ts';
import { seededRandom } from './random.ts';
import { drawIn, type SimulatedBow, simulatedBow, spreads } from './simulated-job-bow.ts';
import { type LimbsNow, limitBroken, refusalOf } from './simulated-job-limits.ts';
import { hands, JobWorld, pulls, type Sanding, slopesOf } from './simulated-job-world.ts';

const both = { upper: null, lower: null };
const names = ['upper', 'lower'] as const;

/** How the full cut blends out, at the places of `simulatedBow`; a hooked tip is left alone. */
function partsOf({ kind }: SimulatedBow): readonly number[] {
  return kind === 'recurve' ? [0, 0, 1, 1, 1, 0.5, 0, 0] : [0, 0, 1, 1, 1, 0.75, 0.5, 0];
}

/** Far out an inch of width moves tiller much and weight little. */
function outerPartsOf({ kind }: SimulatedBow): readonly number[] {
  return kind === 'recurve' ? [0, 0, 0, 0.5, 1, 0.5, 0, 0] : [0, 0, 0, 0, 0.5, 1, 1, 0];
}

function outer(bow: SimulatedBow, stepsDone: { upper: number; lower: number }): BiteMethod {
  const parts = outerPartsOf(bow);
  return { kind: 'narrow', parts: { upper: parts, lower: parts }, stepsDone };
}

function narrowing(bow: SimulatedBow, stepsDone = { upper: 0, lower: 0 }): BiteMethod {
  const parts = partsOf(bow);
  return { kind: 'narrow', parts: { upper: parts, lower: parts }, stepsDone };
}

export interface SimulatedJob {
  seed: number;
  bow: SimulatedBow;
  response: BowResponse;
  targetLbf: number;
  kind: 'narrow' | 'thin both faces';
  sanding: Sanding;
}

const { mean: sandingMean } = hands.sandingThou;
const sandingThou = ({ sanding }: SimulatedJob) =>
  sanding === 'full strip' ? hands.sandingThou : hands.finalSandingThou;
const perThou = ({ upper, lower }: BowResponse) =>
  upper.perThouBothFaces.drop + lower.perThouBothFaces.drop;

const arrivalWidths = ({ measured }: SimulatedBow) => ({
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
  for (;;) {
    const bow = simulatedBow(random);
    const places = { upper: bow.placesIn, lower: bow.placesIn };
    const solved = bowResponse(bow.measured, { drawIn, placesIn: places, segments: 20 });
    if (solved.status !== 'converged') continue;
    const response = solved.value;
    const most = Math.min(10, bow.arrivalLbf / 5);
    const targetLbf = bow.arrivalLbf - (2 + (most - 2) * random());
    const afterSanding = bow.arrivalLbf * (1 - perThou(response) * sandingMean);
    const needed = 1 - targetLbf / afterSanding;
    const thin: BiteMethod = { kind: 'thin both faces' };
    const sanding: Sanding = 'full strip';
    const job = { seed, bow, response, targetLbf, sanding };
    if (plannedPart * mostDrop(bow, response, narrowing(bow)) >= needed) {
      return { ...job, kind: 'narrow' };
    }
    if (plannedPart * mostDrop(bow, response, thin) >= needed) {
      return { ...job, kind: 'thin both faces' };
    }
  }
}

/** Whether most of the weight there is to take goes into tiller, by the model and one reading of it. */
function tillerIsDear({ bow, response, targetLbf }: SimulatedJob, offIn: number): boolean {
  const leftLbf = bow.arrivalLbf * (1 - perThou(response) * sandingMean) - targetLbf;
  const { drop, tillerIn } = response.upper.perThouBothFaces;
  const neededLbf = (offIn * drop * bow.arrivalLbf) / tillerIn;
  return leftLbf < 2 * neededLbf;
}

export interface JobOutcome {
  /** True weight less target, lbf. */
  overLbf: number;
  /** True tiller less target, inches. */
  tillerOffIn: number;
  broken: boolean;
  weighings: number;
  stop: string;
}

/** The bowyer with the plan beside the bench. */
class Planned {
  readonly job: SimulatedJob;
  readonly world: JobWorld;
  readonly slopes: { perDrawIn: number; perBraceIn: number };
  state: WorkdownState;
  response: BowResponse;
  now: LimbsNow;
  stepsDone = { upper: 0, lower: 0 };
  outerDone = { upper: 0, lower: 0 };
  bites = 0;
  surprises = 0;

  constructor(job: SimulatedJob, world: JobWorld) {
    this.job = job;
    this.world = world;
    this.slopes = slopesOf(job.bow.measured);
    this.response = job.response;
    const widthsIn = arrivalWidths(job.bow);
    this.now = {
      widthsIn,
      arrivalWidthsIn: widthsIn,
      thinnedThou: { upper: 0, lower: 0 },
      sandingThou: sandingMean,
    };
    const weightLbf = world.weigh();
    this.state = startWorkdown({
      weightLbf,
      weightSdLbf: this.#sessionSd(weightLbf),
      effectiveness: measuredBareEffectiveness,
      scaleSdLbf: hands.scaleBiasLbf,
    });
  }

  #sessionSd(weightLbf: number): number {
    return weighingSd({
      resolutionLbf: 0,
      checkSdLbf: hands.scaleBiasLbf,
      perPullSdLbf: Math.hypot(
        hands.pullLbf,
        hands.drawPullIn * this.slopes.perDrawIn * weightLbf,
      ),
      pulls,
      drawSdIn: hands.drawSessionIn,
      slopeLbfPerIn: this.slopes.perDrawIn * weightLbf,
      braceSdIn: hands.braceSessionIn,
      braceLbfPerIn: this.slopes.perBraceIn * weightLbf,
    }).sessionLbf;
  }

  /** A reading that does not fit is taken again before anything is cut. */
  weigh(): void {
    for (let i = 0; i < 3; i += 1) {
      const weightLbf = this.world.weigh();
      const sdLbf = this.#sessionSd(weightLbf);
      const weighed = recordWeighing(this.state, { weightLbf, sdLbf });
      this.state = weighed.state;
      if (surpriseOf(weighed.innovation) === null) return;
      this.surprises += 1;
    }
  }

  next(method: BiteMethod, last: boolean, wanted: 'weight and tiller' | 'tiller') {
    const { job, world, now, state } = this;
    const options: NextBiteOptions = {
      response: this.response,
      state,
      targetLbf: job.targetLbf,
      bitesTaken: this.bites,
      method,
      sandingThou: last ? null : sandingThou(job),
      tiller: { nowIn: world.tiller(), targetIn: job.bow.targetTillerIn },
      wanted,
      ...(last ? { weighingSdLbf: this.#sessionSd(state.weightLbf) } : {}),
      refusedBecause: (removal) => refusalOf(job.bow, now, removal),
    };
    return nextBite(options);
  }

  /** The widths as re-measured say what was taken, not the ones that were meant. */
  remeasure(cut: { upper: readonly boolean[]; lower: readonly boolean[] }): void {
    const [before, after] = [this.now.widthsIn, this.world.widthsIn()];
    const kept = { upper: [...before.upper], lower: [...before.lower] };
    let logDrop = 0;
    const places: { dropPerIn: number; sdIn: number }[] = [];
    for (const name of names) {
      for (const [i, { widthIn, perIn }] of this.response[name].stations.entries()) {
        if (cut[name][i] !== true) continue;
        const [from, to] = [before[name][i] ?? widthIn, after[name][i] ?? widthIn];
        logDrop += perIn.drop * widthIn * Math.log(from / to);
        places.push({ dropPerIn: perIn.drop, sdIn: remeasuredSdIn(spreads.widthReadingIn) });
        kept[name][i] = to;
      }
    }
    const drop = Math.max(0, 1 - Math.exp(-logDrop));
    this.state = recordRemoval(this.state, drop, removalSdLbf(this.state.weightLbf, places));
    this.now = { ...this.now, widthsIn: kept };
    this.response = withWidths(this.response, kept);
  }

  bite(method: BiteMethod, wanted: 'weight and tiller' | 'tiller', done: { upper: number; lower: number }): string | null {
    const next = this.next(method, false, wanted);
    if (next.stop !== null) return next.stop;
    if (method.kind === 'narrow') {
      this.world.cut(next.removal);
      const cutAt = (name: 'upper' | 'lower') =>
        this.response[name].stations.map((_, i) => {
          const cut = next.removal[name].cuts[i];
          return cut !== undefined && cut.leftIn + cut.rightIn > 0;
        });
      this.remeasure({ upper: cutAt('upper'), lower: cutAt('lower') });
    } else {
      this.world.thin(next.removal);
      this.state = recordRemoval(this.state, next.modelledDrop, next.missSdLbf);
      for (const name of names) this.now.thinnedThou[name] += next.removal[name].bellyThou;
    }
    for (const name of names) done[name] += next[name].steps;
    this.bites += 1;
    this.weigh();
    return null;
  }

  workDown(): string {
    const { kind, bow } = this.job;
    const off = () => Math.abs(this.world.tiller() - bow.targetTillerIn);
    while (kind === 'narrow' && tillerIsDear(this.job, off()) && off() > 1 / 32) {
      if (this.bite(outer(bow, this.outerDone), 'tiller', this.outerDone) !== null) break;
    }
    for (;;) {
      const method: BiteMethod = kind === 'narrow' ? narrowing(bow, this.stepsDone) : { kind };
      const stop = this.bite(method, 'weight and tiller', this.stepsDone);
      if (stop !== null) return stop;
    }
  }

  stripAndSand(): void {
    const { mean, sd } = sandingThou(this.job);
    this.world.stripAndSand(this.job.sanding);
    const drop = 1 - Math.exp(-perThou(this.response) * mean);
    const sdLbf = this.state.weightLbf * perThou(this.response) * sd;
    this.state = recordRemoval(this.state, drop, sdLbf);
    for (const name of names) this.now.thinnedThou[name] += mean;
    this.now = { ...this.now, sandingThou: 0 };
    this.weigh();
  }

  lightPasses(): string {
    for (;;) {
      const next = this.next({ kind: 'sanding strokes' }, true, 'weight and tiller');
      if (next.stop === 'weigh again') {
        this.weigh();
        continue;
      }
      if (next.stop !== null) return next.stop;
      this.world.stroke(next.removal);
      this.state = recordRemoval(this.state, next.modelledDrop, next.missSdLbf);
      for (const name of names) this.now.thinnedThou[name] += next.removal[name].bellyThou;
      this.bites += 1;
      this.weigh();
    }
  }
}

function outcomeOf(job: SimulatedJob, world: JobWorld, stop: string): JobOutcome {
  return {
    overLbf: world.trueLbf - job.targetLbf,
    tillerOffIn: world.trueTillerIn - job.bow.targetTillerIn,
    broken: limitBroken(job.bow, world.truth),
    weighings: world.weighings,
    stop,
  };
}

export function plannedJob(job: SimulatedJob): JobOutcome {
  const world = new JobWorld(job.bow, seededRandom(Math.imul(job.seed + 1, 0x85ebca6b)));
  const planned = new Planned(job, world);
  const first = planned.workDown();
  planned.stripAndSand();
  const last = planned.lightPasses();
  return outcomeOf(job, world, `${first}, ${last}`);
}

/** Widest step a naive hand cuts to, inches a side. */
const stepIn = 1 / 64;

/**
 * The habit without a plan: a drop in proportion to the width, both limbs and both sides alike,
 * until the scale shows 2 lb above the target; then strip, sand and be done.
 */
export function naiveJob(job: SimulatedJob): JobOutcome {
  const { bow, targetLbf } = job;
  const world = new JobWorld(bow, seededRandom(Math.imul(job.seed + 1, 0x85ebca6b)));
  const parts = partsOf(bow);
  for (let i = 0; i < 12; i += 1) {
    const reading = world.weigh();
    const part = 1 - (targetLbf + 2) / reading;
    const widthIn = bow.measured.upper.profile.stations[2]?.bellyWidthIn ?? 1;
    const steps = Math.floor((part * widthIn) / 2 / stepIn);
    if (steps < 1) break;
    const limb = {
      ...limbBite(job.response, narrowing(bow), 'upper', steps, both).removal,
      cuts: bow.placesIn.map((fromFadeIn, k) => {
        const sideIn = steps * stepIn * (parts[k] ?? 0);
        return { fromFadeIn, leftIn: sideIn, rightIn: sideIn };
      }),
    };
    world.cut({ upper: limb, lower: limb });
  }
  world.stripAndSand(job.sanding);
  world.weigh();
  return outcomeOf(job, world, 'naive');
}
