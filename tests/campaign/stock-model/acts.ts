import type { StockUnit } from '../../../shared/stores.ts';
import type { Client } from '../../support/doors.ts';
import { newCommandId } from '../../support/new-command-id.ts';
import { receivedFields } from '../../support/stocked-shop.ts';
import type { Ledger } from './ledger.ts';

export interface World {
  random: () => number;
  /** The shop's day, `YYYY-MM-DD`. */
  today: () => string;
  /** Days after today. */
  dayAfter: (days: number) => string;
  consumables: readonly { id: string; unit: StockUnit }[];
  orderIds: readonly string[];
  ledger: Ledger;
}

/** Sends one command, twice where the answer was lost; answers what it told. */
type Act = (client: Client, world: World) => Promise<void>;

const oneOf = <T>(world: World, list: readonly T[]): T => {
  const chosen = list[Math.floor(world.random() * list.length)];
  if (chosen === undefined) throw new Error('nothing to choose from');
  return chosen;
};

/** Tenths and hundredths in what is measured: sums of them gather binary dust. */
function amount(world: World, unit: StockUnit, most: number): number {
  const raw = world.random() * most;
  const isWhole = unit === 'sheet' || unit === 'each';
  return isWhole ? 1 + Math.floor(raw) : Number((raw + 0.01).toFixed(2));
}

const unitOf = (world: World, counted: StockUnit): StockUnit =>
  (counted === 'mL' || counted === 'fl oz') && world.random() < 0.3
    ? oneOf(world, ['mL', 'fl oz'])
    : counted;

const orderOf = (world: World) => (world.random() < 0.4 ? oneOf(world, world.orderIds) : null);

/** A lost answer: the same command again has to tell the same and write nothing. */
async function sent<Answer>(world: World, call: () => Promise<Answer>): Promise<Answer> {
  const answer = await call();
  if (world.random() < 0.15) {
    const again = await call();
    if (JSON.stringify(again) !== JSON.stringify(answer))
      throw new Error('a repeat told otherwise');
  }
  return answer;
}

const receive: Act = async (client, world) => {
  const { id, unit } = oneOf(world, world.consumables);
  const expires = world.random();
  const input = {
    commandId: newCommandId(),
    consumableId: id,
    ...receivedFields,
    number: `N${Math.floor(world.random() * 30)}`,
    receivedOn: world.today(),
    expiresOn: expires < 0.3 ? null : world.dayAfter(Math.floor(world.random() * 40) - 4),
    containers: 1 + Math.floor(world.random() * 2),
    quantity: amount(world, unit, 60),
    unit: unitOf(world, unit),
  };
  const { lotIds } = await sent(world, () => client.stores.receive(input));
  for (const lotId of lotIds) {
    world.ledger.received({ lotId, consumableId: id, unit }, input.quantity, input.unit);
  }
};

const issue: Act = async (client, world) => {
  const { id, unit } = oneOf(world, world.consumables);
  const lots = world.ledger.lotsOf(id);
  const input = {
    commandId: newCommandId(),
    consumableId: id,
    lotId: lots.length > 0 && world.random() < 0.4 ? oneOf(world, lots) : null,
    quantity: amount(world, unit, 70),
    unit: unitOf(world, unit),
    orderId: orderOf(world),
    reason: '',
  };
  const day = world.today();
  const { picks } = await sent(world, () => client.stores.issue(input));
  for (const { lotId, quantity, lastDay } of picks) {
    if (lastDay !== null && lastDay < day) throw new Error(`an expired lot was issued: ${lotId}`);
    world.ledger.moved(lotId, -quantity);
  }
};

const count: Act = async (client, world) => {
  const { id, unit } = oneOf(world, world.consumables);
  const lots = world.ledger.lotsOf(id);
  if (lots.length === 0) return;
  const lotId = oneOf(world, lots);
  const quantity = world.random() < 0.2 ? 0 : amount(world, unit, 50);
  const input = { commandId: newCommandId(), lotId, quantity, unit, reason: 'counted anew' };
  const { difference } = await sent(world, () => client.stores.count(input));
  world.ledger.moved(lotId, difference);
};

const discard: Act = async (client, world) => {
  const { id, unit } = oneOf(world, world.consumables);
  const lots = world.ledger.lotsOf(id);
  if (lots.length === 0) return;
  const lotId = oneOf(world, lots);
  const quantity = amount(world, unit, 40);
  const input = { commandId: newCommandId(), lotId, quantity, unit, reason: 'spilt' };
  await sent(world, () => client.stores.discard(input));
  world.ledger.moved(lotId, -quantity);
};

const bookBack: Act = async (client, world) => {
  const { id, unit } = oneOf(world, world.consumables);
  const lots = world.ledger.lotsOf(id);
  if (lots.length === 0) return;
  const lotId = oneOf(world, lots);
  const quantity = amount(world, unit, 10);
  const input = {
    commandId: newCommandId(),
    lotId,
    quantity,
    unit,
    orderId: orderOf(world),
    reason: 'not used',
  };
  await sent(world, () => client.stores.bookBack(input));
  world.ledger.moved(lotId, quantity);
};

/** One lot opened twice by two hands: the second one is told. */
const open: Act = async (client, world) => {
  const { id } = oneOf(world, world.consumables);
  const lots = world.ledger.lotsOf(id);
  if (lots.length === 0) return;
  const input = {
    commandId: newCommandId(),
    id: oneOf(world, lots),
    rowVersion: 1,
    openedOn: world.today(),
  };
  await sent(world, () => client.stores.openLot(input));
};

const acts: readonly [string, number, Act][] = [
  ['receive', 2, receive],
  ['issue', 5, issue],
  ['count', 1, count],
  ['discard', 1, discard],
  ['book back', 1, bookBack],
  ['open', 0.5, open],
];
const total = acts.reduce((sum, [, weight]) => sum + weight, 0);

export function chooseAct(random: () => number): [string, Act] {
  let at = random() * total;
  for (const [name, weight, act] of acts) {
    at -= weight;
    if (at < 0) return [name, act];
  }
  return ['issue', issue];
}
