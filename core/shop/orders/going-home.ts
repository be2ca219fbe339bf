import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { goingHomeLine } from '../../../shared/going-home.ts';
import { closedStages, type Stage, stageLabels } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { changedOf } from '../record.ts';
import { note } from './history.ts';
import { openHold, releaseHold } from './open-hold.ts';
import { routeOf, servicesOf } from './order-json.ts';
import { readOrder } from './order-row.ts';
import { handoverOf, optionsOf, routeFor, routeHome } from './route.ts';
import { refuseUnsafeTarget } from './safe-target.ts';

type Inputs = ContractInputs['orders'];

/** Stages before the bow is in the shop. */
const notHereYet: readonly Stage[] = ['requested', 'in-mail'];

/** @see contract.orders.sendHome */
export function sendHome(ctx: ShopContext, input: Inputs['sendHome']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.sendHome' }, async (trx) => {
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    refuseSendingHome(order);
    await releaseOpenHold(trx, ctx, order);
    const row = await trx.update('shop_order', order.id, order.row_version, {
      going_home: input.kind,
      going_home_reason: input.reason,
      route_json: JSON.stringify(routeHome(routeOf(order), order.stage)),
    });
    await note(trx, ctx, order.id, {
      kind: 'going-home',
      summary: goingHomeLine(input.kind),
      reason: input.reason,
    });
    return changedOf(row);
  });
}

function refuseSendingHome(order: OrderRow): void {
  if (order.going_home !== null) {
    throw new ShopError('CONFLICT', `Order ${order.number} is already going home.`);
  }
  if (notHereYet.includes(order.stage)) {
    throw new ShopError('CONFLICT', `The bow of order ${order.number} is not here yet.`, {
      stage: 'Cancel the request instead.',
    });
  }
  if (closedStages.includes(order.stage)) {
    throw new ShopError('CONFLICT', `Order ${order.number} is closed: nothing is left to send.`, {
      stage: 'The owner may reopen it first.',
    });
  }
}

async function releaseOpenHold(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
): Promise<void> {
  const hold = await openHold(trx, order.id);
  if (hold !== undefined) await releaseHold(trx, ctx, hold);
}

/** The route of work, with the order of its stages as it was before the bow was sent home. */
async function routeOfWork(trx: CommandTransaction, order: OrderRow): Promise<Stage[]> {
  const sent = await trx.db
    .selectFrom('command_change')
    .innerJoin('command', 'command.id', 'command_change.command_id')
    .select('command_change.before_json')
    .where('command.name', '=', 'orders.sendHome')
    .where('command_change.table_name', '=', 'shop_order')
    .where('command_change.row_id', '=', order.id)
    .orderBy('command_change.row_version', 'desc')
    .limit(1)
    .executeTakeFirst();
  const before = sent?.before_json ?? null;
  const old = routeOf(before === null ? order : (JSON.parse(before) as OrderRow));
  return routeFor(servicesOf(order), {
    stripFirst: optionsOf(old).stripFirst,
    handover: handoverOf(routeOf(order)),
  });
}

/** What an order forgets when it is no longer going home. */
async function backToWork(trx: CommandTransaction, order: OrderRow): Promise<Partial<OrderRow>> {
  if (order.going_home === null) return {};
  return {
    going_home: null,
    going_home_reason: '',
    route_json: JSON.stringify(await routeOfWork(trx, order)),
  };
}

/** Where the work goes on: what stood packed or never came is looked at anew. */
function restartsAt(order: OrderRow): Stage {
  if (order.stage === 'packed') return 'arrived';
  return order.stage === 'cancelled' ? 'requested' : order.stage;
}

/** @see contract.orders.takeUpAgain */
export function takeUpAgain(ctx: ShopContext, input: Inputs['takeUpAgain']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.takeUpAgain' }, async (trx) => {
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    refuseTakingUp(order);
    if (closedStages.includes(order.stage)) await refuseUnsafeTarget(trx, order);
    const to = restartsAt(order);
    const isMoved = to !== order.stage;
    const row = await trx.update('shop_order', order.id, order.row_version, {
      ...(await backToWork(trx, order)),
      ...(isMoved ? { stage: to, stage_since: trx.at } : {}),
    });
    await note(trx, ctx, order.id, {
      kind: 'going-home',
      summary: isMoved ? `Taken up again at ${stageLabels[to]}` : 'Taken up again',
      ...(isMoved ? { from: order.stage, to } : {}),
      reason: input.reason,
    });
    return changedOf(row);
  });
}

function refuseTakingUp(order: OrderRow): void {
  if (order.stage === 'cancelled') return;
  if (closedStages.includes(order.stage)) {
    throw new ShopError('CONFLICT', `The bow of order ${order.number} has left the shop.`, {
      stage: 'The owner may move the order back first.',
    });
  }
  if (order.going_home === null) {
    throw new ShopError('CONFLICT', `Order ${order.number} is in work: it is not going home.`);
  }
}

/** @see contract.orders.cancel */
export function cancelOrder(ctx: ShopContext, input: Inputs['cancel']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.cancel' }, async (trx) => {
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    if (!notHereYet.includes(order.stage)) {
      throw new ShopError('CONFLICT', `Order ${order.number} is past the request.`, {
        stage: 'Only a request whose bow never came is cancelled; a bow that is here is sent home.',
      });
    }
    await releaseOpenHold(trx, ctx, order);
    const row = await trx.update('shop_order', order.id, order.row_version, {
      ...(await backToWork(trx, order)),
      stage: 'cancelled',
      stage_since: trx.at,
    });
    await note(trx, ctx, order.id, {
      kind: 'move',
      summary: `${stageLabels[order.stage]} to ${stageLabels.cancelled}`,
      from: order.stage,
      to: 'cancelled',
      reason: input.reason,
    });
    return changedOf(row);
  });
}
