import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { bowOf } from '../bows/bow-row.ts';
import { consentsOf } from '../consents/consents.ts';
import { customerOf } from '../customers/customer-row.ts';
import { entriesOf } from '../entries/entries.ts';
import { findingsOf } from '../findings/findings.ts';
import { readFacts } from '../gates/facts.ts';
import { missingAt } from '../gates/gates.ts';
import { papersOf } from '../papers/issued.ts';
import { readingsOf } from '../readings/readings.ts';
import { notFound } from '../record.ts';
import { cardsWhere, holdOf } from './cards.ts';
import { historyOf } from './history.ts';
import { routeOf, servicesOf } from './order-json.ts';
import { readOrder } from './order-row.ts';
import { nextStage } from './route.ts';

async function bowAndCustomer(shop: OpenShop, order: OrderRow) {
  const bow = await shop.read
    .selectFrom('bow')
    .selectAll()
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  const customer = await shop.read
    .selectFrom('customer')
    .selectAll()
    .where('id', '=', order.customer_id ?? '')
    .executeTakeFirst();
  return {
    bow: bow === undefined ? null : bowOf(bow),
    customer: customer === undefined ? null : customerOf(customer),
  };
}

async function nextStep(shop: OpenShop, order: OrderRow): Promise<OrderDetail['next']> {
  const stage = nextStage(routeOf(order), order.stage);
  if (stage === null) return null;
  return { stage, missing: missingAt(stage, await readFacts(shop.read, order)) };
}

/** Everything about one order, for its page and its papers. */
export async function getOrder(shop: OpenShop, id: string): Promise<OrderDetail> {
  const order = await readOrder(shop.read, id);
  const [card] = await cardsWhere(shop, (query) => query.where('shop_order.id', '=', id));
  if (card === undefined) throw notFound('order', id);
  const holds = await shop.read
    .selectFrom('hold')
    .selectAll()
    .where('order_id', '=', id)
    .orderBy('since', 'desc')
    .limit(200)
    .execute();
  return {
    card,
    ...(await bowAndCustomer(shop, order)),
    services: servicesOf(order),
    targetWeightLbf: order.target_weight_lbf,
    targetDrawIn: order.target_draw_in,
    tillerTarget: order.tiller_target,
    promisedOn: order.promised_on,
    estimateCents: order.estimate_cents,
    shipTo: order.ship_to,
    privateNotes: order.private_notes,
    customerNotes: order.customer_notes,
    inscription: order.inscription,
    createdAt: order.created_at,
    next: await nextStep(shop, order),
    holds: holds.map(holdOf),
    entries: await entriesOf(shop, id),
    findings: await findingsOf(shop, order),
    readings: await readingsOf(shop, id),
    consents: await consentsOf(shop, order),
    papers: await papersOf(shop, order),
    history: await historyOf(shop, id),
  };
}
