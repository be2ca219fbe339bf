import {
  type answers,
  channelLabels,
  consentLabels,
  consentTextMax,
} from '../../../shared/consents.ts';
import type { Consent } from '../../../shared/contract/consents.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { bowLine } from '../bows/bow-line.ts';
import { storedFindings } from '../findings/stored.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { storedReadings } from '../readings/stored.ts';
import { changedOf, notFound } from '../record.ts';
import { getShop } from '../setup/shop.ts';
import { sha256 } from './hash.ts';
import { stateOf } from './state.ts';
import { storedConsents } from './stored.ts';
import { subjectsOf } from './subject.ts';
import { consentText } from './text.ts';

async function subjectsNow(db: OpenShop['read'], order: OrderRow) {
  const findings = await storedFindings(db, order.id);
  return subjectsOf({ order, findings, readings: await storedReadings(db, [order.id]) });
}

export async function consentsOf(shop: OpenShop, order: OrderRow): Promise<Consent[]> {
  const stored = await storedConsents(shop.read, [order.id]);
  const subjects = await subjectsNow(shop.read, order);
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? '';
  return stored
    .toReversed()
    .slice(0, 200)
    .map((row) => ({
      id: row.id,
      kind: row.kind,
      text: row.text,
      textSha256: row.text_sha256,
      subject: row.subject,
      state: stateOf(row, subjects[row.kind]),
      askedAt: row.asked_at,
      askedHow: row.asked_how,
      askedBy: nameOf(row.asked_by),
      answers: row.answers.map((answer) => ({
        id: answer.id,
        answer: answer.answer,
        answeredAt: answer.answered_at,
        channel: answer.channel,
        answeredBy: answer.answered_by,
        contact: answer.contact,
        words: answer.words,
        costChangeCents: answer.cost_change_cents,
        recordedBy: nameOf(answer.recorded_by),
        recordedAt: answer.recorded_at,
      })),
    }));
}

async function customersOrder(db: OpenShop['read'], orderId: string) {
  const order = await readOrder(db, orderId);
  if (order.customer_id === null) {
    throw new ShopError('CONFLICT', "This is the shop's own bow: there is nobody to ask.");
  }
  return { order, customerId: order.customer_id };
}

/** @see contract.consents.propose */
export async function proposeConsent(
  shop: OpenShop,
  input: ContractInputs['consents']['propose'],
): Promise<ContractOutputs['consents']['propose']> {
  const { order, customerId } = await customersOrder(shop.read, input.orderId);
  const customer = await shop.read
    .selectFrom('customer')
    .select('name')
    .where('id', '=', customerId)
    .executeTakeFirstOrThrow();
  const bow =
    order.bow_id === null
      ? undefined
      : await shop.read
          .selectFrom('bow')
          .selectAll()
          .where('id', '=', order.bow_id)
          .executeTakeFirst();
  const subject = (await subjectsNow(shop.read, order))[input.kind];
  const text = consentText(input.kind, {
    shopName: (await getShop(shop)).name,
    customerName: customer.name,
    orderNumber: order.number,
    bowLine: bow === undefined ? 'not identified yet' : bowLine(bow),
    subject,
  });
  if (text.length > consentTextMax) {
    throw new ShopError('CONFLICT', 'There is more to tell than one text can hold.', {
      kind: 'Shorten or resolve some of the findings first.',
    });
  }
  return { text, subject };
}

/** @see contract.consents.ask */
export function askConsent(
  ctx: ShopContext,
  input: ContractInputs['consents']['ask'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'consents.ask' }, async (trx) => {
    const { order } = await customersOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    const subject = (await subjectsNow(trx.db, order))[input.kind];
    refuseEmptySubject(input.kind, order, subject);
    refuseMissingSubject(input.text, subject);
    const row = await trx.insert('consent', {
      id: ctx.newId(),
      order_id: order.id,
      kind: input.kind,
      text: input.text,
      text_sha256: sha256(input.text),
      subject,
      subject_sha256: sha256(subject),
      asked_at: trx.at,
      asked_how: input.askedHow,
      asked_by: ctx.actor.personId,
    });
    await note(trx, ctx, order.id, {
      kind: 'consent',
      summary: `Asked: ${consentLabels[input.kind]} (${input.askedHow})`,
    });
    return changedOf(row);
  });
}

function refuseEmptySubject(
  kind: ContractInputs['consents']['ask']['kind'],
  order: OrderRow,
  subject: string,
): void {
  const trouble =
    (kind === 'marking-approval' &&
      order.inscription.trim() === '' &&
      'Give the lines to be written on the bow first.') ||
    (kind === 'price-and-scope' && order.estimate_cents === null && 'Set the price first.') ||
    (kind === 'watch-findings' && subject === '' && 'There is no open finding to watch.') ||
    (kind === 'undershoot' && subject.endsWith('not yet') && 'Weigh after sanding first.');
  if (trouble) throw new ShopError('CONFLICT', trouble, { kind: trouble });
}

