import { channelLabels, consentLabels, consentStateLabels } from '../../../shared/consents.ts';
import type { Consent } from '../../../shared/contract/consents.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import { dollarText } from '../../../shared/money.ts';
import type { ConsentAnswerLine, ConsentFormData } from '../../papers/consent-form.ts';
import { addressLines } from '../setup/address.ts';
import { nameOnPapers } from './shop-name.ts';

/** Instant as a day and a time that name their zone. */
const moment = (at: string) => `${at.slice(0, 10)}, ${at.slice(11, 16)} UTC`;

/** First 16 digits of the hash, in fours: enough to tell any two texts of a shop apart. */
export function markOf(sha256: string): string {
  return (sha256.slice(0, 16).match(/.{4}/g) ?? []).join(' ');
}

function costWords(cents: number): string {
  if (cents === 0) return '';
  return `${dollarText(Math.abs(cents))} ${cents > 0 ? 'more' : 'less'}`;
}

function answerLine(answer: Consent['answers'][number]): ConsentAnswerLine {
  const rows: [string, string][] = [
    ['Answer', answer.answer],
    ['By', answer.answeredBy],
    ['When', moment(answer.answeredAt)],
    ['How', channelLabels[answer.channel].toLowerCase()],
    [answer.channel === 'phone' ? 'Number called' : 'Address', answer.contact],
    ['Words agreed', answer.words],
    ['Change of price', costWords(answer.costChangeCents)],
    ['Shown by', answer.attachment?.fileName ?? ''],
    ['Written down', `${answer.recordedBy}, ${moment(answer.recordedAt)}`],
  ];
  return {
    answer: answer.answer,
    facts: rows.filter(([, value]) => value !== ''),
    signature: answer.signature,
  };
}

/** The consent named, or the newest that waits. */
function chosenConsent({ consents }: OrderDetail, id: string | null): Consent {
  const found = consents.find((consent) =>
    id === null ? consent.state === 'waiting' : consent.id === id,
  );
  if (found !== undefined) return found;
  const sentence =
    id === null
      ? 'Nothing waits for an answer. Ask the customer first, or choose an answered consent.'
      : 'This consent does not belong to this order.';
  throw new ShopError('CONFLICT', sentence, { aboutId: sentence });
}

function notesFor({ phone, email, name }: ShopDetails): string[] {
  const ways = [
    'sign above and send or bring this paper',
    email === ''
      ? ''
      : `reply by e-mail to ${email} with "I agree" or "I do not agree" and your full name`,
    phone === '' ? '' : `call ${phone}`,
  ].filter((way) => way !== '');
  const reach = [email, phone].filter((way) => way !== '').join(' or ') || name;
  return [
    `To answer: ${ways.join('; or ')}. No reply is no yes: the work waits.`,
    `To take your agreement back before the work it is about is done: tell us, ${reach}. It covers this text only, and taking it back costs nothing by itself.`,
    'You may have this text and your answer on paper, now and later, without charge. Tell us when your address, e-mail or phone changes.',
  ];
}

export function consentFormData(
  order: OrderDetail,
  shop: ShopDetails,
  aboutId: string | null,
  choice: { format: ConsentFormData['format']; printedAt: string },
): ConsentFormData {
  const consent = chosenConsent(order, aboutId);
  if (!consent.verified.text || !consent.verified.subject) {
    throw new ShopError(
      'UNPRINTABLE',
      'The text kept is not the one that was asked: its hash differs. Restore it from a backup, or ask again.',
      { aboutId: 'The text was changed outside the program.' },
    );
  }
  const isWaiting = consent.state === 'waiting';
  return {
    format: choice.format,
    printedAt: choice.printedAt,
    shop: {
      name: nameOnPapers(shop),
      lines: addressLines(shop.address),
      phone: shop.phone,
      email: shop.email,
    },
    number: order.card.number,
    customer: order.card.customerName,
    bow: order.card.bowLine,
    title: consentLabels[consent.kind],
    asked: `${moment(consent.askedAt)}, ${consent.askedHow}`,
    text: consent.text,
    textMark: markOf(consent.textSha256),
    state: isWaiting ? '' : `Now: ${consentStateLabels[consent.state]}.`,
    answers: consent.answers.map(answerLine),
    notes: notesFor(shop),
  };
}
