import { customerFields } from '../../../shared/contract/customers.ts';
import { type IntakeArrival, intakeArrival } from '../../../shared/contract/intake.ts';
import type { ContractRequests } from '../../../shared/contract/types.ts';
import { fieldErrors } from '../../parts/field-errors.ts';
import { bowErrors, emptyBow } from '../bows/bow-fields.ts';
import { jobErrors } from '../orders/facts/job-fields.ts';
import { thingsFrom } from '../unpacking/arrival-fields.ts';
import {
  hasTwoWays,
  type IntakeForm,
  jobToSend,
  mayBeLimbsOnly,
  type SeenForm,
} from './intake-form.ts';

export type SubmitInput = Omit<ContractRequests['intake']['submit'], 'commandId'>;

const under = (group: string, errors: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(errors).map(([path, text]) => [`${group}.${path}`, text]));

/** What still stands in the way, by the form's own paths; empty when it can be sent. */
export function intakeErrors(form: IntakeForm): Record<string, string> {
  const errors: Record<string, string> = {};
  if (form.customerIs === 'open')
    errors.customer = 'Choose who it is, or take it as a new customer.';
  if (form.bowIs === 'open') errors.bow = 'Choose the bow, or "Not known yet".';
  if (form.cameBy.trim() === '') errors.cameBy = 'Say how it came.';
  return {
    ...errors,
    ...(form.customerIs === 'new'
      ? under('customer', fieldErrors(customerFields, form.customer))
      : {}),
    ...(form.bowIs === 'new' ? under('bow', bowErrors(form.bow)) : {}),
    ...under('job', jobErrors(jobToSend(form.job))),
    ...(form.startsAt === 'arrived'
      ? under('arrival', fieldErrors(intakeArrival, seenToSend(form.arrival)))
      : {}),
  };
}

function customerOf(form: IntakeForm): SubmitInput['customer'] {
  if (form.customerIs === 'shop') return { is: 'shop' };
  if (form.customerIs === 'new') return { is: 'new', fields: form.customer };
  return { is: 'known', id: form.customerId };
}

function bowOf(form: IntakeForm): SubmitInput['bow'] {
  if (form.bowIs === 'later') return { is: 'later' };
  if (form.bowIs === 'new') return { is: 'new', fields: form.bow };
  return { is: 'known', id: form.bowId };
}

/** What was seen of a bow that is here, as the contract takes it. */
function seenToSend({ belongings, moreBelongings, ...seen }: SeenForm): IntakeArrival {
  return { ...seen, belongings: [...belongings, ...thingsFrom(moreBelongings)] };
}

export function submitInput(form: IntakeForm, draftId: string): SubmitInput {
  return {
    draftId,
    customer: customerOf(form),
    bow: bowOf(form),
    order: jobToSend(form.job),
    startsAt: form.startsAt,
    cameBy: form.cameBy,
    handover: form.handover,
    cameAs: mayBeLimbsOnly(form) ? form.cameAs : 'whole-bow',
    ...(hasTwoWays(form) ? { stripFirst: form.stripFirst } : {}),
    ...(form.startsAt === 'arrived' ? { arrival: seenToSend(form.arrival) } : {}),
  };
}

/** Where the core's names for a field (`order.services`, `customer.fields.name`) stand in the form. */
export function formErrors(details: Record<string, string>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(details).map(([path, text]) => {
      // The core names a bow's own field bare; the form keeps it under "bow".
      if ((path.split('.')[0] ?? '') in emptyBow) return [`bow.${path}`, text];
      const inForm = path
        .replace(/^order\./, 'job.')
        .replace(/^(customer|bow)\.fields\./, '$1.')
        .replace(/^(target(?:Weight|Draw)\w+)$/, 'job.$1');
      return [inForm, text];
    }),
  );
}
