import { consentKinds, consentLabels } from './consents.ts';
import { fieldsIn, fieldTrouble } from './merge-fields.ts';
import {
  mayNotCoverSentence,
  saysMayNotCover,
  warrantyVoidClause,
  warrantyVoidSentence,
} from './warranty-words.ts';
import { z } from './zod.ts';

/** Steps of an order at which the shop writes to its customer. */
export const messageSteps = [
  'request-taken',
  'packing-advice',
  'arrived',
  'findings',
  'approval-asked',
  'reminder',
  'weight-done',
  'undershoot',
  'balance-due',
  'shipped',
  'going-home',
] as const;
export const messageStep = z.enum(messageSteps);
export type MessageStep = (typeof messageSteps)[number];

export const messageStepLabels: Record<MessageStep, string> = {
  'request-taken': 'Request taken',
  'packing-advice': 'How to pack the bow',
  arrived: 'Bow arrived',
  findings: 'What was found',
  'approval-asked': 'Approval asked',
  reminder: 'Reminder',
  'weight-done': 'Weight work done',
  undershoot: 'Weight below the target',
  'balance-due': 'Ready, balance due',
  shipped: 'Shipped',
  'going-home': 'Going home without the work',
};

export const wordingUses = [
  ...consentKinds.map((kind) => `consent:${kind}` as const),
  ...messageSteps.map((step) => `message:${step}` as const),
] as const;
export type WordingUse = (typeof wordingUses)[number];
export const wordingUse = z.enum(wordingUses);

export const wordingLabels = {
  ...Object.fromEntries(consentKinds.map((kind) => [`consent:${kind}`, consentLabels[kind]])),
  ...Object.fromEntries(messageSteps.map((step) => [`message:${step}`, messageStepLabels[step]])),
} as Record<WordingUse, string>;

export const isConsentUse = (use: WordingUse) => use.startsWith('consent:');

/** Stands under every text a customer is asked; the program writes it, so that no edit loses it. */
export const notLegalAdvice = "This text is the shop's own and not legal advice.";

/** Longest wording, characters; a message's subject line is one of RFC 5322's 998 at most. */
export const wordingMax = 8000;
export const subjectMax = 200;

/** What each field stands for. */
export const mergeFields = {
  shop: 'name of the shop',
  customer: 'name of the customer',
  order: 'number of the order',
  bow: 'the bow in one line',
  subject: 'what is asked, exactly as the order has it',
  work: 'the services of the order',
  target: 'target weight with its draw',
  total: 'price of the order',
  balance: 'what is left to pay',
  deposit: 'deposit asked',
  weight: 'last measured weight with its draw',
  findings: 'open findings, a line each',
  asked: 'texts without an answer, by name',
  offer: 'what the shop offers for a low weight',
  promised: 'day the order is promised for',
  carrier: 'carrier of the parcel home',
  tracking: 'tracking number of the parcel home',
  reason: 'why the bow goes home',
  address: "the shop's address, a line each",
  phone: "the shop's phone",
  email: "the shop's e-mail",
} as const;
export type MergeField = keyof typeof mergeFields;

const consentFields: readonly MergeField[] = [
  'shop',
  'customer',
  'order',
  'bow',
  'subject',
  'work',
  'target',
  'total',
];
const messageFields = (Object.keys(mergeFields) as MergeField[]).filter(
  (name) => name !== 'subject',
);

export function fieldsOf(use: WordingUse): readonly MergeField[] {
  return isConsentUse(use) ? consentFields : messageFields;
}

/** What keeps a wording from being used, by the part it stands in. Empty where nothing does. */
export function wordingTroubles(
  use: WordingUse,
  { subject, body }: { subject: string; body: string },
): Record<string, string> {
  const troubles: Record<string, string> = {};
  const refuse = (part: string, trouble: string | null | false) => {
    if (typeof trouble === 'string') troubles[part] ??= trouble;
  };
  const consent = isConsentUse(use);
  refuse('body', body.trim().length < 20 && 'Write the text.');
  refuse('body', fieldTrouble(body, fieldsOf(use)));
  refuse('subject', fieldTrouble(subject, fieldsOf(use)));
  refuse('subject', !consent && subject.trim() === '' && 'Write the subject line.');
  refuse(
    'body',
    consent &&
      !fieldsIn(body).includes('subject') &&
      'The field {{subject}} must stay: it says what the customer answers to.',
  );
  for (const [part, text] of Object.entries({ subject, body })) {
    const clause = warrantyVoidClause(text);
    refuse(part, clause !== null && `"${clause.slice(0, 200)}": ${warrantyVoidSentence}`);
  }
  refuse(
    'body',
    use === 'consent:alteration-acknowledgement' && !saysMayNotCover(body) && mayNotCoverSentence,
  );
  return troubles;
}
