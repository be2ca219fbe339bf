import type { Answer, Channel } from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import type { Customer } from '../../../../shared/contract/customers.ts';
import { centsFrom } from '../../../parts/days.ts';
import { isBegun, type SignedBy, signatureOf } from './signature-fields.ts';

export interface AnswerFields {
  answer: Answer | null;
  channel: Channel;
  /** Local date and time as the browser's field holds it. */
  answeredAt: string;
  answeredBy: string;
  contact: string;
  words: string;
  /** Dollars as typed, with a minus when the price goes down. */
  costChange: string;
  signed: SignedBy;
  /** A file of the order that shows the answer. */
  attachmentId: string | null;
}

/** Number or address the customer is known under on this channel. */
export function knownContact(channel: Channel, customer: Customer | null): string {
  if (channel === 'phone') return customer?.phone ?? '';
  return channel === 'email' ? (customer?.email ?? '') : '';
}

/** What may still be answered: once granted only a withdrawal, once refused nothing. */
export function possibleAnswers(consent: Consent): Answer[] {
  const last = consent.answers.at(-1)?.answer;
  if (last === undefined)
    return consent.state === 'outdated' ? ['declined'] : ['granted', 'declined'];
  return last === 'granted' ? ['withdrawn'] : [];
}

/** Cents with sign, or null when it is no amount. Empty is no change. */
export function costChangeCents(typed: string): number | null {
  const plain = typed.trim();
  if (plain === '') return 0;
  const cents = centsFrom(plain.replace(/^[+-]/, ''));
  if (cents === null) return null;
  return plain.startsWith('-') ? -cents : cents;
}

/** What is wrong, by field. An answer from afar needs the number or address and the words. */
export function answerErrors(fields: AnswerFields): Record<string, string> {
  const errors: Record<string, string> = {};
  if (fields.answer === null) errors.answer = 'Choose the answer.';
  if (Number.isNaN(Date.parse(fields.answeredAt))) errors.answeredAt = 'Give day and time.';
  if (fields.answeredBy.trim() === '') errors.answeredBy = 'Give the name of who answered.';
  if (fields.channel !== 'in-person') {
    if (fields.contact.trim() === '') {
      errors.contact =
        fields.channel === 'phone' ? 'Give the number called.' : 'Give the address it came from.';
    }
    if (fields.words.trim() === '') errors.words = 'Write down the words agreed.';
  }
  const signing = signatureTrouble(fields);
  if (signing !== null) errors.signature = signing;
  if (costChangeCents(fields.costChange) === null)
    errors.costChange = 'An amount like 25 or -12.50.';
  return errors;
}

/** Who answers yes in person signs, here or on the paper whose scan is attached. */
function signatureTrouble({ channel, answer, signed, answeredBy, attachmentId }: AnswerFields) {
  if (channel !== 'in-person') return null;
  const isNeeded = answer === 'granted' && attachmentId === null;
  if (!isNeeded && !isBegun(signed)) return null;
  const made = signatureOf(signed, answeredBy);
  return 'wrong' in made ? made.wrong : null;
}

/** The signature to send; none where nobody signs on this screen. */
export function signatureToSend({ channel, signed, answeredBy }: AnswerFields) {
  if (channel !== 'in-person' || !isBegun(signed)) return null;
  const made = signatureOf(signed, answeredBy);
  return 'is' in made ? made.is : null;
}
