import { tickBack } from '../../core/shop/arrival/belongings.ts';
import { recordFinalCheck } from '../../core/shop/final-check/record.ts';
import { issuePaper } from '../../core/shop/papers/papers.ts';
import { editShipment, recordShipment } from '../../core/shop/shipments/shipments.ts';
import type { ContractInputs } from '../../shared/contract/types.ts';
import type { Job } from './job.ts';
import type { Story } from './tell.ts';
import { weigh } from './weigh.ts';

type Check = ContractInputs['finalCheck']['record']['checks'][number];

const notes: Partial<Record<Check['item'], string>> = {
  'check-flexed': 'Twenty times; fades and tips looked at again.',
  'check-brace-and-tiller': 'Upper minus lower +1/8".',
  'check-markings': 'Read aloud against the approved lines.',
};

/** Flexed, looked at and weighed by the owner of the shop. */
export async function* checking(job: Job, daysAgo: number, isComplete: boolean): Story {
  yield job.at(daysAgo, 10.1);
  await job.move('final-check', 'owner');
  if (!isComplete) return;
  yield job.at(daysAgo, 14.6);
  const { finalCheck } = await job.order();
  const { weights } = job.plan;
  if (finalCheck.some((row) => row.item === 'check-weighed') && weights !== undefined) {
    await weigh(job, 'final', job.finalLbf - 0.1);
  }
  await recordFinalCheck(job.as('owner'), {
    ...job.command(),
    orderId: job.orderId,
    doneOn: job.chronicle.today,
    checks: finalCheck.map(({ item }) => ({
      item,
      outcome: 'ok' as const,
      note: notes[item] ?? '',
      finding: null,
    })),
  });
  await job.photograph('strung', 'Finished, braced');
}

/** A box from the shop's stock that the bow goes into, inches and pounds. */
function boxFor(job: Job) {
  const lengthIn = job.plan.limbsOnly
    ? 36
    : job.bow.fields.takeDown === 'one-piece'
      ? (job.bow.fields.amoLengthIn ?? 62) + 4
      : 40;
  return { lengthIn, widthIn: 6, heightIn: 5, weightLb: Number((lengthIn / 12).toFixed(1)) };
}

function termsOf(job: Job, isGoingHome: boolean): string {
  if (job.bow.owner === null) return "The shop's own bow.";
  return isGoingHome ? 'Return postage only, paid by card.' : 'Balance paid by card.';
}

/** What the parcel is before it has a number. */
async function parcelOf(job: Job) {
  const { carrierId, name } = await job.cast.carrier();
  return {
    carrierId,
    carrierName: name,
    shape: 'box' as const,
    ...boxFor(job),
    declaredCents: job.plan.dollars * 250,
    valueEvidence: 'Photographs on arrival; value as the customer stated it.',
    insured: true,
    tracking: '',
    shippedOn: null,
    deliveredOn: null,
    note: '',
  };
}

/** Everything back in the box, paid, wrapped and measured. */
export async function* packing(job: Job, daysAgo: number): Story {
  yield job.at(daysAgo, 11.2);
  const order = await job.order();
  for (const thing of order.belongings) {
    await tickBack(job.as('office'), {
      ...job.command(),
      id: thing.id,
      rowVersion: thing.rowVersion,
      note: '',
    });
  }
  await job.note('paid-or-terms', termsOf(job, order.card.goingHome !== null), 'office');
  if (order.card.goingHome === null) await job.move('packed', 'office');
}

/** Working days until a parcel is noted as delivered. */
const daysOnTheWay = 4;

/** The parcel, from its measuring to the day it left. */
export async function* shipping(job: Job, daysAgo: number | undefined): Story {
  const parcel = await parcelOf(job);
  const shipment = await recordShipment(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    direction: 'out',
    ...parcel,
  });
  if (daysAgo === undefined) return;
  yield job.at(daysAgo, 15.5);
  await printTag(job);
  const { card } = await job.order();
  const sent = {
    ...parcel,
    tracking: `DEMO ${card.number.replace('-', ' ')} 0001`,
    shippedOn: job.chronicle.today,
  };
  const change = (rowVersion: number, deliveredOn: string | null) =>
    editShipment(job.as('office'), {
      ...job.command(),
      ...sent,
      id: shipment.id,
      rowVersion,
      deliveredOn,
    });
  const { rowVersion } = await change(shipment.rowVersion, null);
  await job.move('shipped', 'office');
  if (daysAgo <= daysOnTheWay) return;
  yield job.at(daysAgo - daysOnTheWay, 9.3);
  await change(rowVersion, job.chronicle.today);
}

/** The tag that goes on the box, or the one tied to a bow that goes home unworked. */
export async function printTag(
  job: Job,
  kind: 'shipping-tag' | 'return-tag' = 'shipping-tag',
): Promise<void> {
  await issuePaper(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    aboutId: null,
    kind,
    format: '4x6',
    copy: 'parcel',
    action: 'printed',
  });
}

/** Handed over the counter. */
export async function* handingOver(job: Job, daysAgo: number): Story {
  yield job.at(daysAgo, 16.4);
  const { customer } = await job.order();
  await job.note('handed-to', `${customer?.name ?? 'The buyer'}, in person.`, 'office');
  await job.move('collected', 'office');
}
