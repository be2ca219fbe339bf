import type { MoveResult } from '../../../shared/contract/orders.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { readFacts } from '../gates/facts.ts';
import { passGates, type Verdict } from '../gates/gates.ts';
import { note } from './history.ts';
import { routeOf } from './order-json.ts';
import { routeHome, stagesBetween } from './route.ts';

/** What was said with a move. */
export interface MoveWords {
  reason?: string | undefined;
  override?: { reason: string } | undefined;
}

export function standing(order: OrderRow): MoveResult {
  return { outcome: 'moved', id: order.id, rowVersion: order.row_version, stage: order.stage };
}

/** A step back on the way home shortens it: no gate of the work comes before the parcel again. */
function homewardAt(order: OrderRow, to: Stage): Partial<Pick<OrderRow, 'route_json'>> {
  const route = routeOf(order);
  if (order.going_home === null || route.indexOf(to) > route.indexOf(order.stage)) return {};
  return { route_json: JSON.stringify(routeHome(route, to)) };
}

/** Puts an order into a stage, whichever way; what had to be asked first was asked by the caller. */
export async function placeOrder(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  to: Stage,
  reason: string | null,
): Promise<MoveResult> {
  const moved = await trx.update('shop_order', order.id, order.row_version, {
    stage: to,
    stage_since: trx.at,
    ...homewardAt(order, to),
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

/** Whether the gates between where an order stands and a stage ahead let it pass. */
export async function gatesAhead(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  to: Stage,
  words: MoveWords = {},
): Promise<Verdict> {
  const gates = stagesBetween(routeOf(order), order.stage, to);
  const facts = await readFacts(trx.db, order, trx.at);
  return passGates(gates, facts, ctx.actor.role, words.override);
}

/** Moves an order forward through every gate on the way, or answers what is missing. */
export async function moveForward(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  to: Stage,
  words: MoveWords = {},
): Promise<MoveResult> {
  const verdict = await gatesAhead(trx, ctx, order, to, words);
  if (!verdict.open) return { outcome: 'refused', orderId: order.id, missing: verdict.missing };
  for (const item of verdict.overridden) {
    await note(trx, ctx, order.id, {
      kind: 'override',
      summary: `Let pass by the owner: ${item.sentence}`,
      reason: words.override?.reason ?? null,
    });
  }
  return placeOrder(trx, ctx, order, to, words.override?.reason ?? words.reason ?? null);
}
