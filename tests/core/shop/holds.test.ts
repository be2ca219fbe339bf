import { expect, test } from 'vitest';
import { cancelOrder, sendHome } from '../../../core/shop/orders/going-home.ts';
import { nextReminder } from '../../../core/shop/orders/hold-days.ts';
import { changeHold, holdOrder, releaseOrder, remind } from '../../../core/shop/orders/holds.ts';
import { dayMs } from '../../support/clock.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

// The test shop opens on 2 March 2026 and keeps the usual policy: 3, 10, 21 days; 30; 90.
async function held(
  kind: 'customer' | 'material' | 'claim' | 'other' = 'customer',
  remindOn: string | null = null,
) {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await holdOrder(shop.owner, {
    ...(await target(flow)),
    kind,
    reason: 'no answer to the price',
    remindOn,
  });
  return { shop, flow };
}

async function target(flow: Flow) {
  const { id, rowVersion } = (await flow.order()).card;
  return { commandId: newCommandId(), id, rowVersion };
}

async function reminded(flow: Flow, shop: TestShop, more: { nextOn?: string } = {}) {
  await remind(shop.as('office'), {
    ...(await target(flow)),
    how: 'by e-mail',
    note: 'asked again',
    ...more,
  });
  return (await flow.order()).card.hold;
}

test('waiting for the customer gets the ladder, fee and unclaimed days of the policy', async () => {
  const { flow } = await held();
  const [hold] = (await flow.order()).holds;
  expect(hold).toMatchObject({
    remindOn: '2026-03-05',
    storageFeeOn: '2026-04-01',
    abandonedOn: '2026-05-31',
    ladder: ['2026-03-05', '2026-03-12', '2026-03-23'],
    reminders: [],
  });
});

test('a day given by hand replaces the first reminder only', async () => {
  const { flow, shop } = await held('customer', '2026-03-08');
  expect((await flow.order()).card.hold?.remindOn).toBe('2026-03-08');
  shop.clock.advance(6 * dayMs);
  expect((await reminded(flow, shop))?.remindOn).toBe('2026-03-12');
});

test('each reminder is kept and climbs to the next rung not yet passed', async () => {
  const { flow, shop } = await held();
  shop.clock.advance(3 * dayMs);
  expect((await reminded(flow, shop))?.remindOn).toBe('2026-03-12');
  // Forgotten for a while: the rung of the 12th has passed as well.
  shop.clock.advance(12 * dayMs);
  expect((await reminded(flow, shop))?.remindOn).toBe('2026-03-23');
  shop.clock.advance(7 * dayMs);
  expect(await reminded(flow, shop)).toMatchObject({
    remindOn: null,
    storageFeeOn: '2026-04-01',
    abandonedOn: '2026-05-31',
  });
  const [hold] = (await flow.order()).holds;
  expect(hold?.reminders.map(({ how, note, personName }) => [how, note, personName])).toEqual(
    Array.from({ length: 3 }, () => ['by e-mail', 'asked again', 'Otto Reed']),
  );
  expect((await flow.order()).history[0]).toMatchObject({
    summary: 'Reminded by e-mail: asked again',
    reason: null,
  });
});

test('a reminder sent early counts for the day it was due on', () => {
  const policy = { reminderDays: [3, 10, 21], storageFeeDays: 30, abandonedDays: 90 };
  const hold = {
    kind: 'customer' as const,
    since: '2026-03-02T09:00:00.000Z',
    remind_on: '2026-03-05',
  };
  expect(nextReminder(hold, '2026-03-04', policy)).toBe('2026-03-12');
  expect(nextReminder({ ...hold, remind_on: null }, '2026-03-20', policy)).toBe('2026-03-23');
});

test.each(['material', 'claim', 'other'] as const)(
  'waiting for %s has one day, pushed on by a week or by hand',
  async (kind) => {
    const { flow, shop } = await held(kind, '2026-03-04');
    const [hold] = (await flow.order()).holds;
    expect(hold).toMatchObject({
      remindOn: '2026-03-04',
      storageFeeOn: null,
      abandonedOn: null,
      ladder: [],
    });
    expect((await reminded(flow, shop))?.remindOn).toBe('2026-03-09');
    expect((await reminded(flow, shop, { nextOn: '2026-03-30' }))?.remindOn).toBe('2026-03-30');
  },
);

test('every day may be changed by hand, and is told', async () => {
  const { flow, shop } = await held();
  await changeHold(shop.as('office'), {
    ...(await target(flow)),
    remindOn: null,
    storageFeeOn: null,
    abandonedOn: '2026-07-01',
  });
  const order = await flow.order();
  expect(order.card.hold).toMatchObject({
    remindOn: null,
    storageFeeOn: null,
    abandonedOn: '2026-07-01',
  });
  expect(order.history[0]?.summary).toBe(
    'Days set: remind never, storage fee never, unclaimed 2026-07-01',
  );
});

test('without a hold there is nothing to change, remind of or release', async () => {
  const { flow, shop } = await held();
  await releaseOrder(shop.owner, await target(flow));
  const free = { remindOn: null, storageFeeOn: null, abandonedOn: null };
  for (const attempt of [
    async () => changeHold(shop.owner, { ...(await target(flow)), ...free }),
    async () => reminded(flow, shop),
    async () => releaseOrder(shop.owner, await target(flow)),
  ])
    await expect(attempt()).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a cancelled request waits for nothing', async () => {
  const { flow, shop } = await held();
  await cancelOrder(shop.owner, { ...(await target(flow)), reason: 'never sent' });
  await expect(
    holdOrder(shop.owner, {
      ...(await target(flow)),
      kind: 'customer',
      reason: 'no answer',
      remindOn: null,
    }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a second person on an older view is told; what was sent stays with its own hold', async () => {
  const { flow, shop } = await held();
  const old = await target(flow);
  await reminded(flow, shop);
  await expect(
    remind(shop.owner, { ...old, commandId: newCommandId(), how: 'by phone', note: '' }),
  ).rejects.toMatchObject({ code: 'STALE' });
  await releaseOrder(shop.owner, await target(flow));
  await holdOrder(shop.owner, {
    ...(await target(flow)),
    kind: 'material',
    reason: 'leather',
    remindOn: null,
  });
  expect((await flow.order()).holds.map((hold) => hold.reminders.length)).toEqual([0, 1]);
});

test('sent home, the hold with its days is over', async () => {
  const { flow, shop } = await held();
  await releaseOrder(shop.owner, await target(flow));
  await flow.move('arrived', { override: { reason: 'papers follow' } });
  await holdOrder(shop.owner, {
    ...(await target(flow)),
    kind: 'customer',
    reason: 'no answer',
    remindOn: null,
  });
  await sendHome(shop.owner, { ...(await target(flow)), kind: 'declined', reason: 'too dear' });
  expect((await flow.order()).holds.every((hold) => hold.releasedAt !== null)).toBe(true);
});
