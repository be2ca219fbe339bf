import type { BowRemoval } from '../../core/limb/predict-removal.ts';
import { nextBite } from '../../core/limb/workdown/next-bite.ts';
import type { BiteMethod } from '../../core/limb/workdown/next-bite-candidate.ts';
import { biteRules, type NextBiteOptions } from '../../core/limb/workdown/next-bite-forecast.ts';
import type { BowResponse } from '../../core/limb/workdown/next-bite-response.ts';
import { sandingAllowances, sandingThatFits } from '../../core/limb/workdown/next-bite-sanding.ts';
import { remeasured } from '../../core/limb/workdown/remeasured.ts';
import { removalSdLbf, weighingSd } from '../../core/limb/workdown/spread.ts';
import { surpriseOf } from '../../core/limb/workdown/surprise.ts';
import {
  measuredBareEffectiveness,
  recordRemoval,
  recordWeighing,
  startWorkdown,
  type WorkdownState,
} from '../../core/limb/workdown/workdown.ts';
import { hands, JobWorld, pulls, slopesOf } from '../../demo-data/simulated/job-world.ts';
import { spreads } from '../../demo-data/simulated/simulated-bow.ts';
import type { Sanding } from '../../shared/weight-plan.ts';
import { seededRandom } from './random.ts';
import {
  arrivalWidths,
  type JobOutcome,
  outcomeOf,
  perThou,
  type SimulatedJob,
  sandingMean,
} from './simulated-job.ts';
import { type LimbsNow, refusalOf } from './simulated-job-limits.ts';
import { narrowing, outerNarrowing } from './simulated-job-methods.ts';

const names = ['upper', 'lower'] as const;

const widthsOf = ({ upper, lower }: BowResponse) => ({
  upper: upper.stations.map(({ widthIn }) => widthIn),
  lower: lower.stations.map(({ widthIn }) => widthIn),
});

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
  readonly sanding: Sanding;

  constructor(job: SimulatedJob, world: JobWorld, alwaysStrip: boolean) {
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
    this.sanding = alwaysStrip ? 'full strip' : this.#room().sanding;
  }

  #tiller() {
    return { nowIn: this.world.tiller(), targetIn: this.job.bow.targetTillerIn };
  }

  #room() {
    const { response, state, job } = this;
    const { weightLbf } = state;
    const tiller = this.#tiller();
    return sandingThatFits({ response, weightLbf, targetLbf: job.targetLbf, tiller });
  }

  #sessionSd(weightLbf: number): number {
    return weighingSd({
      resolutionLbf: 0,
      checkSdLbf: hands.scaleBiasLbf,
      perPullSdLbf: Math.hypot(hands.pullLbf, hands.drawPullIn * this.slopes.perDrawIn * weightLbf),
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
    }
  }

  next(method: BiteMethod, last: boolean, wanted: 'weight and tiller' | 'tiller') {
    const { job, now, state } = this;
    const options: NextBiteOptions = {
      response: this.response,
      state,
      targetLbf: job.targetLbf,
      bitesTaken: this.bites,
      method,
      sandingThou: last ? null : sandingAllowances[this.sanding],
      tiller: this.#tiller(),
      wanted,
      ...(last ? { weighingSdLbf: this.#sessionSd(state.weightLbf) } : {}),
      refusedBecause: (removal) => refusalOf(job.bow, now, removal),
    };
    return nextBite(options);
  }

  /** The widths as re-measured say what was taken, not the ones that were meant. */
  remeasure(removal: BowRemoval): void {
    const read = this.world.widthsIn();
    const after = (name: 'upper' | 'lower') =>
      removal[name].cuts.map(({ leftIn, rightIn }, i) =>
        leftIn + rightIn > 0 ? (read[name][i] ?? null) : null,
      );
    const widthsIn = { upper: after('upper'), lower: after('lower') };
    const taken = remeasured(this.response, widthsIn, spreads.widthReadingIn);
    const sdLbf = removalSdLbf(this.state.weightLbf, taken.places);
    this.state = recordRemoval(this.state, taken.modelledDrop, sdLbf);
    this.response = taken.response;
    this.now = { ...this.now, widthsIn: widthsOf(taken.response) };
  }

  bite(
    method: BiteMethod,
    wanted: 'weight and tiller' | 'tiller',
    done: { upper: number; lower: number },
  ): string | null {
    const next = this.next(method, false, wanted);
    if (next.stop !== null) return next.stop;
    if (method.kind === 'narrow') {
      this.world.cut(next.removal);
      this.remeasure(next.removal);
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
    const dear = () => {
      const { leftLbf, tillerLbf } = this.#room();
      const { nowIn, targetIn } = this.#tiller();
      const off = Math.abs(nowIn - targetIn) > biteRules.tillerToleranceIn / 2;
      return bow.kind !== 'recurve' && off && leftLbf < 2 * tillerLbf;
    };
    while (kind === 'narrow' && dear()) {
      if (this.bite(outerNarrowing(bow, this.outerDone), 'tiller', this.outerDone) !== null) break;
    }
    for (;;) {
      const method: BiteMethod = kind === 'narrow' ? narrowing(bow, this.stepsDone) : { kind };
      const stop = this.bite(method, 'weight and tiller', this.stepsDone);
      if (stop !== null) return stop;
    }
  }

  stripAndSand(): void {
    const { mean, sd } = sandingAllowances[this.sanding];
    this.world.stripAndSand(this.sanding);
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

/**
 * A job as the plan has it: bites, strip and sand, light passes.
 * @param alwaysStrip a full strip even where it alone may take the bow under its target
 */
export function plannedJob(job: SimulatedJob, alwaysStrip = false): JobOutcome {
  const world = new JobWorld(job.bow, seededRandom(Math.imul(job.seed + 1, 0x85ebca6b)));
  const planned = new Planned(job, world, alwaysStrip);
  const first = planned.workDown();
  planned.stripAndSand();
  const last = planned.lightPasses();
  return outcomeOf(job, world, `${first}, ${last}`, planned.sanding);
}