/** The customer must have read what the consent stands for, whatever else the office wrote around it. */
function refuseMissingSubject(text: string, subject: string): void {
  if (!text.includes(subject)) {
    throw new ShopError(
      'BAD_INPUT',
      'The text no longer says what it is about. Keep those lines as they are.',
      {
        text: `These lines must stay: ${subject}`.slice(0, 1000),
      },
    );
  }
}

/** @see contract.consents.answer */
export function answerConsent(
  ctx: ShopContext,
  input: ContractInputs['consents']['answer'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'consents.answer' }, async (trx) => {
    const consent = await trx.db
      .selectFrom('consent')
      .selectAll()
      .where('id', '=', input.consentId)
      .executeTakeFirst();
    if (consent === undefined) throw notFound('consent', input.consentId);
    trx.about({ orderId: consent.order_id });
    if (consent.text_sha256 !== input.textSha256) {
      throw new ShopError(
        'STALE',
        'This is not the text that was asked. Read it again with the customer.',
        {
          textSha256: 'The text differs.',
        },
      );
    }
    refuseThinEvidence(input);
    refuseFutureAnswer(input.answeredAt, trx.at);
    await refuseOddOrder(trx, consent.id, input.answer);
    await refuseOutdated(trx, consent.order_id, consent.id, input.answer);
    const row = await trx.insert('consent_answer', {
      id: ctx.newId(),
      consent_id: consent.id,
      answer: input.answer,
      answered_at: input.answeredAt,
      channel: input.channel,
      answered_by: input.answeredBy,
      contact: input.contact,
      words: input.words,
      cost_change_cents: input.costChangeCents,
      text_sha256: input.textSha256,
      recorded_at: trx.at,
      recorded_by: ctx.actor.personId,
    });
    await note(trx, ctx, consent.order_id, {
      kind: 'consent',
      summary: `${consentLabels[consent.kind]}: ${input.answer} by ${input.answeredBy} (${channelLabels[input.channel]})`,
      reason: input.words === '' ? null : input.words,
    });
    return changedOf(row);
  });
}

function refuseThinEvidence(input: ContractInputs['consents']['answer']): void {
  if (input.channel !== 'in-person' && input.contact === '') {
    const what = input.channel === 'phone' ? 'number called' : 'address it came from';
    throw new ShopError('BAD_INPUT', `Give the ${what}.`, { contact: `Give the ${what}.` });
  }
  if (input.channel !== 'in-person' && input.words.trim() === '') {
    throw new ShopError('BAD_INPUT', 'Write down the words agreed.', {
      words: 'Write down the words agreed.',
    });
  }
}

/** A day of grace, so that no clock or time zone gets in the way of an honest answer. */
const graceMs = 24 * 60 * 60 * 1000;

function refuseFutureAnswer(answeredAt: string, now: string): void {
  if (Date.parse(answeredAt) <= Date.parse(now) + graceMs) return;
  throw new ShopError('BAD_INPUT', 'This answer is dated in the future.', {
    answeredAt: 'Give the day and time of the answer.',
  });
}

async function refuseOddOrder(
  trx: CommandTransaction,
  consentId: string,
  answer: (typeof answers)[number],
): Promise<void> {
  const last = await trx.db
    .selectFrom('consent_answer')
    .select('answer')
    .where('consent_id', '=', consentId)
    .orderBy('recorded_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (answer === 'withdrawn' && last?.answer !== 'granted') {
    throw new ShopError('CONFLICT', 'Only what was granted can be withdrawn.');
  }
  if (answer !== 'withdrawn' && last !== undefined) {
    throw new ShopError('CONFLICT', `This was already ${last.answer}. Ask again for a new answer.`);
  }
}

async function refuseOutdated(
  trx: CommandTransaction,
  orderId: string,
  consentId: string,
  answer: (typeof answers)[number],
): Promise<void> {
  if (answer !== 'granted') return;
  const order = await readOrder(trx.db, orderId);
  const subjects = await subjectsNow(trx.db, order);
  const stored = (await storedConsents(trx.db, [orderId])).find((row) => row.id === consentId);
  if (stored !== undefined && stateOf(stored, subjects[stored.kind]) === 'outdated') {
    throw new ShopError(
      'CONFLICT',
      'What was asked has changed since. Ask again with the new text.',
      {
        consentId: 'Ask again.',
      },
    );
  }
}
