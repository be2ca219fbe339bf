import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf } from '../record.ts';
import { refuseLeft } from './choose.ts';
import { doneAt } from './done-at.ts';

/** One reading noted on every bow it was taken for. @see contract.finish.readSurface */
export function readSurface(
  ctx: ShopContext,
  input: ContractInputs['finish']['readSurface'],
): Promise<ContractOutputs['finish']['readSurface']> {
  return runCommand(ctx, { id: input.commandId, name: 'finish.readSurface' }, async (trx) => {
    const recorded: Changed[] = [];
    const at = doneAt(input.at, trx.at);
    for (const orderId of new Set(input.orderIds)) {
      const order = await readOrder(trx.db, orderId);
      refuseLeft(order);
      if (input.orderIds.length === 1) trx.about({ orderId, bowId: order.bow_id });
      const row = await trx.insert('surface_reading', {
        id: ctx.newId(),
        order_id: orderId,
        at,
        surface_f: input.surfaceF,
        person_id: ctx.actor.personId,
      });
      recorded.push(changedOf(row));
    }
    return { recorded };
  });
}
