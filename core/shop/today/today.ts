import type { TodayItem } from '../../../shared/contract/today.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import type { OpenShop } from '../../storage/context.ts';
import { openQuestions } from '../consents/open-questions.ts';
import type { StoredConsent } from '../consents/stored.ts';
import { addDays } from '../day.ts';
import { type OrderFacts, readManyFacts } from '../gates/facts.ts';
import type { GateFacts } from '../gates/gate-facts.ts';
import { routeOf } from '../orders/order-json.ts';
import { nextStage } from '../orders/route.ts';
import { underTargetOf } from '../orders/under-target.ts';
import { getShop } from '../setup/shop.ts';
import { readShelves } from '../stores/shelf.ts';
import { checkUnfinished, notArrived } from './arrivals.ts';
import { type Unanswered, unanswered } from './consents.ts';
import { openHold } from './holds.ts';
import { openIncident } from './incidents.ts';
import type { TodayOrder } from './item.ts';
import { ownTask } from './own-tasks.ts';
import { promised } from './promised.ts';
import {
  openHolds,
  openOrders,
  openTasks,
  ordersById,
  parcelsOut,
  scalesInUse,
  todayOrders,
  unsettledIncidents,
} from './read.ts';
import { readyToGoOn } from './ready.ts';
import { uncheckedScales } from './scales.ts';
import { notDelivered } from './shipments.ts';
import { sorted } from './sort.ts';
import { undecidedStops } from './stops.ts';
import { storesItems } from './stores.ts';
import { underTarget } from './under-target.ts';
import { unaskedUndershoot } from './undershoots.ts';

/** More would not be read by anybody; the worst come first. */
const mostItems = 5000;

function unansweredOf(consents: readonly StoredConsent[], facts: GateFacts): Unanswered[] {
  return openQuestions(consents, facts).map(({ consent, state, wasGranted }) => ({
    kind: consent.kind,
    askedAt: consent.asked_at,
    state,
    remindedAt: consent.reminders.at(-1)?.sent_at ?? null,
    wasGranted,
  }));
}

/** The offer for a weight below the target, while it fits the weighing and there is somebody to ask. */
function undershotOffer(order: TodayOrder, { rows, facts }: OrderFacts): TodayItem[] {
  const offer = rows.undershoots.filter((row) => row.struck_reason === null).at(-1);
  if (offer === undefined || !facts.undershootOffered || facts.shopsOwn) return [];
  const asked = rows.consents.filter((consent) => consent.kind === 'undershoot').at(-1);
  return unaskedUndershoot(offer, asked?.asked_at ?? null, order);
}

/** Everything one order in work asks for by itself. */
function ofOrder(
  order: TodayOrder,
  { rows, facts }: OrderFacts,
  day: string,
  reminderDays: readonly number[],
): TodayItem[] {
  return [
    ...promised(order, day),
    ...undecidedStops(rows.openStops, order),
    ...unanswered(unansweredOf(rows.consents, facts), order, day, reminderDays),
    ...underTarget(underTargetOf(rows.order, rows.readings), facts.undershootOffered, order),
    ...undershotOffer(order, { rows, facts }),
    ...notArrived(order, day),
    ...(rows.arrival === null ? [] : checkUnfinished(rows.arrival, order, day)),
    ...readyToGoOn(order, nextStage(routeOf(rows.order), order.stage), facts),
  ];
}

/** Rows that name an order, which may be closed. */
async function datedRows(shop: OpenShop, day: string) {
  const holds = await openHolds(shop.read);
  const tasks = await openTasks(shop.read, addDays(day, 7));
  const incidents = await unsettledIncidents(shop.read);
  const parcels = await parcelsOut(shop.read);
  const orderIds = [...tasks, ...incidents, ...parcels].flatMap(({ order_id: id }) =>
    id === null ? [] : [id],
  );
  return { holds, tasks, incidents, parcels, orderIds };
}

/**
 * Everything that needs somebody on the given calendar day, across orders and in the stores.
 * @param day `YYYY-MM-DD` where the client is.
 */
export async function getToday(
  shop: OpenShop,
  day: string,
): Promise<ContractOutputs['today']['get']> {
  const readAt = shop.now();
  const { reminderDays } = await getShop(shop);
  const open = await openOrders(shop.read);
  const facts = await readManyFacts(shop.read, open, readAt);
  const dated = await datedRows(shop, day);
  const elsewhere = [...new Set(dated.orderIds)].filter((id) => !facts.has(id));
  const known = [...open, ...(await ordersById(shop.read, elsewhere))];
  const orders = await todayOrders(shop.read, known, dated.holds);
  const of = <Row extends { order_id: string }>(
    rows: readonly Row[],
    rule: (row: Row, order: TodayOrder, day: string) => TodayItem[],
  ) =>
    rows.flatMap((row) => {
      const order = orders.get(row.order_id);
      return order === undefined ? [] : rule(row, order, day);
    });
  const items = [
    ...[...orders.values()].flatMap((order) => {
      const its = facts.get(order.id);
      return its === undefined ? [] : ofOrder(order, its, day, reminderDays);
    }),
    ...of(dated.holds, openHold),
    ...of(dated.incidents, openIncident),
    ...of(dated.parcels, notDelivered),
    ...dated.tasks.flatMap((task) => ownTask(task, orders.get(task.order_id ?? '') ?? null, day)),
    ...uncheckedScales(await scalesInUse(shop.read), [...orders.values()], readAt),
    ...storesItems(await readShelves(shop.read, day), day),
  ];
  return { day, readAt, items: sorted(items).slice(0, mostItems), ordersInWork: open.length };
}
