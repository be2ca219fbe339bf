import { readOrder } from '../../core/shop/orders/order-row.ts';
import { addReading } from '../../core/shop/readings/readings.ts';
import { takesMoisture } from '../../shared/bow-checks.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import type { Changed } from '../../shared/fields.ts';
import type { Job } from './job.ts';
import { weighingDraw } from './plan.ts';

type Phase = ContractInputs['readings']['add']['phase'];

/** Brace heights usual for each kind, inches; common practice. */
const braces = { longbow: 7, hybrid: 7.25, recurve: 8 } as const;

export function braceOf(job: Job): number {
  const { kind, construction } = job.bow.fields;
  return construction === 'all-wood' ? 6.25 : braces[kind];
}

/** Tiller of every bow when it comes, inches. */
export const arrivalTillerIn = 0.125;

/** Pounds an inch that a bow of this weight takes near full draw: about a fifteenth of it, common practice. */
const perInch = (pounds: number) => pounds / 15;

const tenth = (pounds: number) => Math.round(pounds * 10) / 10;

function pullsAt(drawIn: number, pounds: number) {
  const at = (inches: number, force: number) => ({ drawIn: inches, forceLbf: tenth(force) });
  return [
    at(drawIn, pounds + 1.1),
    at(drawIn - 2, pounds - 2 * perInch(pounds)),
    at(drawIn - 1, pounds - perInch(pounds)),
    at(drawIn, pounds - 0.1),
    at(drawIn, pounds + 0.1),
  ];
}

/** A weighing session at the order's draw, on the scale that was checked that day. */
export async function weigh(
  job: Job,
  phase: Phase,
  pounds: number,
  { tillerIn = arrivalTillerIn }: { tillerIn?: number | null } = {},
): Promise<Changed> {
  const { cast, plan, bow } = job;
  const scaleId = cast.scales[0] ?? '';
  await cast.checkScale(scaleId);
  const order = await readOrder(job.chronicle.shop.read, job.orderId);
  return addReading(job.as('bench'), {
    ...job.command(),
    orderId: job.orderId,
    phase,
    drawReference: 'amo',
    limbSetId: order.limb_set_id,
    riserNote: plan.limbsOnly?.riser ?? '',
    scaleId,
    rigZeroLbf: 0,
    braceIn: braceOf(job),
    stringNote: phase === 'arrival' ? 'as it came, 14 strands' : 'shop string, 14 strands',
    stringTrack: 'middle of both limbs',
    supportPoint: 'throat of the grip',
    pullPoint: 'nock point',
    tillerIn,
    temperatureF: 68,
    moisturePct: takesMoisture(bow.fields) ? bow.fields.moisturePct : null,
    strungMinutes: phase === 'arrival' ? 15 : 10,
    flexedFirst: true,
    note: '',
    pulls: pullsAt(weighingDraw(plan, bow.fields), pounds),
  });
}
