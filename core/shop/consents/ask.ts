import { type ConsentKind, consentLabels, consentTextMax } from '../../../shared/consents.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import {
  mayNotCoverSentence,
  saysMayNotCover,
  warrantyVoidClause,
  warrantyVoidSentence,
} from '../../../shared/warranty-words.ts';
import { notLegalAdvice } from '../../../shared/wordings.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { readFacts } from '../gates/facts.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { storedUndershoots } from '../undershoot/stored.ts';
import { orderValues } from '../wordings/order-values.ts';
import { type KeptWording, versionsOf, wordingNow } from '../wordings/stored.ts';
import { consentTextOf } from '../wordings/wordings.ts';
import { sha256 } from './hash.ts';
import { subjectsNow } from './read.ts';

async function customersOrder(db: OpenShop['read'], orderId: string) {
  const order = await readOrder(db, orderId);
  if (order.customer_id === null) {
    throw new ShopError('CONFLICT', "This is the shop's own bow: there is nobody to ask.");
  }
  return { order };
}

/** @see contract.consents.propose */
export async function proposeConsent(
  shop: OpenShop,
  input: ContractInputs['consents']['propose'],
): Promise<ContractOutputs['consents']['propose']> {
  const { order } = await customersOrder(shop.read, input.orderId);
  if (input.kind === 'undershoot') await refuseWithoutOffer(shop.read, order, shop.now());
  const subject = (await subjectsNow(shop.read, order))[input.kind];
  const wording = await wordingNow(shop.read, `consent:${input.kind}`);
  const text = consentTextOf(wording.body, { ...(await orderValues(shop, order)), subject });
  if (text.length > consentTextMax) {
    throw new ShopError('CONFLICT', 'There is more to tell than one text can hold.', {
      kind: 'Shorten or resolve some of the findings first.',
    });
  }
  return { text, subject, wordingVersion: wording.version };
}

/** Nobody is asked to accept less than was agreed before the shop says what it offers for it. */
async function refuseWithoutOffer(
  db: OpenShop['read'],
  order: OrderRow,
  now: string,
): Promise<void> {
  const facts = await readFacts(db, order, now);
  if (facts.undershootOffered) return;
  const offers = await storedUndershoots(db, order.id);
  const trouble =
    (!facts.afterSandingWeighed && 'Weigh after sanding first.') ||
    (offers.some((offer) => offer.struck_reason === null) &&
      'Weight or target changed since the offer. Say again what the shop offers.') ||
    'Say first what the shop offers.';
  throw new ShopError('CONFLICT', trouble, { kind: trouble });
}

/** @see contract.consents.ask */
export function askConsent(
  ctx: ShopContext,
  input: ContractInputs['consents']['ask'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'consents.ask' }, async (trx) => {
    const { order } = await customersOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    if (input.kind === 'undershoot') await refuseWithoutOffer(trx.db, order, trx.at);
    const subject = (await subjectsNow(trx.db, order))[input.kind];
    refuseEmptySubject(input.kind, order, subject);
    refuseMissingSubject(input.text, subject);
    refuseUnfitWords(input.kind, input.text, subject);
    const wording = await wordingOf(trx.db, input);
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
      wording_id: wording.id,
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
    (kind === 'watch-findings' && subject === '' && 'There is no open finding to watch.');
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

/** The version of the wording the text was made from. */
async function wordingOf(
  db: OpenShop['read'],
  { kind, wordingVersion }: ContractInputs['consents']['ask'],
): Promise<KeptWording> {
  const versions = await versionsOf(db, `consent:${kind}`);
  const found =
    wordingVersion === undefined
      ? versions[0]
      : versions.find(({ version }) => version === wordingVersion);
  if (found !== undefined) return found;
  return refuseField('wordingVersion', 'There is no such version of this wording. Read it again.');
}

/**
 * What may and must stand in every text, however the office changed it. The subject is judged with
 * it only in what the customer is made to say: words of a finding are quoted, not claimed.
 */
function refuseUnfitWords(kind: ConsentKind, text: string, subject: string): void {
  const said = subject === '' ? text : text.replaceAll(subject, ' ');
  const clause = warrantyVoidClause(said);
  if (clause !== null) {
    refuseField('text', `"${clause.slice(0, 200)}": ${warrantyVoidSentence}`);
  }
  if (kind === 'alteration-acknowledgement' && !saysMayNotCover(said)) {
    refuseField('text', mayNotCoverSentence);
  }
  if (!said.includes(notLegalAdvice)) {
    refuseField('text', `This line must stay: ${notLegalAdvice}`);
  }
}
