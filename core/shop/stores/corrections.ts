import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { quantityText } from '../../../shared/stores.ts';
import { less, onHand } from '../../schedule/stock.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { countedAmount } from './receive.ts';
import { readStockedLot, writeMove } from './write-move.ts';

type Inputs = ContractInputs['stores'];

/** A count that finds what the moves say is written too: it was looked at. */
export function countLot(
  ctx: ShopContext,
  input: Inputs['count'],
): Promise<{ difference: number; onHand: number }> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.count' }, async (trx) => {
    const found = await readStockedLot(trx, input.lotId);
    const counted = countedAmount(input, found.consumable.unit);
    const difference = less(counted, found.lot.onHand);
    const left = await writeMove(trx, ctx, found, {
      kind: 'counted',
      quantity: difference,
      reason: input.reason,
    });
    return { difference, onHand: left };
  });
}

export function discardFromLot(
  ctx: ShopContext,
  input: Inputs['discard'],
): Promise<{ onHand: number }> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.discard' }, async (trx) => {
    const found = await readStockedLot(trx, input.lotId);
    const quantity = -countedAmount(input, found.consumable.unit);
    const left = await writeMove(trx, ctx, found, {
      kind: 'discarded',
      quantity,
      reason: input.reason,
    });
    return { onHand: left };
  });
}

/** What was issued of a lot and not yet booked back: for an order, or for none. */
async function stillOut(
  trx: CommandTransaction,
  lotId: string,
  orderId: string | null,
): Promise<number> {
  const moves = await trx.db
    .selectFrom('stock_move')
    .select('quantity')
    .where('lot_id', '=', lotId)
    .where('kind', 'in', ['issued', 'returned'])
    .where('order_id', 'is', orderId)
    .execute();
  return -onHand(moves.map(({ quantity }) => ({ lotId, quantity })));
}

export function bookBack(ctx: ShopContext, input: Inputs['bookBack']): Promise<{ onHand: number }> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.bookBack' }, async (trx) => {
    const found = await readStockedLot(trx, input.lotId);
    const { lot, consumable } = found;
    const order = input.orderId === null ? null : await readOrder(trx.db, input.orderId);
    const quantity = countedAmount(input, consumable.unit);
    const out = await stillOut(trx, lot.id, order?.id ?? null);
    if (quantity > out) {
      const from = order === null ? 'without an order' : `to order ${order.number}`;
      const sentence =
        out <= 0
          ? `Nothing of lot ${lot.name} is out ${from}. Choose what it was issued to, or count the lot.`
          : `Only ${quantityText(out, consumable.unit)} of lot ${lot.name} is out ${from}. Book back that much, or count the lot.`;
      throw new ShopError('CONFLICT', sentence, { lot: lot.id, quantity: sentence });
    }
    const left = await writeMove(trx, ctx, found, {
      kind: 'returned',
      quantity,
      orderId: order?.id ?? null,
      reason: input.reason,
    });
    if (order !== null) {
      trx.about({ orderId: order.id, bowId: order.bow_id });
      await note(trx, ctx, order.id, {
        kind: 'stock',
        summary: `Booked back: ${quantityText(quantity, consumable.unit)} of ${consumable.name}, lot ${lot.name}`,
        reason: input.reason,
      });
    }
    return { onHand: left };
  });
}
