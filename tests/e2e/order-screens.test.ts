import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { orderGoingHome, orderInFinalCheck } from './orders-leaving.ts';
import { expectReadable } from './readable.ts';
import { enterSeeded, type SeededShop, seedShop } from './seeded-shop.ts';
import { Session } from './session.ts';

let session: Session;
let shop: SeededShop;
let lastLook: string;
let homeward: string;

beforeAll(async () => {
  session = await Session.open();
  shop = await seedShop(session.program.url);
  lastLook = await orderInFinalCheck(shop.client);
  homeward = await orderGoingHome(shop.client);
  await enterSeeded(session);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const screens: [string, () => string][] = [
  ['order', () => `orders/${shop.orders.normal}`],
  ['order with long data', () => `orders/${shop.orders.long}`],
  ['order with a stop finding', () => `orders/${shop.orders.stopped}`],
  ['order in final check', () => `orders/${lastLook}`],
  ['order going home', () => `orders/${homeward}`],
  ['unpacking table', () => `orders/${lastLook}/unpacking`],
  ['unpacking table with a stop finding', () => `orders/${homeward}/unpacking`],
];

test.each(screens)(
  '%s: readable in light and dark, at every width, no sideways scroll',
  async (name, path) => {
    await expectReadable(session, name, path());
  },
);

test('no screen threw an error that nobody caught', () => {
  expect(session.troubles()).toEqual([]);
});
