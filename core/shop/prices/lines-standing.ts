import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { changedOf } from '../record.ts';
import { settlePrice } from './line-writing.ts';
import { orderOfLines, standingLine } from './lines.ts';
import { storedPriceLines } from './stored.ts';

type Inputs = ContractInputs['prices'];

/** The line stays on record, out of the count. @see contract.prices.removeLine */
export function removePriceLine(ctx: ShopContext, input: Inputs['removeLine']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.removeLine' }, async (trx) => {
    const line = await standingLine(trx, input.id);
    const order = await orderOfLines(trx, line.order_id, undefined);
    const row = await trx.update('price_line', line.id, input.rowVersion, { removed_at: trx.at });
    await settlePrice(trx, ctx, order, `Price: ${row.what} removed`);
    return changedOf(row);
  });
}

/** A discount counts on what stands above it, so the price may change. @see contract.prices.arrangeLines */
export function arrangePriceLines(
  ctx: ShopContext,
  input: Inputs['arrangeLines'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.arrangeLines' }, async (trx) => {
    const order = await orderOfLines(trx, input.orderId, input.rowVersion);
    const lines = await storedPriceLines(trx.db, [order.id]);
    const wanted = new Set(input.ids);
    if (
      wanted.size !== input.ids.length ||
      wanted.size !== lines.length ||
      lines.some((line) => !wanted.has(line.id))
    ) {
      throw new ShopError('CONFLICT', 'The lines changed in the meantime. Look again.');
    }
    for (const line of lines) {
      const position = input.ids.indexOf(line.id) + 1;
      if (line.position !== position) await trx.update('price_line', line.id, null, { position });
    }
    return changedOf(await settlePrice(trx, ctx, order, 'Price: lines put in another order'));
  });
}
