import type { SelectQueryBuilder } from 'kysely';
import type { Hold } from '../../../shared/contract/holds.ts';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow, HoldRow, OrderRow, Tables } from '../../storage/tables.ts';
import { bowLine } from '../bows/bow-line.ts';
import { questionCounts } from '../consents/question-counts.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { storedReadings } from '../readings/stored.ts';
import { routeOf, servicesOf } from './order-json.ts';
import { underTargetOf } from './under-target.ts';
import { weightStoryOf } from './weight-story.ts';

type OrderQuery = SelectQueryBuilder<Tables, 'shop_order', OrderRow>;

export function holdOf(row: HoldRow): Hold {
  return {
    id: row.id,
    kind: row.kind,
    reason: row.reason,
    since: row.since,
    remindOn: row.remind_on,
    storageFeeOn: row.storage_fee_on,
    abandonedOn: row.abandoned_on,
    releasedAt: row.released_at,
    rowVersion: row.row_version,
  };
}

function indexBy<Row, Key>(rows: readonly Row[], key: (row: Row) => Key): Map<Key, Row> {
  return new Map(rows.map((row) => [key(row), row]));
}

async function related(shop: OpenShop, orders: readonly OrderRow[]) {
  const ids = orders.map((order) => order.id);
  const bowIds = orders.flatMap((order) => (order.bow_id === null ? [] : [order.bow_id]));
  const customerIds = orders.flatMap((order) =>
    order.customer_id === null ? [] : [order.customer_id],
  );
  const [bows, customers, holds, stops, readings, questions] = await Promise.all([
    shop.read.selectFrom('bow').selectAll().where('id', 'in', bowIds).execute(),
    shop.read
      .selectFrom('customer')
      .select(['id', 'name'])
      .where('id', 'in', customerIds)
      .execute(),
    shop.read
      .selectFrom('hold')
      .selectAll()
      .where('order_id', 'in', ids)
      .where('released_at', 'is', null)
      .execute(),
    openStops(shop.read),
    storedReadings(shop.read, ids),
    questionCounts(shop, orders),
  ]);
  return {
    bows: indexBy(bows as BowRow[], (bow) => bow.id),
    customers: indexBy(customers, (customer) => customer.id),
    holds: indexBy(holds, (hold) => hold.order_id),
    stops,
    readings: Map.groupBy(readings, (reading) => reading.order_id),
    questions,
  };
}

/** Cards of the orders that the given condition picks, newest number first. */
export async function cardsWhere(
  shop: OpenShop,
  condition: (query: OrderQuery) => OrderQuery,
): Promise<OrderCard[]> {
  const orders = await condition(shop.read.selectFrom('shop_order').selectAll('shop_order'))
    .orderBy('shop_order.number', 'desc')
    .limit(2000)
    .execute();
  if (orders.length === 0) return [];
  const rest = await related(shop, orders);
  return orders.map((order) => {
    const bow = order.bow_id === null ? undefined : rest.bows.get(order.bow_id);
    const hold = rest.holds.get(order.id);
    return {
      id: order.id,
      number: order.number,
      rowVersion: order.row_version,
      customerId: order.customer_id,
      customerName: rest.customers.get(order.customer_id ?? '')?.name ?? 'the shop',
      bowId: order.bow_id,
      bowLine: bow === undefined ? 'bow not identified yet' : bowLine(bow),
      services: servicesOf(order),
      route: routeOf(order),
      stage: order.stage,
      stageSince: order.stage_since,
      goingHome: order.going_home,
      targetWeightLbf: order.target_weight_lbf,
      targetDrawIn: order.target_draw_in,
      promisedOn: order.promised_on,
      estimateCents: order.estimate_cents,
      weights: weightStoryOf(order, rest.readings.get(order.id) ?? []),
      underTarget: underTargetOf(order, rest.readings.get(order.id) ?? []),
      hold: hold === undefined ? null : holdOf(hold),
      openStops: stopsOf(rest.stops, order).length,
      waitingConsents: rest.questions(order.id),
    };
  });
}
