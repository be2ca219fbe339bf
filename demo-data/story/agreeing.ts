import type { ConsentKind } from '../../shared/consents.ts';
import type { Service } from '../../shared/stages.ts';
import { answer, ask } from './consent.ts';
import type { Job } from './job.ts';
import type { Story } from './tell.ts';

const altering: readonly Service[] = ['reduce-weight', 'strip-refinish', 're-mark', 'overlay-nock'];

/** What the owner of this bow has to agree to before anything is done. */
export function consentsNeeded(job: Job): ConsentKind[] {
  const { plan, bow } = job;
  if (bow.owner === null) return [];
  const has = (service: Service) => plan.services.includes(service);
  const watches = (plan.findings ?? []).some((finding) => finding.grade === 'watch');
  return [
    'price-and-scope',
    ...(altering.some(has) ? (['alteration-acknowledgement'] as const) : []),
    ...(watches ? (['watch-findings'] as const) : []),
    ...(has('strip-refinish') && !has('reduce-weight') ? (['expected-weight-loss'] as const) : []),
  ];
}

/** The owner of the shop says whether it can be done; the office asks; the customer answers. */
export async function* agreeing(job: Job, asked: number, answered: number | undefined): Story {
  yield job.at(asked, 15.2);
  if (job.plan.services.includes('reduce-weight')) {
    const [pounds] = job.plan.target ?? [0];
    const from = job.plan.weights?.arrival ?? pounds;
    const share = Math.round((100 * (from - pounds)) / from);
    await job.note(
      'target-feasible',
      `${share} % of its weight: width enough for a narrowing of about 1/8" per side (1/4" in total), the rest in sanding.`,
      'owner',
    );
  }
  for (const kind of consentsNeeded(job)) await ask(job, kind);
  if (answered === undefined) return;
  yield job.at(answered, 10.4);
  for (const kind of consentsNeeded(job)) await answer(job, kind);
  await job.move('agreed', 'office');
}
