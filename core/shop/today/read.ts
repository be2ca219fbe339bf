import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { HoldRow, OrderRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import type { TodayOrder } from './item.ts';
import type { NamedTask } from './own-tasks.ts';
import type { ScaleInUse } from './scales.ts';

type Db = OpenShop['read'];

/** Orders in work. */
export async function openOrders(db: Db): Promise<OrderRow[]> {
  return db
    .selectFrom('shop_order')
    .selectAll()
    .where('stage', 'not in', closedStages)
    .orderBy('number')
    .limit(2000)
    .execute();
}

export async function ordersById(db: Db, ids: readonly string[]): Promise<OrderRow[]> {
  if (ids.length === 0) return [];
  return db.selectFrom('shop_order').selectAll().where('id', 'in', ids).execute();
}

export async function openHolds(db: Db): Promise<HoldRow[]> {
  return db
    .selectFrom('hold')
    .selectAll()
    .where('released_at', 'is', null)
    .orderBy('since')
    .orderBy('id')
    .limit(2000)
    .execute();
}

/** Tasks nobody has done, up to and including the given day. */
export async function openTasks(db: Db, until: string): Promise<NamedTask[]> {
  const rows = await db
    .selectFrom('task')
    .leftJoin('person', 'person.id', 'task.for_person_id')
    .selectAll('task')
    .select('person.name as person_name')
    .where('done_at', 'is', null)
    .where('due_on', '<=', until)
    .orderBy('due_on')
    .orderBy('task.id')
    .limit(1000)
    .execute();
  return rows.map(({ person_name: personName, ...task }) => ({ ...task, personName }));
}

export async function unsettledIncidents(db: Db) {
  return db
    .selectFrom('incident')
    .selectAll()
    .where('settled_at', 'is', null)
    .orderBy('happened_on')
    .orderBy('id')
    .limit(500)
    .execute();
}

/** Parcels that left and are not noted as delivered. */
export async function parcelsOut(db: Db) {
  return db
    .selectFrom('shipment')
    .selectAll()
    .where('direction', '=', 'out')
    .where('shipped_on', 'is not', null)
    .where('delivered_on', 'is', null)
    .where('struck_reason', 'is', null)
    .orderBy('shipped_on')
    .orderBy('id')
    .limit(1000)
    .execute();
}

/** Scales in use, each with its last check. */
export async function scalesInUse(db: Db): Promise<ScaleInUse[]> {
  const scales = await db
    .selectFrom('scale')
    .select(['id', 'name'])
    .where('active', '=', 1)
    .orderBy('name')
    .limit(100)
    .execute();
  const checks = await db
    .selectFrom('scale_check')
    .selectAll()
    .where(
      'scale_id',
      'in',
      scales.map(({ id }) => id),
    )
    .orderBy('checked_at')
    .orderBy('id')
    .execute();
  const last = new Map(checks.map((check) => [check.scale_id, check]));
  return scales.map(({ id, name }) => ({ name, lastCheck: last.get(id) ?? null }));
}

/** The given orders as the rules know them. */
export async function todayOrders(
  db: Db,
  orders: readonly OrderRow[],
  holds: readonly HoldRow[],
): Promise<Map<string, TodayOrder>> {
  const ids = orders.flatMap(({ customer_id: id }) => (id === null ? [] : [id]));
  const customers = await db
    .selectFrom('customer')
    .select(['id', 'name'])
    .where('id', 'in', ids)
    .execute();
  const names = new Map(customers.map(({ id, name }) => [id, name]));
  const held = new Set(holds.map((hold) => hold.order_id));
  return new Map(
    orders.map((order) => [
      order.id,
      {
        id: order.id,
        number: order.number,
        who: names.get(order.customer_id ?? '') ?? 'the shop',
        stage: order.stage,
        stageSince: dayOf(order.stage_since),
        promisedOn: order.promised_on,
        held: held.has(order.id),
        goingHome: order.going_home !== null,
      },
    ]),
  );
}
