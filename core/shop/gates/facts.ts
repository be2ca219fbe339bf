import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { storedConsents } from '../consents/stored.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { storedFindings } from '../findings/stored.ts';
import { storedReadings } from '../readings/stored.ts';
import { type FactRows, factsOf } from './facts-of.ts';
import type { GateFacts } from './gate-facts.ts';

type Db = OpenShop['read'];

async function addressKnown(db: Db, order: OrderRow): Promise<boolean> {
  if (order.ship_to.trim() !== '') return true;
  if (order.customer_id === null) return false;
  const customer = await db
    .selectFrom('customer')
    .select(['street', 'city'])
    .where('id', '=', order.customer_id)
    .executeTakeFirst();
  return customer !== undefined && customer.street !== '' && customer.city !== '';
}

async function bowOf(db: Db, order: OrderRow): Promise<FactRows['bow']> {
  if (order.bow_id === null) return null;
  const bow = await db
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id)
    .executeTakeFirst();
  return bow ?? null;
}

async function arrivalOf(db: Db, orderId: string) {
  const arrival = await db
    .selectFrom('arrival')
    .selectAll()
    .where('order_id', '=', orderId)
    .executeTakeFirst();
  const belongings = await db
    .selectFrom('belonging')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('id')
    .execute();
  return { arrival: arrival ?? null, belongings };
}

async function entriesOf(db: Db, orderId: string): Promise<FactRows['entries']> {
  return db
    .selectFrom('entry')
    .selectAll()
    .where('order_id', '=', orderId)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
}

async function stopsAndPictures(db: Db, order: OrderRow) {
  const stops = stopsOf(await openStops(db), order);
  const pictured = await db
    .selectFrom('attachment')
    .select('finding_id')
    .where('finding_id', 'in', stops.length === 0 ? [''] : stops.map((stop) => stop.id))
    .where('struck_reason', 'is', null)
    .execute();
  return {
    openStops: stops,
    picturedFindings: new Set(
      pictured.flatMap((row) => (row.finding_id === null ? [] : [row.finding_id])),
    ),
  };
}

async function stationsMeasured(db: Db, order: OrderRow): Promise<boolean> {
  const geometry = await db
    .selectFrom('geometry')
    .select('id')
    .where('order_id', '=', order.id)
    .where('bow_id', '=', order.bow_id ?? '')
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  return geometry !== undefined;
}

async function openIncidents(db: Db, orderId: string): Promise<number> {
  const rows = await db
    .selectFrom('incident')
    .select('id')
    .where('order_id', '=', orderId)
    .where('kind', '=', 'damaged-here')
    .where('settled_at', 'is', null)
    .execute();
  return rows.length;
}

async function tagMadeAt(db: Db, orderId: string): Promise<string | null> {
  const tag = await db
    .selectFrom('paper')
    .select('made_at')
    .where('order_id', '=', orderId)
    .where('kind', '=', 'shipping-tag')
    .orderBy('made_at', 'desc')
    .limit(1)
    .executeTakeFirst();
  return tag?.made_at ?? null;
}

/** Reads everything a gate may look at, from one connection, so that a command sees its own transaction. */
export async function readFacts(db: Db, order: OrderRow): Promise<GateFacts> {
  return factsOf({
    order,
    bow: await bowOf(db, order),
    ...(await arrivalOf(db, order.id)),
    entries: await entriesOf(db, order.id),
    findings: await storedFindings(db, order.id),
    ...(await stopsAndPictures(db, order)),
    readings: await storedReadings(db, [order.id]),
    consents: await storedConsents(db, [order.id]),
    undershoots: await db
      .selectFrom('undershoot')
      .selectAll()
      .where('order_id', '=', order.id)
      .orderBy('id')
      .execute(),
    shipments: await db
      .selectFrom('shipment')
      .selectAll()
      .where('order_id', '=', order.id)
      .orderBy('id')
      .execute(),
    stationsMeasured: await stationsMeasured(db, order),
    openIncidents: await openIncidents(db, order.id),
    tagMadeAt: await tagMadeAt(db, order.id),
    addressKnown: await addressKnown(db, order),
  });
}
