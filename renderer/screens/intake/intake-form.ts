import dayjs from 'dayjs';
import type { BowFields } from '../../../shared/contract/bows.ts';
import type { CustomerFields } from '../../../shared/contract/customers.ts';
import type { intakeStarts } from '../../../shared/contract/intake.ts';
import type { OrderFields } from '../../../shared/contract/orders.ts';
import { emptyBow } from '../bows/bow-fields.ts';
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
  startsAt: (typeof intakeStarts)[number];
  cameBy: string;
  /** What is seen at once of a bow that is here; sent only then. */
  arrival: SeenForm;
  handover: 'shipped' | 'collected';
  stripFirst: boolean;
  cameAs: 'whole-bow' | 'limbs-only';
}

export interface SeenForm {
  openedOn: string;
  packaging: string;
  condition: string;
  /** Chosen from the usual things. */
  belongings: string[];
  /** Anything else, with commas between. */
  moreBelongings: string;
  nothingCameAlong: boolean;
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
  arrival: {
    openedOn: '',
    packaging: '',
    condition: '',
    belongings: [],
    moreBelongings: '',
    nothingCameAlong: false,
  },
  handover: 'shipped',
  stripFirst: false,
  cameAs: 'whole-bow',
};

/** Where the bow is; a box that is here was opened today unless somebody says otherwise. */
export function startsAt(
  form: IntakeForm,
  start: IntakeForm['startsAt'],
  today: string,
): Pick<IntakeForm, 'startsAt' | 'arrival'> {
  const { arrival } = form;
  const openedOn = start === 'arrived' && arrival.openedOn === '' ? today : arrival.openedOn;
  return { startsAt: start, arrival: { ...arrival, openedOn } };
}

/** Where the bow is, and how it goes home, follow from how the request came in until somebody says otherwise. */
export function cameBy(form: IntakeForm, way: string, today: string): Partial<IntakeForm> {
  return {
    cameBy: way,
    handover: way === 'walk-in' ? 'collected' : 'shipped',
    ...startsAt(form, bowIsHere.includes(way) ? 'arrived' : 'requested', today),
  };
}

/** Whose box it is is not known yet: a customer to be replaced by the real one later. */
export function unknownSender(form: IntakeForm, today: string): Partial<IntakeForm> {
  const name = `Unknown sender, box of ${dayjs(today).format('D MMMM')}`;
  return {
    customerIs: 'new',
    customerName: name,
    customer: { ...emptyCustomer, name },
    bowIs: 'open',
    bowId: '',
    ...cameBy(form, 'unannounced box', today),
  };
}

/** Only a job with weight work has two ways round. */
export function hasTwoWays(form: IntakeForm): boolean {
  return form.job.services.includes('reduce-weight');
}

/** A one-piece bow cannot send its limbs alone. */
export function mayBeLimbsOnly(form: IntakeForm): boolean {
  return form.bowIs !== 'new' || form.bow.takeDown !== 'one-piece';
}

/** The draw length is offered before there is a weight; alone it is no target. */
export function jobToSend(job: OrderFields): OrderFields {
  return job.targetWeightLbf === null ? { ...job, targetDrawIn: null } : job;
}
