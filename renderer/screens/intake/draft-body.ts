import { type BowFields, bowFields } from '../../../shared/contract/bows.ts';
import { type CustomerFields, customerFields } from '../../../shared/contract/customers.ts';
import { type DraftBody, intakeStarts } from '../../../shared/contract/intake.ts';
import { type OrderFields, orderFields } from '../../../shared/contract/orders.ts';
import { service } from '../../../shared/stages.ts';
import { z } from '../../../shared/zod.ts';
import { emptyIntake, type IntakeForm } from './intake-form.ts';

/** Longest text a draft keeps in one field. */
const longest = 4000;

type Plain = string | boolean | string[];

function written(value: unknown): Plain | null {
  if (typeof value === 'string') return value.slice(0, longest);
  if (typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isNaN(value) ? '' : String(value);
  if (Array.isArray(value)) return value.map(String);
  return value === null ? '' : null;
}

function flatten(value: object, path: string, into: DraftBody): DraftBody {
  for (const [key, field] of Object.entries(value)) {
    const name = path === '' ? key : `${path}.${key}`;
    const plain = written(field);
    if (plain === null) flatten(field as object, name, into);
    else into[name] = plain;
  }
  return into;
}

/** The request as the flat texts a draft is kept in. */
export function toDraftBody(form: IntakeForm): DraftBody {
  return flatten(form, '', {});
}

/** Puts one kept text back into the kind of value the form holds; odd ones fall back to empty. */
function restored(text: Plain | undefined, empty: unknown, isNumber: boolean): unknown {
  if (text === undefined) return empty;
  if (isNumber) {
    const number = typeof text === 'string' && text.trim() !== '' ? Number(text) : null;
    return number === null || Number.isFinite(number) ? number : empty;
  }
  if (empty === null) return text === '' ? null : text;
  if (Array.isArray(empty)) return Array.isArray(text) ? text : empty;
  return typeof text === typeof empty ? text : empty;
}

/** Paths of the fields that hold a number, so that a new one of the contract is not forgotten here. */
function numbersOf(schema: z.ZodObject, path: string): string[] {
  return Object.entries(schema.shape).flatMap(([key, field]) => {
    const name = `${path}.${key}`;
    if (field instanceof z.ZodObject) return numbersOf(field, name);
    const inner = field instanceof z.ZodNullable ? field.unwrap() : field;
    return inner instanceof z.ZodNumber ? [name] : [];
  });
}

const numbers = new Set([
  'customer.ownDrawIn',
  ...numbersOf(bowFields, 'bow'),
  'job.targetWeightLbf',
  'job.targetDrawIn',
  'job.estimateCents',
]);

function unflatten<T extends object>(empty: T, path: string, body: DraftBody): T {
  const entries = Object.entries(empty).map(([key, value]) => {
    const name = path === '' ? key : `${path}.${key}`;
    const isGroup = typeof value === 'object' && value !== null && !Array.isArray(value);
    return [
      key,
      isGroup ? unflatten(value, name, body) : restored(body[name], value, numbers.has(name)),
    ];
  });
  return Object.fromEntries(entries) as T;
}

const choices = {
  customerIs: ['open', 'known', 'new', 'shop'],
  bowIs: ['open', 'known', 'new', 'later'],
  startsAt: intakeStarts,
  handover: ['shipped', 'collected'],
  cameAs: ['whole-bow', 'limbs-only'],
} as const;

function oneOf<const T extends readonly string[]>(all: T, value: string): T[number] {
  return all.find((one) => one === value) ?? (all[0] as T[number]);
}

/** Answers to choose from must be ones that still exist; typed text is kept whatever it says. */
function knownAnswers<T extends object>(fields: T, empty: T, shape: Record<string, Safe>): T {
  const kept = Object.entries(fields).map(([key, value]) => {
    const group = shape[key];
    if (group instanceof z.ZodObject) {
      return [key, knownAnswers(value, empty[key as keyof T] as object, group.shape)];
    }
    const isChoice = shape[key] !== undefined && 'options' in shape[key];
    const fits = !isChoice || shape[key]?.safeParse(value).success === true;
    return [key, fits ? value : empty[key as keyof T]];
  });
  return Object.fromEntries(kept) as T;
}

interface Safe {
  safeParse(value: unknown): { success: boolean };
}

/** The request as it was when the draft was kept, also from an older or damaged draft. */
export function fromDraftBody(body: DraftBody): IntakeForm {
  const form = unflatten(emptyIntake, '', body);
  const job: OrderFields = knownAnswers(form.job, emptyIntake.job, orderFields.shape);
  const customer: CustomerFields = knownAnswers(
    form.customer,
    emptyIntake.customer,
    customerFields.shape,
  );
  const bow: BowFields = knownAnswers(form.bow, emptyIntake.bow, bowFields.shape);
  return {
    ...form,
    customerIs: oneOf(choices.customerIs, form.customerIs),
    bowIs: oneOf(choices.bowIs, form.bowIs),
    startsAt: oneOf(choices.startsAt, form.startsAt),
    handover: oneOf(choices.handover, form.handover),
    cameAs: oneOf(choices.cameAs, form.cameAs),
    customer,
    bow,
    job: { ...job, services: job.services.filter((one) => service.safeParse(one).success) },
  };
}
