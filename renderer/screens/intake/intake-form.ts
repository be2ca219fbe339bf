import type { BowFields } from '../../../shared/contract/bows.ts';
import type { CustomerFields } from '../../../shared/contract/customers.ts';
import type { OrderFields } from '../../../shared/contract/orders.ts';
import { emptyBow } from '../bows/bow-form.tsx';
import { emptyCustomer } from '../customers/customer-form.tsx';

/** A request as it is being typed. */
export interface IntakeForm {
  customerIs: 'open' | 'known' | 'new' | 'shop';
  customerId: string;
  /** As typed into the search, or the chosen customer's name. */
  customerName: string;
  customer: CustomerFields;
  bowIs: 'open' | 'known' | 'new' | 'later';
  bowId: string;
  bow: BowFields;
  job: OrderFields;
  startsAt: 'requested' | 'in-mail';
  cameBy: string;
}

export const waysIn = ['phone', 'mail', 'web form', 'walk-in', 'unannounced box'] as const;
/** The bow stands here already. */
const bowIsHere: readonly string[] = ['walk-in', 'unannounced box'];

export const usualDrawIn = 28;

export const emptyIntake: IntakeForm = {
  customerIs: 'open',
  customerId: '',
  customerName: '',
  customer: emptyCustomer,
  bowIs: 'open',
  bowId: '',
  bow: emptyBow,
  job: {
    services: [],
    targetWeightLbf: null,
    targetDrawIn: usualDrawIn,
    tillerTarget: '',
    promisedOn: null,
    estimateCents: null,
    shipTo: '',
    privateNotes: '',
    customerNotes: '',
  },
  startsAt: 'requested',
  cameBy: 'phone',
};

/** Where the bow is follows from how the request came in, until somebody says otherwise. */
export function cameBy(way: string): Pick<IntakeForm, 'cameBy' | 'startsAt'> {
  return { cameBy: way, startsAt: bowIsHere.includes(way) ? 'in-mail' : 'requested' };
}

/** The draw length is offered before there is a weight; alone it is no target. */
export function jobToSend(job: OrderFields): OrderFields {
  return job.targetWeightLbf === null ? { ...job, targetDrawIn: null } : job;
}
