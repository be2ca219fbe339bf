import { agreeing } from './agreeing.ts';
import { curing, finishing, sanding, weighSanded } from './finishing.ts';
import type { Job } from './job.ts';
import { checking, handingOver, packing, shipping } from './leaving.ts';
import type { Moment } from './plan.ts';
import { takingIn } from './taking-in.ts';
import type { Story } from './tell.ts';
import { unpacking } from './unpacking.ts';
import { weightWork } from './weight-work.ts';

async function* also(job: Job, moment: Moment): Story {
  const more = job.plan.also?.[moment];
  if (more !== undefined) yield* more(job);
}

/** Weight work and sanding, in the order that was agreed. */
async function* atTheBench(job: Job): Story {
  const { work, sanded } = job.plan.days;
  const first = job.plan.stripFirst ?? false;
  if (first && sanded !== undefined) {
    yield* sanding(job, sanded, false);
    yield* also(job, 'sanded');
  }
  if (work !== undefined) {
    yield* weightWork(job, work);
    if (first && job.plan.weights?.sanded !== undefined) await weighSanded(job);
    yield* also(job, 'work');
  }
  if (first || sanded === undefined) return;
  yield* sanding(job, sanded, true);
  yield* also(job, 'sanded');
}

async function* outOfTheDoor(job: Job): Story {
  const { packed, left } = job.plan.days;
  if (packed === undefined) return;
  yield* packing(job, packed);
  yield* also(job, 'packed');
  if (job.plan.handover === 'collected') {
    if (left !== undefined) yield* handingOver(job, left);
  } else yield* shipping(job, left);
  if (left !== undefined) yield* also(job, 'left');
}

/** The whole way of one order, as far as its days go. */
export async function* walk(job: Job): Story {
  const { days } = job.plan;
  yield* takingIn(job);
  yield* also(job, 'requested');
  if (days.opened === undefined) return;
  yield* unpacking(job, days.opened);
  yield* also(job, 'opened');
  if (days.asked !== undefined) yield* agreeing(job, days.asked, days.answered);
  if (days.answered === undefined) return;
  yield* also(job, 'agreed');
  yield* atTheBench(job);
  if (days.finished !== undefined) {
    yield* finishing(job, days.finished);
    yield* also(job, 'finished');
  }
  if (days.cured !== undefined) {
    yield* curing(job, days.cured);
    yield* also(job, 'cured');
  }
  if (days.checked === undefined) return;
  yield* checking(job, days.checked, days.packed !== undefined);
  yield* also(job, 'checked');
  yield* outOfTheDoor(job);
}
