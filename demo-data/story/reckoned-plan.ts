import { planBowOf } from '../../core/limb-room/from-input.ts';
import { acceptPlan } from '../../core/shop/plans/accept.ts';
import { reckonPlan } from '../../core/shop/plans/reckon.ts';
import { startPlan } from '../../core/shop/plans/start.ts';
import { responseOf, standingPlan } from '../../core/shop/plans/stored.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import type { PlanMethod } from '../../shared/weight-plan.ts';
import { seeded, seedOf } from '../seeded.ts';
import { JobWorld } from '../simulated/job-world.ts';
import { trueBow } from '../simulated/true-bow.ts';
import type { Job } from './job.ts';

/** The way that the weight bench puts first. */
async function recommended(job: Job, input: PlanInput): Promise<PlanMethod> {
  const answer = await reckonPlan(job.chronicle.shop, { input, detail: 'sliding' });
  const way = answer.outcome === 'reckoned' ? answer.recommended : null;
  if (way === null) throw new Error(`nothing takes ${job.bow.key} to its target`);
  return way;
}

/** The plan as the weight bench reckons it from the records, accepted by the owner of the shop. */
async function acceptReckoned(job: Job): Promise<PlanInput> {
  const { input, about, geometry, reading } = await startPlan(job.chronicle.shop, job.orderId);
  await acceptPlan(job.as('owner'), {
    ...job.command(),
    orderId: job.orderId,
    rowVersion: about.rowVersion ?? 0,
    input,
    method: await recommended(job, input),
    geometryId: geometry?.id ?? null,
    readingId: reading?.id ?? null,
    confirmedBecause: '',
  });
  return input;
}

/**
 * Accepts the plan of an order.
 * @returns the bow behind its figures, which nobody in the shop knows exactly, on the bench
 */
export async function planByReckoning(job: Job): Promise<JobWorld> {
  const input = await acceptReckoned(job);
  const plan = await standingPlan(job.chronicle.shop.read, job.orderId);
  if (plan === null) throw new Error(`${job.bow.key} has no plan`);
  const placesIn = responseOf(plan).upper.stations.map(({ fromFadeIn }) => fromFadeIn);
  const at = { tillerIn: input.wish.tillerIn, lbf: plan.weight_lbf };
  const bow = trueBow(planBowOf(input).measured, placesIn, at, job.bow.fields.kind);
  return new JobWorld(bow, seeded(seedOf(`${job.bow.key} at the bench`)));
}
