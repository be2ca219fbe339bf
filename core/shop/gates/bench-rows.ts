import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow, WeightPlanRow } from '../../storage/tables.ts';
import { openSurpriseOf } from '../bench/weight-replay.ts';
import { routeOf } from '../orders/order-json.ts';
import { fitOf, readFitRecords } from '../plans/fit.ts';
import type { StoredReading } from '../readings/stored.ts';
import type { FactRows } from './facts-of.ts';

type Db = OpenShop['read'];

/** Only the gate of weight work asks whether the plan fits: behind it nothing is read for that. */
function isAhead(order: OrderRow): boolean {
  const route = routeOf(order);
  const gate = route.indexOf('weight-work');
  return gate >= 0 && route.indexOf(order.stage) < gate;
}

async function planState(
  db: Db,
  order: OrderRow,
  plan: WeightPlanRow | undefined,
): Promise<FactRows['plan']> {
  if (plan === undefined) return { state: 'none' };
  if (!isAhead(order)) return { state: 'fits' };
  const fit = fitOf(plan, await readFitRecords(db, order));
  return fit.ok ? { state: 'fits' } : { state: 'outdated', why: fit.why.join(' ') };
}

/** What the bench wrote down of each order, in the order it was recorded, and how its plan stands. */
export async function benchRows(db: Db, orders: readonly OrderRow[]) {
  const ids = orders.map((order) => order.id);
  const removals = await db
    .selectFrom('removal')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('planned_at')
    .orderBy('id')
    .execute();
  const glassChecks = await db
    .selectFrom('glass_check')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('checked_at')
    .orderBy('id')
    .execute();
  const tillerReadings = await db
    .selectFrom('tiller_reading')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('read_at')
    .orderBy('id')
    .execute();
  const accepted = await db
    .selectFrom('weight_plan')
    .selectAll()
    .where('order_id', 'in', ids)
    .where('struck_reason', 'is', null)
    .orderBy('version')
    .execute();
  const surprises = await db
    .selectFrom('surprise')
    .selectAll()
    .where('order_id', 'in', ids)
    .execute();
  const scales = await db.selectFrom('scale').select(['id', 'resolution_lbf']).execute();
  // The newest one decides: later versions come last.
  const newest = new Map(accepted.map((plan) => [plan.order_id, plan]));
  const plans = new Map<string, FactRows['plan']>();
  for (const order of orders) {
    plans.set(order.id, await planState(db, order, newest.get(order.id)));
  }
  return {
    removals: Map.groupBy(removals, (row) => row.order_id),
    glassChecks: Map.groupBy(glassChecks, (row) => row.order_id),
    tillerReadings: Map.groupBy(tillerReadings, (row) => row.order_id),
    plans,
    standing: newest,
    surprises: Map.groupBy(surprises, (row) => row.order_id),
    resolutions: new Map(scales.map((scale) => [scale.id, scale.resolution_lbf])),
  };
}

/** Whether a reading of this order asks questions that nobody has answered. */
export function isSurprised(
  bench: Awaited<ReturnType<typeof benchRows>>,
  orderId: string,
  readings: readonly StoredReading[],
): boolean {
  const open = openSurpriseOf({
    plan: bench.standing.get(orderId) ?? null,
    readings,
    removals: bench.removals.get(orderId) ?? [],
    surprises: bench.surprises.get(orderId) ?? [],
    resolutions: bench.resolutions,
  });
  return open !== null;
}
