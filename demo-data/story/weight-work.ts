import { checkGlass } from '../../core/shop/bench/glass-checks.ts';
import { noteRemoval } from '../../core/shop/bench/noted-removal.ts';
import { readTiller } from '../../core/shop/bench/tiller-readings.ts';
import { recordGeometry } from '../../core/shop/bows/geometry.ts';
import { readOrder } from '../../core/shop/orders/order-row.ts';
import type { Station } from '../../shared/contract/geometry.ts';
import { inchFraction } from '../../shared/measure.ts';
import type { Job } from './job.ts';
import type { Story } from './tell.ts';
import { weigh } from './weigh.ts';

const nothingSeen = {
  showThrough: false,
  strands: false,
  runOut: false,
  exposedCore: false,
  note: 'Unstrung and looked at.',
};
const inTiller = {
  tillerIn: 0.125,
  upperTrack: 'centre',
  lowerTrack: 'centre',
  braceIn: null,
  note: '',
} as const;

const fromFade = [2, 6, 10, 14, 18];

/** Widths and thicknesses from fade to tip; narrower by what was taken off so far. */
function stationsOf(job: Job, narrowerIn: number): Station[] {
  const limbIn = job.bow.fields.limbs.upper.limbIn ?? 22;
  const wide = job.bow.fields.kind === 'longbow' ? 1.25 : 1.5;
  return (['upper', 'lower'] as const).flatMap((limb) =>
    fromFade
      .filter((at) => at < limbIn - 2)
      .map((at) => ({
        limb,
        fromFadeIn: at,
        widthIn: Number((wide * (1 - (0.55 * at) / limbIn) - narrowerIn).toFixed(3)),
        thicknessIn: Number((0.47 - 0.006 * at + (limb === 'lower' ? 0.004 : 0)).toFixed(3)),
        surface: 'over-finish' as const,
      })),
  );
}

async function measure(job: Job, narrowerIn: number, note: string): Promise<void> {
  const order = await readOrder(job.chronicle.shop.read, job.orderId);
  await recordGeometry(job.as('bench'), {
    ...job.command(),
    bowId: order.bow_id ?? '',
    limbSetId: order.limb_set_id,
    orderId: job.orderId,
    note,
    stations: stationsOf(job, narrowerIn),
  });
}

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

/** Measured, planned and accepted: nothing stands before the first bite any more. */
export async function prepareWork(job: Job): Promise<void> {
  await measure(job, 0, 'Before any work, over the old finish.');
  await job.note(
    'plan-accepted',
    `Narrowing in ${Math.max(2, job.plan.weights?.bites?.length ?? 0)} bites, stop about 2 lb above ${job.plan.target?.[0] ?? 0} lb: sanding takes the rest.`,
    'owner',
  );
  await job.note('bare-glass', 'No thinning planned; finish stays on until the weight is near.');
}

/** Weight work, in ever smaller bites, stopping above the target. */
export async function* weightWork(job: Job, days: readonly number[]): Story {
  const { plan } = job;
  const bites = plan.weights?.bites ?? [];
  const [first = 0, ...later] = days;
  yield job.at(first, 9.1);
  await prepareWork(job);
  await job.move('weight-work');
  const perDay = Math.max(1, Math.ceil(bites.length / days.length));
  let before = plan.weights?.arrival ?? 0;
  for (const [place, after] of bites.entries()) {
    const day = [first, ...later][Math.floor(place / perDay)] ?? first;
    yield job.at(day, 10.2 + (place % perDay) * 1.6);
    await bite(job, place, before, after);
    before = after;
  }
  if (plan.days.sanded !== undefined && bites.length > 0) {
    yield job.at(later.at(-1) ?? first, 15.6);
    await measure(job, 0.12, 'After the last bite.');
  }
}
