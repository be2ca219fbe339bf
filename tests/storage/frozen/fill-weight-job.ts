import { editBenchPolicy, getBenchPolicy } from '../../../core/shop/bench-policy/policy.ts';
import { benchJob } from '../../support/bench-job.ts';
import { newCommandId, type TestShop } from '../../support/test-shop.ts';

/** A weight job to its target: plan, bites, widths, glass, tiller, a struck-out reading, sanding. */
export async function weightJob(shop: TestShop): Promise<void> {
  const { policy, rowVersion } = await getBenchPolicy(shop.owner);
  await editBenchPolicy(shop.owner, { commandId: newCommandId(), rowVersion, policy });
  const job = await benchJob(7, {}, shop);
  await job.until('weigh');
  await job.weigh(job.world.weigh() + 6);
  const asked = await job.view();
  if (asked.step.kind !== 'questions') throw new Error(asked.step.kind);
  await job.answer(asked.step, asked.step.questions[0]?.about ?? null);
  await job.until('at-target');
}
