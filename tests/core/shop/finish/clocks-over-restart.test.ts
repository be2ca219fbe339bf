import { expect, test } from 'vitest';
import { recordAir } from '../../../../core/shop/finish/air.ts';
import { listClocks } from '../../../../core/shop/finish/list-clocks.ts';
import { mixBatch } from '../../../../core/shop/finish/mix.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { finishRoom } from '../../../../core/shop/finish/room.ts';
import { lookAtSession } from '../../../../core/shop/finish/spray.ts';
import { hour } from '../../../support/clock.ts';
import { type FinishKit, finishKit } from '../../../support/finish-kit.ts';
import { sessionOf } from '../../../support/session-of.ts';
import { newCommandId, type TestShop } from '../../../support/test-shop.ts';
import type { Flow } from '../../../support/whole-flow.ts';
import { reopened, sameOrder } from './reopened.ts';

const minute = 60_000;

/** The shop closed at night and opened again, so long after something began. */
async function openedAfter(shop: TestShop, since: number, ms: number): Promise<TestShop> {
  const closedForMs = since + ms - Date.parse(shop.clock.now());
  return reopened(shop, closedForMs);
}

const kinds = async (shop: TestShop) =>
  (await listClocks(shop.owner)).clocks.map(({ kind, state }) => `${kind} ${state}`);

/** What stands against a coat now, one sentence each. */
async function against(shop: TestShop, kit: FinishKit, bow: Flow, batchId: string | null) {
  const looked = { ...sessionOf(kit.systemId, [bow.orderId]), batchId };
  const { session, orders } = await lookAtSession(shop.owner, looked);
  return [...session, ...orders.flatMap((each) => each.missing)].map(({ sentence }) => sentence);
}

test('induction and pot life go on while the program is closed', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  const mixed = await kit.mix();
  if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
  const mixedAt = Date.parse(mixed.usableFrom) - 15 * minute;
  expect(Date.parse(mixed.usableUntil) - mixedAt).toBe(120 * minute);

  let shop = await openedAfter(kit.shop, mixedAt, 10 * minute);
  expect(await kinds(shop)).toEqual(['induction running', 'pot-life running']);
  expect(await against(shop, kit, bow, mixed.id)).toEqual([
    'Batch 260302-1 must stand another 5 min before it is used.',
  ]);

  shop = await openedAfter(shop, mixedAt, 15 * minute);
  expect(await kinds(shop)).toEqual(['pot-life running']);
  expect(await against(shop, kit, bow, mixed.id)).toEqual([]);

  shop = await openedAfter(shop, mixedAt, 119 * minute);
  expect(await against(shop, kit, bow, mixed.id)).toEqual([]);

  shop = await openedAfter(shop, mixedAt, 121 * minute);
  expect(await kinds(shop)).toEqual(['pot-life past']);
  expect((await finishRoom(shop.owner)).batches[0]?.state).toBe('past');
  expect(await against(shop, kit, bow, mixed.id)).toEqual([
    'Batch 260302-1 is past its pot life by 1 min: mix a new one. Thinner does not bring it back.',
  ]);
});

async function coated() {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  const mixed = await kit.mix();
  kit.shop.clock.advance(16 * minute);
  await kit.spray([bow], { batchId: mixed.outcome === 'mixed' ? mixed.id : '' });
  const { lastCoatAt } = await orderFinishNow(kit.shop.owner, bow.orderId);
  return { kit, bow, since: Date.parse(lastCoatAt ?? '') };
}

test('clocks come back after a restart exactly as they were', async () => {
  const { kit } = await coated();
  const before = await listClocks(kit.shop.owner);
  const shop = await reopened(kit.shop);
  const after = await listClocks(shop.owner);
  expect(after.clocks).toEqual(before.clocks);
  expect(after.clocks.length).toBeGreaterThan(4);
});

/** What a shop reads and mixes when it comes in: this night's air and a cup that may be used. */
async function readAndMixed(shop: TestShop, { systemId }: FinishKit): Promise<string> {
  await recordAir(shop.owner, {
    commandId: newCommandId(),
    airF: 70,
    humidityPercent: 50,
    surfaceF: 70,
    note: '',
    at: null,
  });
  const mixed = await mixBatch(shop.owner, {
    commandId: newCommandId(),
    finishSystemId: systemId,
    name: '',
    wanted: { by: 'volume', ml: 100 },
    mixF: 70,
    at: new Date(Date.parse(shop.clock.now()) - 20 * minute).toISOString(),
    note: '',
  });
  if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
  return mixed.id;
}

test.each([
  { minutes: 239, says: /^Too early: the next coat may follow in 1 min\.$/ },
  { minutes: 241, says: null },
  { minutes: 1439, says: null },
  { minutes: 1441, says: /^Scuff the film, then coat within 2 days 23 h 58 min\.$/ },
  { minutes: 5761, says: /^Closed: ask the finish's sheet what a late coat needs\.$/ },
])('the recoat window $minutes min on, the program closed meanwhile', async ({ minutes, says }) => {
  const { kit, bow, since } = await coated();
  const shop = await openedAfter(kit.shop, since, minutes * minute);
  const batchId = await readAndMixed(shop, kit);
  const said = await against(shop, kit, bow, batchId);
  if (says === null) expect(said).toEqual([]);
  else expect(said).toEqual([expect.stringMatching(says)]);
});

test('handle, string, wrap and full cure pass while the program is closed, each at its own hour', async () => {
  const { kit, bow, since } = await coated();
  await bow.move('cure');
  let shop = kit.shop;
  const passed = async () => (await orderFinishNow(shop.owner, bow.orderId)).passed;
  const steps = [
    ['handle', 8],
    ['stringAndFlex', 48],
    ['wrap', 96],
    ['full', 336],
  ] as const;
  const before: string[] = [];
  for (const [step, hours] of steps) {
    shop = await openedAfter(shop, since, hours * hour - minute);
    expect(await passed(), `a minute before ${step}`).toEqual(before);
    shop = await openedAfter(shop, since, hours * hour);
    before.push(step);
    expect(await passed(), step).toEqual(before);
  }
});

test('final check and packing open after a restart at their hour and not a minute before', async () => {
  const { kit, bow, since } = await coated();
  await bow.move('cure');
  let shop = await openedAfter(kit.shop, since, 48 * hour - minute);
  const early = await sameOrder(shop, bow).move('final-check');
  expect(early.outcome === 'refused' && early.missing).toMatchObject([
    {
      item: 'string-and-flex',
      sentence: "Not yet safe to string and flex: by the finish's sheet in 1 min.",
    },
  ]);
  shop = await openedAfter(shop, since, 48 * hour + minute);
  expect((await sameOrder(shop, bow).move('final-check')).outcome).toBe('moved');

  const wrap = async () => {
    const refused = await sameOrder(shop, bow).move('packed');
    const missing = refused.outcome === 'refused' ? refused.missing : [];
    return missing.filter(({ item }) => item === 'safe-to-wrap').map(({ sentence }) => sentence);
  };
  shop = await openedAfter(shop, since, 96 * hour - minute);
  expect(await wrap()).toEqual(["Not yet safe to wrap: by the finish's sheet in 1 min."]);
  shop = await openedAfter(shop, since, 96 * hour);
  expect(await wrap()).toEqual([]);
});
