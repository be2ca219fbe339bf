import { setInscription } from '../../core/shop/orders/orders.ts';
import { weightAtDraw } from '../../shared/measure.ts';
import type { AtTheCard } from './by-the-card.ts';
import { choose, coating, readAir, sandDown } from './coating.ts';
import { answer, ask } from './consent.ts';
import { undershot } from './detours.ts';
import type { Job } from './job.ts';
import { weighingDraw } from './plan.ts';
import type { Story } from './tell.ts';
import { weigh } from './weigh.ts';

/** Strip and sand; the weighing after it counts where nothing is taken off any more. */
export async function* sanding(job: Job, daysAgo: number, isLast: boolean): Story {
  yield job.at(daysAgo, 9.4);
  await job.move('strip-sand');
  yield job.at(daysAgo, 14.1);
  await sandDown(job);
  if (job.card !== null) yield* sandByTheCard(job, job.card, daysAgo);
  else if (isLast && job.plan.weights?.sanded !== undefined) await weighSanded(job);
}

/** Sanded, weighed and taken down by light passes; a bow that lost too much is offered as it is. */
async function* sandByTheCard(job: Job, card: AtTheCard, daysAgo: number): Story {
  yield job.at(daysAgo, 14.6);
  let view = await card.view();
  while (await card.do(view, 'after-sanding')) view = await card.view();
  if (view.step.kind !== 'undershot') return;
  const words = 'Sanding took more than we allowed for: as it is, for 30 dollars less.';
  yield* undershot(job, { on: daysAgo, cents: -3_000, words, answered: daysAgo });
}

/** The last weighing before finish, at the target's draw. */
export async function weighSanded(job: Job): Promise<void> {
  const { sanded, arrival } = job.plan.weights ?? { arrival: 40 };
  await weigh(job, 'after-sanding', sanded ?? arrival - 1);
}

/** What will stand on the bow: what was weighed last, the length as it was marked, and the shop's year. */
function linesFor(job: Job): string {
  const { plan, bow } = job;
  if (plan.inscription !== undefined) return plan.inscription;
  const marked = weightAtDraw(Math.round(job.finalLbf), weighingDraw(plan, bow.fields));
  return bow.fields.amoLengthIn === null ? marked : `${marked}\nAMO ${bow.fields.amoLengthIn}"`;
}

/** Lines given to the owner of the bow, to be approved word for word. */
export async function giveLines(job: Job): Promise<void> {
  await setInscription(job.as('office'), {
    ...(await job.version()),
    inscription: linesFor(job),
  });
  if (job.bow.owner !== null) await ask(job, 'marking-approval');
}

async function* lettering(job: Job, daysAgo: number): Story {
  await giveLines(job);
  if (job.bow.owner !== null) {
    yield job.at(daysAgo, 12.5);
    await answer(job, 'marking-approval', { words: 'Yes, exactly those lines.' });
  }
  yield job.at(daysAgo, 14.2);
  await job.note('lettering-applied', 'Belly of the upper limb, on the seal coat, by hand.');
  await job.photograph('markings', 'Lettered, before the clear');
  yield job.at(daysAgo, 15.8);
  await job.note('lettering-dry', 'Dry to a clean fingertip.');
}

/** The finish chosen and the air read, or let pass by the owner of the shop with a reason. */
export async function enterFinish(job: Job): Promise<void> {
  const { airNotRead } = job.plan;
  await choose(job);
  if (airNotRead === undefined) {
    await readAir(job);
    await job.move('finish');
  } else await job.move('finish', 'owner', { override: { reason: airNotRead } });
}

/** Into the finish room: the finish chosen, the air read, lettered where that was ordered, coated. */
export async function* finishing(job: Job, daysAgo: number): Story {
  yield job.at(daysAgo, 8.5);
  await enterFinish(job);
  if (job.plan.services.includes('re-mark')) yield* lettering(job, daysAgo);
  yield* coating(job, { daysAgo, hour: 16 }, 'first');
}

export async function* curing(job: Job, daysAgo: number): Story {
  yield* coating(job, { daysAgo, hour: 8.2 }, 'second');
  yield job.at(daysAgo, 9);
  await job.move('cure');
}
