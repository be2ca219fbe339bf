import { submitIntake } from '../../core/shop/intake/submit.ts';
import { setLimbSet } from '../../core/shop/orders/limb-set.ts';
import { readOrder } from '../../core/shop/orders/order-row.ts';
import { recordShipment } from '../../core/shop/shipments/shipments.ts';
import type { Job } from './job.ts';
import type { Plan } from './plan.ts';
import type { Story } from './tell.ts';

/** On the table from the first word: nobody announced it, or somebody carried it in. */
const isHere = (plan: Plan) => plan.cameBy === 'unannounced box' || plan.cameBy === 'walk-in';

const tillers = { 'three-under': '0 to +1/8', split: '+1/8 to +1/4', unknown: 'as it came' };

/** The order as the office typed it. */
async function takeIn(job: Job): Promise<void> {
  const { plan, bow, cast, chronicle } = job;
  const customerId = bow.owner === null ? null : cast.customerIds.get(bow.owner);
  const bowId = cast.bowIds.get(bow.key);
  if (customerId === undefined || bowId === undefined) throw new Error(`no such bow: ${bow.key}`);
  const [targetWeightLbf, targetDrawIn] = plan.target ?? [null, null];
  const here = isHere(plan);
  const order = await submitIntake(job.as(plan.stripFirst ? 'owner' : 'office'), {
    ...job.command(),
    draftId: null,
    customer: customerId === null ? { is: 'shop' } : { is: 'known', id: customerId },
    bow: { is: 'known', id: bowId },
    order: {
      services: [...plan.services],
      targetWeightLbf,
      targetDrawIn,
      tillerTarget: plan.tiller ?? tillers.split,
      promisedOn: plan.promised === null ? null : chronicle.dayFromToday(plan.promised),
      estimateCents: plan.dollars * 100,
      shipTo: '',
      privateNotes: plan.privateNotes ?? '',
      customerNotes: plan.customerNotes ?? '',
    },
    startsAt: here ? 'arrived' : 'requested',
    cameBy: plan.cameBy,
    ...(here ? { arrival: seenAtOnce(job) } : {}),
    ...(plan.handover === undefined ? {} : { handover: plan.handover }),
    ...(plan.stripFirst === undefined ? {} : { stripFirst: true }),
  });
  job.orderId = order.id;
}

function seenAtOnce(job: Job) {
  const { plan, chronicle } = job;
  return {
    openedOn: chronicle.today,
    packaging: plan.packaging ?? (plan.cameBy === 'walk-in' ? 'Carried in, no box' : 'Long box'),
    condition: plan.condition ?? 'Dry and clean, finish worn, nothing loose.',
    belongings: [...(plan.belongings ?? [])],
    nothingCameAlong: (plan.belongings ?? []).length === 0,
  };
}

async function nameLimbs(job: Job): Promise<void> {
  const { plan, bow, cast } = job;
  const which = plan.limbsOnly?.set ?? plan.limbSet;
  if (which === undefined) return;
  const limbSetId = cast.limbSetIds.get(bow.key)?.[which] ?? null;
  await setLimbSet(job.as('office'), {
    ...(await job.version()),
    limbSetId,
    cameAs: plan.limbsOnly === undefined ? 'whole-bow' : 'limbs-only',
  });
}

/** From the first word until the box is on its way. */
export async function* takingIn(job: Job): Story {
  const { plan } = job;
  const { requested, mailed } = plan.days;
  yield job.at(requested, 8.6 + (requested % 5) * 0.7);
  await takeIn(job);
  await nameLimbs(job);
  if (isHere(plan) || mailed === undefined) return;
  yield job.at(mailed, 9.25);
  await job.move('in-mail', 'office');
  await recordShipment(job.as('office'), {
    ...job.command(),
    orderId: job.orderId,
    direction: 'in',
    carrierId: null,
    carrierName: 'As the customer chose',
    shape: 'box',
    lengthIn: null,
    widthIn: null,
    heightIn: null,
    weightLb: null,
    declaredCents: plan.dollars * 250,
    valueEvidence: 'Value as the customer stated it.',
    insured: true,
    tracking: '',
    shippedOn: job.chronicle.today,
    deliveredOn: null,
    note: 'Packing advice sent: unstrung, stiff box, nothing pressing on the limbs.',
  });
}

/** Whether the bow counted as arrived as soon as it was written down. */
export async function alreadyArrived(job: Job): Promise<boolean> {
  return (await readOrder(job.chronicle.shop.read, job.orderId)).stage === 'arrived';
}
