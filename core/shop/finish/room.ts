import type { FinishRoom, RoomBow } from '../../../shared/contract/finish.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { AirReadingRow, OrderRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { cardsWhere } from '../orders/cards.ts';
import { servicesOf } from '../orders/order-json.ts';
import { listAir } from './air.ts';
import { areaOf } from './area-of.ts';
import { batchesFrom, namedBatches } from './batches.ts';
import { readClockTrouble } from './clock-trouble.ts';
import { cureTimes, passedOf } from './cure-of.ts';
import { lastGritsOf } from './last-grits.ts';
import { coatsOn } from './order-finish.ts';
import { finishPolicy } from './policy.ts';
import { rackedOn } from './session-gates.ts';
import { airSince, type FinishRows, noFinishRows, storedFinish } from './stored.ts';
import { sheetOf } from './system-row.ts';
import { listFinishSystems } from './systems.ts';
import { lastCoat, windowOf } from './window-of.ts';

const stages = ['strip-sand', 'finish', 'cure'] as const;
type RoomStage = (typeof stages)[number];

const isRoomStage = (stage: string): stage is RoomStage => stages.some((each) => each === stage);

/** Batches of the last day, so that a past one is still seen and thrown away. */
const shownPastMs = 24 * 60 * 60_000;

interface Named {
  bowLine: string;
  customerName: string;
  onHold: boolean;
}

async function namesOf(shop: OpenShop): Promise<Map<string, Named>> {
  const cards = await cardsWhere(shop, (query) => query.where('shop_order.stage', 'in', stages));
  return new Map(
    cards.map((card) => [
      card.id,
      {
        bowLine: card.bowLine,
        customerName: card.customerName,
        onHold: card.hold !== null,
      },
    ]),
  );
}

function finishNameOf({ chosen }: FinishRows): string {
  return chosen === null ? '' : sheetOf(chosen).name;
}

function chosenFacts(rows: FinishRows) {
  const sheet = rows.chosen === null ? null : sheetOf(rows.chosen);
  return {
    finishSystemId: rows.chosen?.finish_system_id ?? null,
    finishName: finishNameOf(rows),
    coatsFrom: sheet?.coats.from ?? null,
    coatsTo: sheet?.coats.to ?? null,
    lastGrits: lastGritsOf(rows.sandings, sheet),
  };
}

async function roomBow(
  shop: OpenShop,
  order: OrderRow & { stage: RoomStage },
  named: Named | undefined,
  rows: FinishRows,
  room: { now: string; airs: readonly AirReadingRow[]; trouble: string | null },
): Promise<RoomBow> {
  return {
    orderId: order.id,
    number: order.number,
    bowLine: named?.bowLine ?? '',
    customerName: named?.customerName ?? '',
    stage: order.stage,
    onHold: named?.onHold ?? false,
    ...chosenFacts(rows),
    coatsOn: coatsOn(rows),
    lastCoatAt: lastCoat(rows)?.at ?? null,
    window: order.stage === 'finish' ? windowOf(rows, room.airs, room.now) : null,
    cure: cureTimes(rows),
    passed: passedOf(rows, room.now, room.trouble),
    areaIn2: (await areaOf(shop.read, order)).areaIn2,
    lettered: servicesOf(order).includes('re-mark'),
  };
}

async function roomBows(shop: OpenShop, now: string, trouble: string | null): Promise<RoomBow[]> {
  const orders = await shop.read
    .selectFrom('shop_order')
    .selectAll()
    .where('stage', 'in', stages)
    .where('going_home', 'is', null)
    .orderBy('stage_since')
    .orderBy('number')
    .limit(500)
    .execute();
  const names = await namesOf(shop);
  const finish = await storedFinish(
    shop.read,
    orders.map((order) => order.id),
  );
  const [oldest] = [...finish.values()].flatMap((rows) => lastCoat(rows)?.at ?? []).sort();
  const airs = oldest === undefined ? [] : await airSince(shop.read, oldest);
  const bows: RoomBow[] = [];
  for (const order of orders) {
    const { stage } = order;
    if (!isRoomStage(stage)) continue;
    const rows = finish.get(order.id) ?? noFinishRows;
    const room = { now, airs, trouble };
    bows.push(await roomBow(shop, { ...order, stage }, names.get(order.id), rows, room));
  }
  return bows;
}

/** Everything the finish room's screen shows. @see contract.finish.room */
export async function finishRoom(shop: OpenShop): Promise<FinishRoom> {
  const now = shop.now();
  const trouble = await readClockTrouble(shop.read, now);
  const since = new Date(Date.parse(now) - shownPastMs).toISOString();
  const rows = await namedBatches(shop.read)
    .where('batch.discarded_at', 'is', null)
    .where('batch.usable_until', '>', since)
    .limit(100)
    .execute();
  const policy = await finishPolicy(shop.read);
  // A clock that once ran ahead has left readings that are not of this day.
  const [air] = (await listAir(shop)).filter(
    (each) => each.struckReason === null && each.at <= now,
  );
  return {
    now,
    systems: await listFinishSystems(shop, { includeInactive: false }),
    batches: await batchesFrom(shop.read, rows, now),
    air: air ?? null,
    bows: await roomBows(shop, now, trouble),
    slots: { used: (await rackedOn(shop.read, dayOf(now))).size, all: policy.rackSlots },
    transferPercent: policy.transferPercent,
    clockTrouble: trouble,
  };
}
