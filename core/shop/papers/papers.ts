import { createHash } from 'node:crypto';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { PaperKind } from '../../../shared/papers.ts';
import type { PaperPdf } from '../../papers/data.ts';
import { makePaper } from '../../papers/print-room.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { PaperRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { makers } from './makers.ts';

type Choice = ContractInputs['papers']['preview'];

export interface MadePaper {
  pdf: PaperPdf;
  factsSha256: string;
  /** Of the order as it was before anything was read; null where it is about none. */
  rowVersion: number | null;
  printedAt: string;
}

export const sha256 = (content: string | Uint8Array) =>
  createHash('sha256').update(content).digest('hex');

/** Hash of everything printed but its date, as an instant or as a day. */
export const factsOf = (data: object) =>
  sha256(JSON.stringify({ ...data, printedAt: null, printedOn: null }));

/** Makes a paper to hand out; {@link recordIssue} then records it. */
export async function makeIssue<Kind extends PaperKind>(
  ctx: ShopContext,
  choice: Choice & { kind: Kind },
): Promise<MadePaper> {
  // Before anything is read: whatever is written while the paper is drawn outdates it.
  const printedAt = ctx.now();
  const rowVersion =
    choice.orderId === null ? null : (await readOrder(ctx.read, choice.orderId)).row_version;
  const data = await makers[choice.kind](ctx, { ...choice, printedAt });
  const pdf = await makePaper({ kind: choice.kind, data });
  return { pdf, factsSha256: factsOf(data), rowVersion, printedAt };
}

/** The last paper of the same kind, size and copy about the same thing. */
function lastLike(db: OpenShop['read'], choice: Choice): Promise<PaperRow | undefined> {
  return db
    .selectFrom('paper')
    .selectAll()
    .where('kind', '=', choice.kind)
    .where('format', '=', choice.format)
    .where('copy', '=', choice.copy)
    .where('order_id', 'is', choice.orderId)
    .where('about_id', 'is', choice.aboutId)
    .orderBy('made_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
}

/** What the record says beside the title: a paper that went out before, and whether it said the same. */
function againWords(before: PaperRow | undefined, factsSha256: string): string {
  if (before === undefined) return '';
  const day = dayOf(before.made_at);
  return before.facts_sha256 === factsSha256
    ? `, again: as the one of ${day}`
    : `, again: it says something else than the one of ${day}`;
}

function fileOf(pdf: PaperPdf): File {
  return new File([pdf.bytes as BlobPart], pdf.fileName, { type: 'application/pdf' });
}

/** The paper as it would come out now; nothing is recorded. */
export async function previewPaper(ctx: ShopContext, choice: Choice): Promise<File> {
  return fileOf((await makeIssue(ctx, choice)).pdf);
}

/** Records, in the transaction of the command that hands it out, that a paper went out. */
export async function recordIssue(
  trx: CommandTransaction,
  ctx: ShopContext,
  input: Omit<ContractInputs['papers']['issue'], 'commandId'>,
  { pdf, factsSha256, rowVersion, printedAt }: MadePaper,
): Promise<{ id: string }> {
  const before = await lastLike(trx.db, input);
  const row = await trx.insert('paper', {
    id: ctx.newId(),
    order_id: input.orderId,
    about_id: input.aboutId,
    kind: input.kind,
    format: input.format,
    copy: input.copy,
    action: input.action,
    file_name: pdf.fileName,
    pages: pdf.pages,
    sha256: sha256(pdf.bytes),
    facts_sha256: factsSha256,
    order_row_version: rowVersion,
    made_at: printedAt,
    person_id: ctx.actor.personId,
  });
  if (input.orderId !== null) {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    await note(trx, ctx, order.id, {
      kind: 'paper',
      summary: `${pdf.title}, ${input.copy} copy, ${input.action}${againWords(before, factsSha256)}`,
    });
  }
  return { id: row.id };
}

/** Makes the paper to print or save and records that it went out. */
export async function issuePaper(
  ctx: ShopContext,
  input: ContractInputs['papers']['issue'],
): Promise<File> {
  // Made before the transaction: no PDF work while the database waits.
  const made = await makeIssue(ctx, input);
  await runCommand(ctx, { id: input.commandId, name: 'papers.issue' }, (trx) =>
    recordIssue(trx, ctx, input, made),
  );
  return fileOf(made.pdf);
}
