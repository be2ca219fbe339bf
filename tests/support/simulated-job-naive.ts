import { nothingTaken } from '../../core/limb/removal.ts';
import { JobWorld } from '../../demo-data/simulated/job-world.ts';
import { seededRandom } from './random.ts';
import { type JobOutcome, outcomeOf, type SimulatedJob } from './simulated-job.ts';
import { partsOf } from './simulated-job-methods.ts';

/** The step that a naive hand cuts in, inches a side. */
const stepIn = 1 / 64;

/**
 * The habit without a plan: a drop in proportion to the width, both limbs and both sides alike,
 * until the scale shows 2 lb above the target; then strip, sand and be done.
 */
export function naiveJob(job: SimulatedJob): JobOutcome {
  const { bow, targetLbf } = job;
  const world = new JobWorld(bow, seededRandom(Math.imul(job.seed + 1, 0x85ebca6b)));
  const parts = partsOf(bow);
  const widthIn = bow.measured.upper.profile.stations[2]?.bellyWidthIn ?? Number.NaN;
  for (;;) {
    const part = 1 - (targetLbf + 2) / world.weigh();
    const steps = Math.floor((part * widthIn) / 2 / stepIn);
    if (!(steps >= 1)) break;
    const cuts = bow.placesIn.map((fromFadeIn, i) => {
      const sideIn = steps * stepIn * (parts[i] ?? 0);
      return { fromFadeIn, leftIn: sideIn, rightIn: sideIn };
    });
    const limb = { ...nothingTaken, cuts };
    world.cut({ upper: limb, lower: limb });
  }
  world.stripAndSand('full strip');
  world.weigh();
  return outcomeOf(job, world, 'naive', 'full strip');
}
