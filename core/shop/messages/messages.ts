import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { warrantyVoidClause, warrantyVoidSentence } from '../../../shared/warranty-words.ts';
import { messageStepLabels } from '../../../shared/wordings.ts';
import { z } from '../../../shared/zod.ts';
import type { MessageRow } from '../../storage/agreement-tables.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note, oneLine } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { type MadePaper, makeIssue, recordIssue, sha256 } from '../papers/papers.ts';
import { changedOf, notFound } from '../record.ts';
import { getShop } from '../setup/shop.ts';
import { mailFile } from './mail-file.ts';

type Inputs = ContractInputs['messages'];

/** Largest mail file, bytes: many mailboxes take no more than 25 MB, a third of it for base64. */
const mostBytes = 17_000_000;

function refuseWords({ subject, body }: { subject: string; body: string }): void {
  for (const [field, text] of Object.entries({ subject, body })) {
    const clause = warrantyVoidClause(text);
    if (clause !== null) refuseField(field, `"${clause.slice(0, 200)}": ${warrantyVoidSentence}`);
  }
}

/** A day of grace for clocks and time zones, as with an answer. */
function refuseFuture(sentAt: string, now: string): void {
  if (Date.parse(sentAt) <= Date.parse(now) + 24 * 60 * 60 * 1000) return;
  refuseField('sentAt', 'This is in the future. Give the day and time it was sent.');
}

type Sent = Pick<MessageRow, 'channel' | 'handed' | 'sent_at' | 'papers_json'>;

async function keepMessage(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: Pick<Inputs['saveFile'], 'orderId' | 'step' | 'toWhom' | 'subject' | 'body'>,
  sent: Sent,
): Promise<MessageRow> {
  const order = await readOrder(trx.db, input.orderId);
  trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
  const row = await trx.insert('message', {
    id: ctx.newId(),
    order_id: order.id,
    use: input.step,
    to_whom: input.toWhom,
    subject: input.subject,
    body: input.body,
    ...sent,
    person_id: ctx.actor.personId,
    struck_reason: null,
  });
  await note(trx, ctx, order.id, {
    kind: 'message',
    summary: `Message: ${messageStepLabels[input.step].toLowerCase()}, to ${input.toWhom}`,
  });
  return row;
}

/** @see contract.messages.record */
export function recordMessage(ctx: ShopContext, input: Inputs['record']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'messages.record' }, async (trx) => {
    refuseWords(input);
    refuseFuture(input.sentAt, trx.at);
    const { channel, handed, sentAt } = input;
    const sent = { channel, handed, sent_at: sentAt, papers_json: '[]' };
    return changedOf(await keepMessage(trx, ctx, input, sent));
  });
}

function refuseNoAddress(toWhom: string): void {
  if (z.email().max(254).safeParse(toWhom).success) return;
  refuseField('toWhom', 'Give the e-mail address it goes to.');
}

function refuseHeavy(papers: readonly MadePaper[]): void {
  const bytes = papers.reduce((sum, { pdf }) => sum + pdf.bytes.length, 0);
  if (bytes <= mostBytes) return;
  refuseField('papers', 'These papers are too large for one message. Send them in two.');
}

/** @see contract.messages.saveFile */
export async function saveMessageFile(ctx: ShopContext, input: Inputs['saveFile']): Promise<File> {
  const order = await readOrder(ctx.read, input.orderId);
  refuseWords(input);
  refuseNoAddress(input.toWhom);
  // Made before the transaction: no PDF work while the database waits.
  const made: MadePaper[] = [];
  const choices = input.papers.map((paper) => ({ ...paper, orderId: input.orderId }));
  for (const choice of choices) made.push(await makeIssue(ctx, choice));
  refuseHeavy(made);
  const shop = await getShop(ctx);
  const bytes = await mailFile({
    from: shop.email === '' ? null : { name: shop.name, address: shop.email },
    to: input.toWhom,
    subject: input.subject,
    body: input.body,
    papers: made.map(({ pdf }) => pdf),
    at: ctx.now(),
    id: ctx.newId(),
  });
  await runCommand(ctx, { id: input.commandId, name: 'messages.saveFile' }, async (trx) => {
    for (const [i, paper] of made.entries()) {
      const choice = choices[i];
      if (choice !== undefined) await recordIssue(trx, ctx, { ...choice, action: 'saved' }, paper);
    }
    const papers = made.map(({ pdf }, i) => ({
      kind: input.papers[i]?.kind,
      fileName: pdf.fileName,
      sha256: sha256(pdf.bytes),
    }));
    const row = await keepMessage(trx, ctx, input, {
      channel: 'email',
      handed: 'file',
      sent_at: trx.at,
      papers_json: JSON.stringify(papers),
    });
    return { id: row.id };
  });
  const name = oneLine(`${order.number} ${messageStepLabels[input.step]}`, 120);
  return new File([bytes as BlobPart], `${name}.eml`, { type: 'message/rfc822' });
}

/** @see contract.messages.strikeOut */
export function strikeOutMessage(ctx: ShopContext, input: Inputs['strikeOut']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'messages.strikeOut' }, async (trx) => {
    const message = await trx.db
      .selectFrom('message')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (message === undefined) throw notFound('message', input.id);
    trx.about({ orderId: message.order_id });
    if (message.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This message is already struck out.');
    }
    const row = await trx.update('message', message.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, message.order_id, {
      kind: 'message',
      summary: `Struck out: message to ${message.to_whom}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}
