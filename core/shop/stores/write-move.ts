import { ShopError } from '../../../shared/errors.ts';
import { quantityText, type StockUnit } from '../../../shared/stores.ts';
import { less } from '../../schedule/stock.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ConsumableRow, StockMoveRow } from '../../storage/tables.ts';
import { notFound } from '../record.ts';
import { type StockedLot, stockedLots } from './stocked-lot.ts';

export interface Move {
  kind: StockMoveRow['kind'];
  /** In above 0, out below, in the counted unit. */
  quantity: number;
  orderId?: string | null;
  batchId?: string | null;
  reason: string;
}

export async function readConsumable(trx: CommandTransaction, id: string): Promise<ConsumableRow> {
  const row = await trx.db
    .selectFrom('consumable')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('consumable', id);
  return row;
}

/** A lot with what is left of it, and its consumable. @throws ShopError NOT_FOUND */
export async function readStockedLot(
  trx: CommandTransaction,
  id: string,
): Promise<{ lot: StockedLot; consumable: ConsumableRow }> {
  const [lot] = await stockedLots(trx.db, { lotId: id });
  if (lot === undefined) throw notFound('lot', id);
  return { lot, consumable: await readConsumable(trx, lot.row.consumable_id) };
}

function refuseMoreThanThere(lot: StockedLot, unit: StockUnit, wanted: number): never {
  const sentence = `Lot ${lot.name} has ${quantityText(lot.onHand, unit)}, not ${quantityText(wanted, unit)}. Count it, or take less.`;
  throw new ShopError('CONFLICT', sentence, { lot: lot.id, quantity: sentence });
}

/**
 * Writes one move. What is left is read in the same transaction, and only one writes at a time,
 * so two clients never both take the last of a lot.
 * @returns what is left of the lot, in the counted unit.
 * @throws ShopError CONFLICT where the lot would have less than nothing.
 */
export async function writeMove(
  trx: CommandTransaction,
  ctx: ShopContext,
  { lot, consumable }: { lot: StockedLot; consumable: Pick<ConsumableRow, 'id' | 'unit'> },
  move: Move,
): Promise<number> {
  const left = less(lot.onHand, -move.quantity);
  if (left < 0) refuseMoreThanThere(lot, consumable.unit, -move.quantity);
  await trx.insert('stock_move', {
    id: ctx.newId(),
    consumable_id: consumable.id,
    lot_id: lot.id,
    kind: move.kind,
    quantity: move.quantity,
    order_id: move.orderId ?? null,
    batch_id: move.batchId ?? null,
    reason: move.reason,
    at: trx.at,
    person_id: ctx.actor.personId,
  });
  return left;
}
