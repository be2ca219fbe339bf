import { createHash } from 'node:crypto';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { PaperPdf } from '../../papers/data.ts';
import { makePaper } from '../../papers/print-room.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { getOrder } from '../orders/detail.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { getShop } from '../setup/shop.ts';
import { shippingTagData } from './shipping-tag-data.ts';
import { workOrderData } from './work-order-data.ts';

type Choice = ContractInputs['papers']['preview'];

function badChoice(choice: Choice): never {
  throw new ShopError('BAD_INPUT', `There is no ${choice.kind} in this size and copy.`, {
    format: choice.kind === 'work-order' ? 'letter or a4' : '4x6 or a6',
    copy: choice.kind === 'work-order' ? 'bench or office' : 'parcel or office',
  });
}

async function make(
  ctx: ShopContext,
  choice: Choice,
): Promise<{ pdf: PaperPdf; rowVersion: number; printedAt: string }> {
  // Before anything is read: whatever is written while the paper is drawn outdates it.
  const printedAt = ctx.now();
  const order = await getOrder(ctx, choice.orderId);
  const shop = await getShop(ctx);
  const { rowVersion } = order.card;
  const { format, copy } = choice;
  if (choice.kind === 'work-order') {
    if (format === '4x6' || format === 'a6' || copy === 'parcel') return badChoice(choice);
    return {
      pdf: await makePaper({
        kind: 'work-order',
        data: workOrderData(order, shop, { format, copy, printedAt }),
      }),
      rowVersion,
      printedAt,
    };
  }
  if (format === 'letter' || format === 'a4' || copy === 'bench') return badChoice(choice);
  return {
    pdf: await makePaper({
      kind: 'shipping-tag',
      data: shippingTagData(order, shop, { format, copy, printedAt }),
    }),
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
  const { pdf, rowVersion, printedAt } = await make(ctx, input);
  await runCommand(ctx, { id: input.commandId, name: 'papers.issue' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    const row = await trx.insert('paper', {
      id: ctx.newId(),
      order_id: order.id,
      kind: input.kind,
      format: input.format,
      copy: input.copy,
      action: input.action,
      file_name: pdf.fileName,
      pages: pdf.pages,
      sha256: createHash('sha256').update(pdf.bytes).digest('hex'),
      order_row_version: rowVersion,
      made_at: printedAt,
      person_id: ctx.actor.personId,
    });
    await note(trx, ctx, order.id, {
      kind: 'paper',
      summary: `${pdf.title}, ${input.copy} copy, ${input.action}`,
    });
    return { id: row.id };
  });
  return fileOf(pdf);
}
