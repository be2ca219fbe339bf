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

const finishOf = ({ plan }: Job) => plan.finish ?? 'two-part';

/** The system of the order's finish. */
function systemOf(job: Job): string {
  const id = job.cast.finishIds.get(finishOf(job));
  if (id === undefined) throw new Error(`${job.bow.key}: no sheet of ${finishOf(job)} yet`);
  return id;
}

/** Of each grit over each face, where the bow is brought to a weight: then they are counted. */
const strokesOf: Record<number, number> = { 120: 60, 180: 80, 220: 50, 240: 60, 320: 60 };

interface Sanded {
  parts: Parts;
  number: number;
  isLast: boolean;
  strokes?: number | null;
}

async function grit(job: Job, { parts, number, isLast, strokes = null }: Sanded): Promise<void> {
  await recordGrit(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    parts,
    grit: { grit: number, scale: 'P' },
    strokes,
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
    const strokes = job.card === null ? null : (strokesOf[number] ?? null);
    const isLast = at === sequence.length - 1;
    await grit(job, { parts: limbs, number, isLast, strokes });
  }
  if (job.plan.limbsOnly !== undefined) return;
  const riser: Parts = [{ section: 'riser', substrate: 'wood' }];
  await grit(job, { parts: riser, number: 150, isLast: false });
  await grit(job, { parts: riser, number: 220, isLast: true });
}

export async function choose(job: Job): Promise<void> {
  await chooseFinish(job.as('owner'), {
    ...job.command(),
    orderId: job.orderId,
    finishSystemId: systemOf(job),
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
  if (finishOf(job) !== 'two-part') return null;
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
  yield job.at(at.daysAgo, at.hour);
  await readAir(job);
  const batchId = await mixed(job, systemId);
  yield job.at(at.daysAgo, at.hour + 0.4);
  const oil = finishOf(job) === 'oil';
  const lettered = job.plan.services.includes('re-mark');
  const usual = oil ? 'oil' : which === 'first' && lettered ? 'first-clear' : 'clear';
  await coat(job, systemId, batchId, usual, which === 'second');
}
