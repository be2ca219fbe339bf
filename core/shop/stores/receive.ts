import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import { isWhole, type StockUnit, toCountedUnit, unitLabels } from '../../../shared/stores.ts';
import { less } from '../../schedule/stock.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { ConsumableRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { nextLotBarcodes } from './barcodes.ts';
import { stockedLots } from './stocked-lot.ts';
import { readConsumable, writeMove } from './write-move.ts';

type Receive = ContractInputs['stores']['receive'];

/**
 * The amount in the counted unit.
 * @throws ShopError BAD_INPUT where the units do not go together, part of a piece is asked for or
 * nothing is left of it in that unit.
 */
export function countedAmount(
  given: { quantity: number; unit: StockUnit },
  counted: StockUnit,
): number {
  const quantity = toCountedUnit(given.quantity, given.unit, counted);
  if (isWhole(counted) && !Number.isInteger(quantity)) {
    refuseField('quantity', `Give whole ${unitLabels[counted]}.`);
  }
  if (quantity <= 0 && given.quantity > 0) {
    refuseField('quantity', 'This is too little to be counted.');
  }
  return quantity;
}

/** @throws ShopError BAD_INPUT where days contradict each other. */
export function refuseOddDays(
  lot: { receivedOn: string; expiresOn: string | null; openedOn?: string | null },
  today: string,
): void {
  if (lot.receivedOn > today) refuseField('receivedOn', 'This day is still to come.');
  if (lot.openedOn !== undefined && lot.openedOn !== null) {
    if (lot.openedOn > today) refuseField('openedOn', 'This day is still to come.');
    if (lot.openedOn < lot.receivedOn) {
      refuseField('openedOn', `It came on ${lot.receivedOn}: it was not opened before.`);
    }
  }
}

/** What came is no longer on order. */
async function takeOffOrder(
  trx: CommandTransaction,
  consumable: ConsumableRow,
  received: number,
): Promise<void> {
  if (consumable.on_order === 0) return;
  await trx.update('consumable', consumable.id, null, {
    on_order: Math.max(0, less(consumable.on_order, received)),
  });
}

/** Books containers in, each as a lot of its own. One that has already expired is booked in too:
 * it stands on the shelf, and issuing it is refused. */
export function receiveLots(ctx: ShopContext, input: Receive): Promise<{ lotIds: string[] }> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.receive' }, async (trx) => {
    const consumable = await readConsumable(trx, input.consumableId);
    if (consumable.active === 0) {
      throw new ShopError('CONFLICT', `${consumable.name} is put away. Take it up again first.`);
    }
    refuseOddDays(input, dayOf(trx.at));
    const quantity = countedAmount(input, consumable.unit);
    const lotIds: string[] = [];
    for (const barcode of await nextLotBarcodes(trx.db, input.containers)) {
      const row = await trx.insert('lot', {
        id: ctx.newId(),
        consumable_id: consumable.id,
        number: input.number,
        barcode,
        received_on: input.receivedOn,
        expires_on: input.expiresOn,
        opened_on: null,
        cost_cents: input.costCents,
        note: input.note,
      });
      const [lot] = await stockedLots(trx.db, { lotId: row.id });
      if (lot === undefined) throw new Error('the lot was written just now');
      await writeMove(trx, ctx, { lot, consumable }, { kind: 'received', quantity, reason: '' });
      lotIds.push(row.id);
    }
    await takeOffOrder(trx, consumable, quantity * input.containers);
    return { lotIds };
  });
}
