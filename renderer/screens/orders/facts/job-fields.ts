import {
  type OrderDetail,
  type OrderFields,
  orderFields,
} from '../../../../shared/contract/orders.ts';
import { weightAtDraw } from '../../../../shared/measure.ts';
import { serviceLabels } from '../../../../shared/stages.ts';
import { fullDay, moneyText } from '../../../parts/days.ts';
import { fieldErrors } from '../../../parts/field-errors.ts';

/** The part of an order that the office may change. */
export function jobOf(order: OrderDetail): OrderFields {
  return {
    services: order.services,
    targetWeightLbf: order.targetWeightLbf,
    targetDrawIn: order.targetDrawIn,
    tillerTarget: order.tillerTarget,
    promisedOn: order.promisedOn,
    estimateCents: order.estimateCents,
    shipTo: order.shipTo,
    privateNotes: order.privateNotes,
    customerNotes: order.customerNotes,
  };
}

/** What is wrong, by field: the contract's limits and that a target needs weight and draw. */
export function jobErrors(job: OrderFields): Record<string, string> {
  const errors = fieldErrors(orderFields, job);
  const { targetWeightLbf: weight, targetDrawIn: draw } = job;
  if (weight === null && draw !== null) errors.targetWeightLbf ??= 'Give both or neither.';
  if (weight !== null && draw === null) errors.targetDrawIn ??= 'Give both or neither.';
  return errors;
}

export const jobLabels: Record<keyof OrderFields, string> = {
  services: 'Services',
  targetWeightLbf: 'Target weight',
  targetDrawIn: 'Target draw',
  tillerTarget: 'Tiller target',
  promisedOn: 'Promised',
  estimateCents: 'Estimate',
  shipTo: 'Ship to',
  privateNotes: 'Private notes',
  customerNotes: 'Notes for the customer',
};

/** The job as name and value, for reading. */
export function jobFacts(job: OrderFields): [string, string][] {
  const { targetWeightLbf: weight, targetDrawIn: draw } = job;
  return [
    [jobLabels.services, job.services.map((service) => serviceLabels[service]).join(', ')],
    ['Target', weight === null || draw === null ? '' : weightAtDraw(weight, draw)],
    [`${jobLabels.tillerTarget}, in`, job.tillerTarget],
    [jobLabels.promisedOn, job.promisedOn === null ? '' : fullDay(job.promisedOn)],
    [jobLabels.estimateCents, job.estimateCents === null ? '' : moneyText(job.estimateCents)],
    [jobLabels.shipTo, job.shipTo],
    [jobLabels.privateNotes, job.privateNotes],
    [jobLabels.customerNotes, job.customerNotes],
  ];
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

export interface Rebased {
  job: OrderFields;
  /** Fields that both changed; mine stands, theirs is to be looked at. */
  clashes: (keyof OrderFields)[];
}

/** My changes put onto what somebody else saved meanwhile: fields I left alone follow theirs. */
export function rebase(base: OrderFields, mine: OrderFields, theirs: OrderFields): Rebased {
  const job: Partial<Record<keyof OrderFields, unknown>> = { ...theirs };
  const clashes: (keyof OrderFields)[] = [];
  for (const key of Object.keys(jobLabels) as (keyof OrderFields)[]) {
    if (same(mine[key], base[key])) continue;
    job[key] = mine[key];
    if (!same(theirs[key], base[key]) && !same(theirs[key], mine[key])) clashes.push(key);
  }
  return { job: orderFieldsOf(job, mine), clashes };
}

function orderFieldsOf(part: Partial<Record<keyof OrderFields, unknown>>, rest: OrderFields) {
  return Object.assign({}, rest, part) as OrderFields;
}
