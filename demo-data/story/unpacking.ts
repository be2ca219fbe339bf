import { completeArrival, recordArrival } from '../../core/shop/arrival/arrival.ts';
import { arrivalFieldsOf, arrivalRowOf } from '../../core/shop/arrival/arrival-row.ts';
import { addBelongings } from '../../core/shop/arrival/belongings.ts';
import type { ArrivalFields } from '../../shared/contract/arrival.ts';
import type { Job } from './job.ts';
import { alreadyArrived } from './taking-in.ts';
import type { Story } from './tell.ts';
import { arrivalTillerIn, braceOf, weigh } from './weigh.ts';

const calm = { packagingKept: true, lookedOver: false, strung: 'not-yet' } as const;

function opened(job: Job): ArrivalFields {
  const { plan } = job;
  return {
    openedOn: job.chronicle.today,
    cameBy: 'Parcel carrier, left at the office door',
    packaging: plan.packaging ?? 'Long cardboard box, paper around the limbs',
    packagingDamaged: plan.boxDamaged ?? false,
    condition: plan.condition ?? 'Dry and clean, finish worn, nothing loose.',
    nothingCameAlong: (plan.belongings ?? []).length === 0,
    restingSince: job.chronicle.now(),
    notStrungBecause: '',
    alignment: '',
    braceIn: null,
    tillerIn: null,
    stringTrack: '',
    note: '',
    ...calm,
  };
}

async function change(job: Job, part: Partial<ArrivalFields>): Promise<void> {
  const row = await arrivalRowOf(job.chronicle.shop.read, job.orderId);
  const before = row === undefined ? opened(job) : arrivalFieldsOf(row);
  await recordArrival(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    rowVersion: row?.row_version ?? null,
    ...before,
    ...part,
  });
}

async function complete(job: Job): Promise<void> {
  const row = await arrivalRowOf(job.chronicle.shop.read, job.orderId);
  const done = await completeArrival(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    rowVersion: row?.row_version ?? 0,
  });
  if (done.outcome === 'incomplete') {
    throw new Error(`${job.bow.key} is not looked over: ${done.missing.join(' ')}`);
  }
}

/** The box on the table: what came, in what state, with its pictures. */
async function openBox(job: Job): Promise<void> {
  const { plan } = job;
  if (await alreadyArrived(job)) {
    await change(job, { restingSince: job.chronicle.now(), packagingKept: true });
  } else {
    if (plan.days.mailed === undefined) await job.move('in-mail', 'office');
    await change(job, {});
    if (plan.belongings !== undefined && plan.belongings.length > 0) {
      await addBelongings(job.as('bench'), {
        ...job.command(),
        orderId: job.orderId,
        what: [...plan.belongings],
      });
    }
    await job.move('arrived', 'office');
  }
  const boxed = plan.cameBy !== 'walk-in';
  if (plan.boxDamaged)
    await job.photograph('crushed box', 'Box as it came', { about: 'packaging' });
  else if (boxed) await job.photograph('box', 'Box as it came', { about: 'packaging' });
  await job.photograph(plan.limbsOnly === undefined ? 'unstrung' : 'limbs', 'As it came out');
  for (const subject of plan.pictures ?? []) {
    const about = subject === 'bill' ? 'value' : subject === 'packing paper' ? 'packaging' : 'bow';
    await job.photograph(subject, subject.charAt(0).toUpperCase() + subject.slice(1), { about });
  }
}

/** Looked over, strung after its rest where nothing speaks against it, and weighed. */
async function lookOver(job: Job): Promise<void> {
  const { plan } = job;
  for (const finding of plan.findings ?? []) await job.find(finding);
  if (plan.notStrung !== undefined) {
    await change(job, {
      lookedOver: true,
      strung: 'not-strung',
      notStrungBecause: plan.notStrung,
    });
    await complete(job);
    return;
  }
  await change(job, {
    lookedOver: true,
    strung: 'strung',
    alignment: 'Limbs in line, no twist that moves under the hand.',
    braceIn: braceOf(job),
    tillerIn: arrivalTillerIn,
    stringTrack: 'Down the middle of both limbs.',
  });
  await complete(job);
  if (plan.weights !== undefined) await weigh(job, 'arrival', plan.weights.arrival);
}

/** One day at the unpacking table. */
export async function* unpacking(job: Job, daysAgo: number): Story {
  yield job.at(daysAgo, 9.5 + (job.orderId.length % 3) * 0.2);
  await openBox(job);
  if (job.plan.justOpened) return;
  yield job.at(daysAgo, 13.5);
  await lookOver(job);
}
