import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { storedConsents } from '../consents/stored.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { roomRows } from '../finish/room-rows.ts';
import { noFinishRows, storedFinish } from '../finish/stored.ts';
import { markingPolicy } from '../inscriptions/policy.ts';
import { storedLayouts } from '../inscriptions/stored.ts';
import { storedPayments, storedPriceLines } from '../prices/stored.ts';
import { storedReadings } from '../readings/stored.ts';
import { benchRows, isSurprised } from './bench-rows.ts';
import { type FactRows, factsOf } from './facts-of.ts';
import type { GateFacts } from './gate-facts.ts';

type Db = OpenShop['read'];

/** The bows, and the customers whose address is complete. */
async function bowsAndAddresses(db: Db, orders: readonly OrderRow[]) {
  const bowIds = orders.flatMap((order) => (order.bow_id === null ? [] : [order.bow_id]));
  const customerIds = orders.flatMap((order) =>
    order.customer_id === null ? [] : [order.customer_id],
  );
  const bows = await db.selectFrom('bow').selectAll().where('id', 'in', bowIds).execute();
  const addressed = await db
    .selectFrom('customer')
    .select('id')
    .where('id', 'in', customerIds)
    .where('street', '!=', '')
    .where('city', '!=', '')
    .execute();
  return {
    bows: new Map(bows.map((bow) => [bow.id, bow])),
    addressed: new Set(addressed.map((customer) => customer.id)),
  };
}

/** What was written down of each order's work, in the order it was recorded. */
async function workRows(db: Db, ids: readonly string[]) {
  const entries = await db
    .selectFrom('entry')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const findings = await db
    .selectFrom('finding')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('id')
    .execute();
  const stations = await db
    .selectFrom('geometry')
    .select(['order_id', 'bow_id'])
    .where('order_id', 'in', ids)
    .where('struck_reason', 'is', null)
    .execute();
  const undershoots = await db
    .selectFrom('undershoot')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('id')
    .execute();
  return {
    entries: Map.groupBy(entries, (row) => row.order_id),
    findings: Map.groupBy(findings, (row) => row.order_id),
    stations: new Set(stations.map((row) => `${row.order_id} ${row.bow_id}`)),
    undershoots: Map.groupBy(undershoots, (row) => row.order_id),
  };
}

/** How it came and how it leaves. */
async function doorRows(db: Db, ids: readonly string[]) {
  const arrivals = await db
    .selectFrom('arrival')
    .selectAll()
    .where('order_id', 'in', ids)
    .execute();
  const belongings = await db
    .selectFrom('belonging')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('id')
    .execute();
  const shipments = await db
    .selectFrom('shipment')
    .selectAll()
    .where('order_id', 'in', ids)
    .orderBy('id')
    .execute();
  const incidents = await db
    .selectFrom('incident')
    .select('order_id')
    .where('order_id', 'in', ids)
    .where('kind', '=', 'damaged-here')
    .where('settled_at', 'is', null)
    .execute();
  const tags = await db
    .selectFrom('paper')
    .select((eb) => ['order_id', eb.fn.max('made_at').as('made_at')])
    .where('order_id', 'in', ids)
    .where('kind', '=', 'return-tag')
    .groupBy('order_id')
    .execute();
  return {
    arrivals: new Map(arrivals.map((row) => [row.order_id, row])),
    belongings: Map.groupBy(belongings, (row) => row.order_id),
    shipments: Map.groupBy(shipments, (row) => row.order_id),
    incidents: Map.groupBy(incidents, (row) => row.order_id),
    tags: new Map(tags.map((row) => [row.order_id, row.made_at])),
  };
}

async function stopRows(db: Db) {
  const stops = await openStops(db);
  const pictured = await db
    .selectFrom('attachment')
    .select('finding_id')
    .where(
      'finding_id',
      'in',
      stops.map(({ id }) => id),
    )
    .where('struck_reason', 'is', null)
    .execute();
  const pictures = new Set(pictured.map((row) => row.finding_id ?? ''));
  return { stops, pictures };
}

/** Reads the rows of all the given orders in one query a table. */
async function readRows(db: Db, orders: readonly OrderRow[], now: string): Promise<FactRows[]> {
  const ids = orders.map((order) => order.id);
  const { bows, addressed } = await bowsAndAddresses(db, orders);
  const work = await workRows(db, ids);
  const bench = await benchRows(db, orders);
  const door = await doorRows(db, ids);
  const finish = await storedFinish(db, ids);
  const room = await roomRows(db, now);
  const { stops, pictures } = await stopRows(db);
  const readings = Map.groupBy(await storedReadings(db, ids), (row) => row.order_id);
  const layouts = await storedLayouts(db, ids);
  const { markingRoundLbf } = await markingPolicy(db);
  const consents = Map.groupBy(await storedConsents(db, ids), (row) => row.order_id);
  const priceLines = Map.groupBy(await storedPriceLines(db, ids), (row) => row.order_id);
  const payments = Map.groupBy(await storedPayments(db, ids), (row) => row.order_id);
  return orders.map((order) => ({
    order,
    bow: bows.get(order.bow_id ?? '') ?? null,
    arrival: door.arrivals.get(order.id) ?? null,
    belongings: door.belongings.get(order.id) ?? [],
    entries: work.entries.get(order.id) ?? [],
    findings: work.findings.get(order.id) ?? [],
    openStops: stopsOf(stops, order),
    picturedFindings: pictures,
    readings: readings.get(order.id) ?? [],
    consents: consents.get(order.id) ?? [],
    undershoots: work.undershoots.get(order.id) ?? [],
    layout: layouts.get(order.id) ?? null,
    markingRoundLbf,
    shipments: door.shipments.get(order.id) ?? [],
    priceLines: priceLines.get(order.id) ?? [],
    payments: payments.get(order.id) ?? [],
    stationsMeasured: work.stations.has(`${order.id} ${order.bow_id}`),
    removals: bench.removals.get(order.id) ?? [],
    glassChecks: bench.glassChecks.get(order.id) ?? [],
    tillerReadings: bench.tillerReadings.get(order.id) ?? [],
    finish: finish.get(order.id) ?? noFinishRows,
    room,
    plan: bench.plans.get(order.id) ?? { state: 'none' },
    openSurprise: isSurprised(bench, order.id, readings.get(order.id) ?? []),
    openIncidents: door.incidents.get(order.id)?.length ?? 0,
    tagMadeAt: door.tags.get(order.id) ?? null,
    addressKnown: order.ship_to.trim() !== '' || addressed.has(order.customer_id ?? ''),
  }));
}

export interface OrderFacts {
  rows: FactRows;
  facts: GateFacts;
}

/**
 * What the gates look at at an instant, of many orders at once: some twenty queries for all of them, where
 * reading each by itself would take twenty for every one.
 */
export async function readManyFacts(
  db: Db,
  orders: readonly OrderRow[],
  now: string,
): Promise<Map<string, OrderFacts>> {
  if (orders.length === 0) return new Map();
  const all = await readRows(db, orders, now);
  return new Map(all.map((rows) => [rows.order.id, { rows, facts: factsOf(rows) }]));
}

/** What the gates look at, read from one connection, so that a command sees its own transaction. */
export async function readFacts(db: Db, order: OrderRow, now: string): Promise<GateFacts> {
  const [rows] = await readRows(db, [order], now);
  if (rows === undefined) throw new Error('one order gives one set of rows');
  return factsOf(rows);
}
