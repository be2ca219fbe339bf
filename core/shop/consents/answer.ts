import { type Answer, channelLabels, consentLabels } from '../../../shared/consents.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { refuseForeignFile, refuseUnsigned } from './evidence.ts';
import { subjectsNow } from './read.ts';
import { stateOf } from './state.ts';
import { storedConsents } from './stored.ts';

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
    refuseUnsigned(input);
    await refuseForeignFile(trx.db, consent.order_id, input.attachmentId ?? null);
    refuseFutureAnswer(input.answeredAt, trx.at);
    refuseBeforeAsking(input.answeredAt, consent.asked_at);
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
      signature_json: input.signature ? JSON.stringify(input.signature) : null,
      attachment_id: input.attachmentId ?? null,
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

/** The hour and minute is what the office writes down, so the minute of asking counts as after. */
function refuseBeforeAsking(answeredAt: string, askedAt: string): void {
  const minute = 60_000;
  if (Date.parse(answeredAt) >= Math.floor(Date.parse(askedAt) / minute) * minute) return;
  refuseField('answeredAt', 'This answer is older than the question: it was to something else.');
}

async function refuseOddOrder(
  trx: CommandTransaction,
  consentId: string,
  answer: Answer,
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
  answer: Answer,
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
