import type { MoveResult } from '../../../shared/contract/orders.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { closedStages, stageLabels } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { moveForward, placeOrder, standing } from './forward.ts';
import { openHold } from './open-hold.ts';
import { routeOf } from './order-json.ts';
import { readOrder } from './order-row.ts';
import { refuseUnsafeTarget } from './safe-target.ts';

type MoveInput = ContractInputs['orders']['move'];

/** @see contract.orders.move */
export function moveOrder(ctx: ShopContext, input: MoveInput): Promise<MoveResult> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.move' }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    if (order.stage === 'cancelled') {
      throw new ShopError('CONFLICT', `Order ${order.number} was cancelled.`, {
        to: 'Take the request up again first.',
      });
    }
    const route = routeOf(order);
    const from = route.indexOf(order.stage);
    const to = route.indexOf(input.to);
    if (to === -1) {
      throw new ShopError(
        'CONFLICT',
        `"${stageLabels[input.to]}" is not on the route of order ${order.number}.`,
        { to: 'Choose a stage of its route.' },
      );
    }
    if (to === from) return standing(order);
    return to < from ? moveBack(trx, ctx, order, input) : moveOn(trx, ctx, order, input);
  });
}

async function moveBack(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  input: MoveInput,
): Promise<MoveResult> {
  if (input.reason === undefined) {
    throw new ShopError('BAD_INPUT', 'Say why the order goes back.', {
      reason: 'Give the reason.',
    });
  }
  refuseReopening(ctx, order);
  if (closedStages.includes(order.stage)) await refuseUnsafeTarget(trx, order);
  return placeOrder(trx, ctx, order, input.to, input.reason);
}

/** @throws ShopError NOT_ALLOWED where the bow has left and somebody else than the owner takes it back. */
export function refuseReopening(ctx: ShopContext, order: Pick<OrderRow, 'stage'>): void {
  if (closedStages.includes(order.stage) && ctx.actor.role !== 'owner') {
    throw new ShopError('NOT_ALLOWED', 'Only the owner reopens an order that has left the shop.');
  }
}

async function moveOn(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  input: MoveInput,
): Promise<MoveResult> {
  await refuseWhileHeld(trx, order);
  return moveForward(trx, ctx, order, input.to, input);
}

export async function refuseWhileHeld(trx: CommandTransaction, order: OrderRow): Promise<void> {
  const hold = await openHold(trx, order.id);
  if (hold !== undefined) {
    throw new ShopError('CONFLICT', `Order ${order.number} is on hold: ${hold.reason}`, {
      hold: 'Release the hold first.',
    });
  }
}
