import { createHash } from 'node:crypto';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { PaperKind } from '../../../shared/papers.ts';
import type { PaperPdf } from '../../papers/data.ts';
import { makePaper } from '../../papers/print-room.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { makers } from './makers.ts';

type Choice = ContractInputs['papers']['preview'];

interface MadePaper {
  pdf: PaperPdf;
  factsSha256: string;
  /** Of the order as it was before anything was read; null where it is about none. */
  rowVersion: number | null;
  printedAt: string;
}

const sha256 = (content: string | Uint8Array) => createHash('sha256').update(content).digest('hex');

async function make<Kind extends PaperKind>(
  ctx: ShopContext,
  choice: Choice & { kind: Kind },
): Promise<MadePaper> {
  // Before anything is read: whatever is written while the paper is drawn outdates it.
  const printedAt = ctx.now();
  const rowVersion =
    choice.orderId === null ? null : (await readOrder(ctx.read, choice.orderId)).row_version;
  const data = await makers[choice.kind](ctx, { ...choice, printedAt });
  const pdf = await makePaper({ kind: choice.kind, data });
  return {
    pdf,
    factsSha256: sha256(JSON.stringify({ ...data, printedAt: null })),
    rowVersion,
    printedAt,
  };
}

function fileOf(pdf: PaperPdf): File {
  return new File([pdf.bytes as BlobPart], pdf.fileName, { type: 'application/pdf' });
}

/** The paper as it would come out now; nothing is recorded. */
export async function previewPaper(ctx: ShopContext, choice: Choice): Promise<File> {
  return fileOf((await make(ctx, choice)).pdf);
}

/** Makes the paper to print or save and records that it went out. */
export async function issuePaper(
  ctx: ShopContext,
  input: ContractInputs['papers']['issue'],
): Promise<File> {
  // Made before the transaction: no PDF work while the database waits.
  const { pdf, factsSha256, rowVersion, printedAt } = await make(ctx, input);
  await runCommand(ctx, { id: input.commandId, name: 'papers.issue' }, async (trx) => {
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
        summary: `${pdf.title}, ${input.copy} copy, ${input.action}`,
      });
    }
    return { id: row.id };
  });
  return fileOf(pdf);
}
