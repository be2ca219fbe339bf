import { checkGlass } from '../../core/shop/bench/glass-checks.ts';
import { noteRemoval } from '../../core/shop/bench/noted-removal.ts';
import { readTiller } from '../../core/shop/bench/tiller-readings.ts';
import { inchFraction } from '../../shared/measure.ts';
import { AtTheCard, nothingSeen } from './by-the-card.ts';
import type { Job } from './job.ts';
import { measureLimbs } from './limb-sizes.ts';
import { planByReckoning } from './reckoned-plan.ts';
import type { Story } from './tell.ts';
import { arrivalTillerIn, weigh } from './weigh.ts';

const inTiller = {
  tillerIn: arrivalTillerIn,
  upperTrack: 'centre',
  lowerTrack: 'centre',
  braceIn: null,
  note: '',
} as const;

/** What a bite of this weight takes from a glass-faced limb, inches per side, and how it is written. */
function biteWords(job: Job, place: number, taken: number): string {
  if (job.bow.fields.construction === 'all-wood') {
    return `Belly scraped, both limbs, ${8 + place * 2} long strokes from 3" past the fade to 4" before the tip. The back is left alone.`;
  }
  const perSide = Math.max(1, Math.round(taken * 2)) / 64;
  const limb = place % 2 === 0 ? 'both limbs' : 'both limbs, a stroke more on the lower';
  return `Narrowed, ${limb}: ${inchFraction(perSide)}" per side (${inchFraction(perSide * 2)}" in total) from 2" to 14" past the fade, tapering out. Edges rounded again.`;
}

async function bite(job: Job, place: number, before: number, after: number): Promise<void> {
  const { orderId } = job;
  const taken = await noteRemoval(job.as('bench'), {
    ...job.command(),
    orderId,
    note: biteWords(job, place, before - after),
  });
  if (taken.outcome === 'refused') {
    throw new Error(`${job.bow.key}: ${taken.missing.map(({ sentence }) => sentence).join(' ')}`);
  }
  await checkGlass(job.as('bench'), { ...job.command(), orderId, ...nothingSeen });
  await readTiller(job.as('bench'), { ...job.command(), orderId, ...inTiller });
  await weigh(job, 'work', after);
}

const bareNote = 'Finish scraped off at the stations: measured bare.';
const coveredNote = 'Before any work, over the old finish.';

/** Measured, reckoned and accepted: the bow lies on the bench with its card. */
async function prepareCard(job: Job, measured: 'bare' | 'over-finish'): Promise<void> {
  const bare = measured === 'bare';
  await measureLimbs(job, bare ? bareNote : coveredNote, { surface: measured });
  job.card = new AtTheCard(job, await planByReckoning(job));
  const glass = bare
    ? 'Glass bare at every station.'
    : 'No thinning planned; finish stays on until the weight is near.';
  await job.note('bare-glass', glass);
}

/** Measured, planned and accepted: nothing stands before the first bite any more. */
export async function prepareWork(job: Job): Promise<void> {
  const { reckoned } = job.plan;
  if (reckoned !== undefined) return prepareCard(job, reckoned.measured);
  await measureLimbs(job, coveredNote);
  await job.note(
    'plan-accepted',
    `Narrowing in ${Math.max(2, job.plan.weights?.bites?.length ?? 0)} bites, stop about 2 lb above ${job.plan.target?.[0] ?? 0} lb: sanding takes the rest.`,
    'owner',
  );
  await job.note('bare-glass', 'No thinning planned; finish stays on until the weight is near.');
}

/** Hours into the day at which the bites of one day begin. */
const biteHours = [9.6, 10.9, 13.2, 14.5, 15.7];

/** What the card says, bite after bite, until it says to sand or the day has come where it stands. */
async function* workByTheCard(job: Job, card: AtTheCard, days: readonly number[]): Story {
  const most = job.plan.reckoned?.bites ?? Number.POSITIVE_INFINITY;
  const perDay = Math.min(
    biteHours.length,
    Math.ceil((job.plan.reckoned?.bites ?? 8) / days.length),
  );
  for (let bites = 0; ; ) {
    const view = await card.view();
    if (view.step.kind === 'bite') {
      if (bites >= most) return;
      const day = days[Math.floor(bites / perDay)] ?? days.at(-1) ?? 0;
      yield job.at(day, biteHours[bites % perDay] ?? 15.7);
      bites += 1;
    }
    if (view.step.kind === 'sand-only' || !(await card.do(view, 'work'))) return;
  }
}

/** Bites that are noted in words, ever smaller, stopping above the target. */
async function* workInWords(job: Job, days: readonly number[]): Story {
  const { plan } = job;
  const bites = plan.weights?.bites ?? [];
  const perDay = Math.max(1, Math.ceil(bites.length / days.length));
  let before = plan.weights?.arrival ?? 0;
  for (const [place, after] of bites.entries()) {
    yield job.at(days[Math.floor(place / perDay)] ?? 0, 10.2 + (place % perDay) * 1.6);
    await bite(job, place, before, after);
    before = after;
  }
  if (plan.days.sanded !== undefined && bites.length > 0) {
    yield job.at(days.at(-1) ?? 0, 15.6);
    await measureLimbs(job, 'After the last bite.', { narrowerIn: 0.12 });
  }
}

/** Weight work, from the plan to where only sanding is left. */
export async function* weightWork(job: Job, days: readonly number[]): Story {
  yield job.at(days[0] ?? 0, 9.1);
  await prepareWork(job);
  await job.move('weight-work');
  if (job.card === null) yield* workInWords(job, days);
  else yield* workByTheCard(job, job.card, days);
}
