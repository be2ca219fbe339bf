import type { MoveResult } from '../../../shared/contract/orders.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import { closedStages, type Stage, stageLabels } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { readFacts } from '../gates/facts.ts';
import { passGates } from '../gates/gates.ts';
import { note } from './history.ts';
import { routeOf } from './order-json.ts';
import { readOrder } from './order-row.ts';
import { stagesBetween } from './route.ts';

type MoveInput = ContractInputs['orders']['move'];

/** @see contract.orders.move */
export function moveOrder(ctx: ShopContext, input: MoveInput): Promise<MoveResult> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.move' }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
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

function standing(order: OrderRow): MoveResult {
  return { outcome: 'moved', id: order.id, rowVersion: order.row_version, stage: order.stage };
}

async function place(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  to: Stage,
  reason: string | null,
): Promise<MoveResult> {
  const moved = await trx.update('shop_order', order.id, order.row_version, {
    stage: to,
    stage_since: trx.at,
  });
  await note(trx, ctx, order.id, {
    kind: 'move',
    summary: `${stageLabels[order.stage]} to ${stageLabels[to]}`,
    from: order.stage,
    to,
    reason,
  });
  return standing(moved);
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
  if (closedStages.includes(order.stage) && ctx.actor.role !== 'owner') {
    throw new ShopError('NOT_ALLOWED', 'Only the owner reopens an order that has left the shop.');
  }
  return place(trx, ctx, order, input.to, input.reason);
}

async function moveOn(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  input: MoveInput,
): Promise<MoveResult> {
  await refuseWhileHeld(trx, order);
  const gates = stagesBetween(routeOf(order), order.stage, input.to);
  const facts = await readFacts(trx.db, order);
  const verdict = passGates(gates, facts, ctx.actor.role, input.override);
  if (!verdict.open) return { outcome: 'refused', orderId: order.id, missing: verdict.missing };
  for (const item of verdict.overridden) {
    await note(trx, ctx, order.id, {
      kind: 'override',
      summary: `Let pass by the owner: ${item.sentence}`,
      reason: input.override?.reason ?? null,
    });
  }
  return place(trx, ctx, order, input.to, input.override?.reason ?? input.reason ?? null);
}

async function refuseWhileHeld(trx: CommandTransaction, order: OrderRow): Promise<void> {
  const hold = await trx.db
    .selectFrom('hold')
    .select('reason')
    .where('order_id', '=', order.id)
    .where('released_at', 'is', null)
    .executeTakeFirst();
  if (hold !== undefined) {
    throw new ShopError('CONFLICT', `Order ${order.number} is on hold: ${hold.reason}`, {
      hold: 'Release the hold first.',
    });
  }
}
