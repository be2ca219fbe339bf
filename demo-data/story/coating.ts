import { recordAir } from '../../core/shop/finish/air.ts';
import { chooseFinish } from '../../core/shop/finish/choose.ts';
import { mixBatch } from '../../core/shop/finish/mix.ts';
import { recordGrit } from '../../core/shop/finish/sandings.ts';
import { spray } from '../../core/shop/finish/spray.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import type { CoatPurpose, Substrate } from '../../shared/finish.ts';
import type { Job } from './job.ts';
import type { Story } from './tell.ts';

type Parts = ContractInputs['finish']['recordSanding']['parts'];

/** The system of the order's finish; null in the days before the shop kept such records. */
export function systemOf(job: Job): string | null {
  return job.cast.finishIds.get(job.plan.finish ?? 'two-part') ?? null;
}

async function grit(job: Job, parts: Parts, number: number, isLast: boolean): Promise<void> {
  await recordGrit(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    parts,
    grit: { grit: number, scale: 'P' },
    strokes: null,
    wiped: true,
    isLast,
    note: '',
    at: null,
  });
}

/** Lengthwise, one grit after the other, wiped between them. */
export async function sandDown(job: Job): Promise<void> {
  const wood = job.bow.fields.construction === 'all-wood';
  const substrate: Substrate = wood ? 'wood' : 'glass';
  const limbs: Parts = [
    { section: 'upper-limb', substrate },
    { section: 'lower-limb', substrate },
  ];
  const sequence = wood ? [120, 180, 220] : [180, 240, 320];
  for (const [at, number] of sequence.entries()) {
    await grit(job, limbs, number, at === sequence.length - 1);
  }
  if (job.plan.limbsOnly !== undefined) return;
  const riser: Parts = [{ section: 'riser', substrate: 'wood' }];
  await grit(job, riser, 150, false);
  await grit(job, riser, 220, true);
}

export async function choose(job: Job, finishSystemId: string): Promise<void> {
  await chooseFinish(job.as('owner'), {
    ...job.command(),
    orderId: job.orderId,
    finishSystemId,
    rowVersion: null,
  });
}

export async function readAir(job: Job): Promise<void> {
  await recordAir(job.as('bench'), {
    ...job.command(),
    airF: 70,
    humidityPercent: 48,
    surfaceF: 69.5,
    note: '',
    at: null,
  });
}

/** Mixed for this bow; null for what is used as it comes. */
async function mixed(job: Job, finishSystemId: string): Promise<string | null> {
  if ((job.plan.finish ?? 'two-part') !== 'two-part') return null;
  const result = await mixBatch(job.as('bench'), {
    ...job.command(),
    finishSystemId,
    name: '',
    wanted: { by: 'volume', ml: 60 },
    mixF: 70,
    at: null,
    note: '',
  });
  if (result.outcome === 'mixed') return result.id;
  throw new Error(`${job.bow.key} has no batch: ${result.troubles.join(' ')}`);
}

async function coat(
  job: Job,
  finishSystemId: string,
  batchId: string | null,
  purpose: CoatPurpose,
  isScuffed: boolean,
): Promise<void> {
  const scuffed = isScuffed ? { grit: { grit: 400, scale: 'P' as const } } : null;
  const result = await spray(job.as('bench'), {
    ...job.command(),
    finishSystemId,
    batchId,
    lotId: null,
    airReadingId: null,
    purpose,
    sections: [],
    coats: 1,
    wetMil: null,
    bows: [{ orderId: job.orderId, scuffed, surfaceF: null, hungSince: null }],
    at: null,
    note: '',
    used: null,
  });
  if (result.outcome === 'recorded') return;
  const missing = [...result.session, ...result.orders.flatMap((order) => order.missing)];
  throw new Error(
    `${job.bow.key} cannot be coated: ${missing.map((each) => each.sentence).join(' ')}`,
  );
}

/** The air is read, the batch mixed and left to stand, then the coat goes on. */
export async function* coating(
  job: Job,
  at: { daysAgo: number; hour: number },
  which: 'first' | 'second',
): Story {
  const systemId = systemOf(job);
  if (systemId === null) return;
  yield job.at(at.daysAgo, at.hour);
  await readAir(job);
  const batchId = await mixed(job, systemId);
  yield job.at(at.daysAgo, at.hour + 0.4);
  const oil = job.plan.finish === 'oil';
  const lettered = job.plan.services.includes('re-mark');
  const usual = oil ? 'oil' : which === 'first' && lettered ? 'first-clear' : 'clear';
  await coat(job, systemId, batchId, usual, which === 'second');
}
