import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { arrivalOf, belongingsOf } from '../arrival/arrival-row.ts';
import { benchLogOf } from '../bench/bench-log.ts';
import { bowOf } from '../bows/bow-row.ts';
import { consentsOf } from '../consents/read.ts';
import { customerOf } from '../customers/customer-row.ts';
import { entriesOf } from '../entries/entries.ts';
import { finalCheckOf } from '../final-check/checklist.ts';
import { findingsOf } from '../findings/findings.ts';
import { orderFinishOf } from '../finish/order-finish.ts';
import { storedFinishOf } from '../finish/stored.ts';
import { readFacts } from '../gates/facts.ts';
import { missingAt } from '../gates/gates.ts';
import { incidentsOf } from '../incidents/stored.ts';
import { layoutOf } from '../inscriptions/stored.ts';
import { messagesOf } from '../messages/stored.ts';
import { papersOf } from '../papers/issued.ts';
import { paperOffersOf } from '../papers/offers.ts';
import { plansOf } from '../plans/plans.ts';
import { priceOf } from '../prices/price-of.ts';
import { readingsOf } from '../readings/readings.ts';
import { notFound } from '../record.ts';
import { shipmentsOf } from '../shipments/shipment-row.ts';
import { tasksOf } from '../tasks/stored.ts';
import { undershootOf } from '../undershoot/undershoot.ts';
import { cardsWhere } from './cards.ts';
import { historyOf } from './history.ts';
import { holdsOf } from './hold-rows.ts';
import { limbsOf } from './limb-set.ts';
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
  return { stage, missing: missingAt(stage, await readFacts(shop.read, order, shop.now())) };
}

/** Everything about one order, for its page and its papers. */
export async function getOrder(shop: OpenShop, id: string): Promise<OrderDetail> {
  const order = await readOrder(shop.read, id);
  const [card] = await cardsWhere(shop, (query) => query.where('shop_order.id', '=', id));
  if (card === undefined) throw notFound('order', id);
  const entries = await entriesOf(shop, id);
  const owned = await bowAndCustomer(shop, order);
  const papers = await papersOf(shop, order);
  const findings = await findingsOf(shop, order);
  const history = await historyOf(shop, id);
  return {
    card,
    ...owned,
    ...(await limbsOf(shop, order)),
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
    inscriptionLayout: await layoutOf(shop, id),
    goingHomeReason: order.going_home_reason,
    createdAt: order.created_at,
    next: await nextStep(shop, order),
    holds: await holdsOf(shop, id),
    arrival: await arrivalOf(shop, id),
    belongings: await belongingsOf(shop, id),
    entries,
    finish: await orderFinishOf(shop.read, order, await storedFinishOf(shop.read, id)),
    finalCheck: await finalCheckOf(shop, order, entries),
    findings,
    incidents: await incidentsOf(shop, id),
    undershoot: await undershootOf(shop, order),
    readings: await readingsOf(shop, id),
    bench: await benchLogOf(shop, id),
    plans: await plansOf(shop, order),
    consents: await consentsOf(shop, order),
    messages: await messagesOf(shop, id),
    shipments: await shipmentsOf(shop, id),
    papers,
    paperOffers: await paperOffersOf(shop, {
      card,
      ...owned,
      shipTo: order.ship_to,
      papers,
      findings,
      history,
    }),
    price: await priceOf(shop, order),
    tasks: await tasksOf(shop, id),
    history,
  };
}
