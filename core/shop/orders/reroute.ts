import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type Service, type Stage, stageLabels } from '../../../shared/stages.ts';
import { runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { changedOf } from '../record.ts';
import { note } from './history.ts';
import { routeOf, servicesOf } from './order-json.ts';
import { readOrder } from './order-row.ts';
import { optionsOf, routeFor, withHandover } from './route.ts';

type Inputs = ContractInputs['orders'];

function refuseLostStage(order: OrderRow, route: readonly string[]): void {
  if (!route.includes(order.stage)) {
    throw new ShopError(
      'CONFLICT',
      `Order ${order.number} stands in "${stageLabels[order.stage]}", which the new route leaves out.`,
      { services: 'Move the order back first, or keep the service.' },
    );
  }
}

/** Reordering may not put a stage behind the order that it never went through. */
function refuseSkippedStage(
  order: OrderRow,
  old: readonly string[],
  route: readonly string[],
): void {
  const passed = new Set(old.slice(0, old.indexOf(order.stage)));
  const skipped = route.slice(0, route.indexOf(order.stage)).some((stage) => !passed.has(stage));
  if (skipped) {
    throw new ShopError(
      'CONFLICT',
      `Order ${order.number} already stands in "${stageLabels[order.stage]}". Move it back before changing the route.`,
      { stage: 'Move it back first.' },
    );
  }
}

/** @throws ShopError CONFLICT where the services cannot change any more as the order stands. */
export function routeAfterEdit(order: OrderRow, services: readonly Service[]): Stage[] {
  const old = routeOf(order);
  if (order.going_home !== null) {
    if (JSON.stringify(services) !== order.services_json) {
      throw new ShopError('CONFLICT', `Order ${order.number} is going home: no work lies ahead.`, {
        services: 'Take it up again before changing the services.',
      });
    }
    return old;
  }
  const route = routeFor(services, optionsOf(old));
  // A cancelled request stands beside its route and starts anew at its head.
  if (order.stage === 'cancelled') return route;
  refuseLostStage(order, route);
  refuseSkippedStage(order, old, route);
  return route;
}

async function reroute(
  ctx: ShopContext,
  input: { commandId: string; id: string; rowVersion: number },
  name: string,
  routeOfOrder: (order: OrderRow) => Stage[],
  summary: string,
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    const route = routeOfOrder(order);
    if (order.stage !== 'cancelled') {
      refuseLostStage(order, route);
      refuseSkippedStage(order, routeOf(order), route);
    }
    const row = await trx.update('shop_order', order.id, order.row_version, {
      route_json: JSON.stringify(route),
    });
    await note(trx, ctx, order.id, { kind: 'route', summary });
    return changedOf(row);
  });
}

function routeStripping(order: OrderRow, stripFirst: boolean): Stage[] {
  if (order.going_home !== null) {
    throw new ShopError('CONFLICT', `Order ${order.number} is going home: no work lies ahead.`, {
      stripFirst: 'Take it up again first.',
    });
  }
  return routeFor(servicesOf(order), { ...optionsOf(routeOf(order)), stripFirst });
}

export function setStripFirst(ctx: ShopContext, input: Inputs['setStripFirst']): Promise<Changed> {
  const summary = input.stripFirst
    ? 'Strip & sand before the weight work'
    : 'Weight work before strip & sand';
  const route = (order: OrderRow) => routeStripping(order, input.stripFirst);
  return reroute(ctx, input, 'orders.setStripFirst', route, summary);
}

export function setHandover(ctx: ShopContext, input: Inputs['setHandover']): Promise<Changed> {
  const summary =
    input.handover === 'shipped' ? 'Goes back by parcel' : 'Collected over the counter';
  const route = (order: OrderRow) => withHandover(routeOf(order), input.handover);
  return reroute(ctx, input, 'orders.setHandover', route, summary);
}
