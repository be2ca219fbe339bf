import { expect, test } from 'vitest';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { boardCards } from '../../../core/shop/orders/board.ts';
import { cancelOrder, sendHome, takeUpAgain } from '../../../core/shop/orders/going-home.ts';
import { holdOrder } from '../../../core/shop/orders/holds.ts';
import { editOrder } from '../../../core/shop/orders/orders.ts';
import { setHandover, setStripFirst } from '../../../core/shop/orders/reroute.ts';
import { routeFor, routeHome } from '../../../core/shop/orders/route.ts';
import { finalCheckItems } from '../../../shared/final-checklist.ts';
import type { GoingHome } from '../../../shared/stages.ts';
import { bowFields, orderFields } from '../../support/fixtures.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const reason = 'they changed their mind';
const override = { override: { reason: 'papers follow' } };

async function started(change: Partial<typeof orderFields> = {}) {
  const shop = await testShop();
  const { id } = await takeIn(shop, change);
  return { shop, flow: new Flow(shop, id) };
}

async function arrived(change: Partial<typeof orderFields> = {}) {
  const made = await started(change);
  await made.flow.move('arrived', override);
  return made;
}

/** A reduction with its consents, standing in the weight work. */
async function inWeightWork() {
  const made = await arrived();
  const { shop, flow } = made;
  await flow.grant('price-and-scope');
  await flow.grant('alteration-acknowledgement');
  await flow.move('agreed', override);
  await flow.weigh(await checkedScale(shop), 'arrival', 52);
  await flow.move('weight-work', override);
  expect((await flow.order()).card.stage).toBe('weight-work');
  return made;
}

async function target(flow: Flow) {
  const { id, rowVersion } = (await flow.order()).card;
  return { commandId: newCommandId(), id, rowVersion };
}

async function home(flow: Flow, kind: GoingHome = 'declined', ctx = flow.shop.owner) {
  return sendHome(ctx, { ...(await target(flow)), kind, reason });
}

async function takeUp(flow: Flow, shop: TestShop, as: 'owner' | 'office' = 'office') {
  return takeUpAgain(shop.as(as), { ...(await target(flow)), reason: 'they want it after all' });
}

test('a bow is sent home from where it stands: only packing and the handover lie ahead', async () => {
  const { shop, flow } = await inWeightWork();
  await home(flow, 'broken', shop.as('bench'));
  const order = await flow.order();
  expect(order.card).toMatchObject({
    stage: 'weight-work',
    goingHome: 'broken',
    route: ['requested', 'in-mail', 'arrived', 'agreed', 'weight-work', 'packed', 'shipped'],
  });
  expect(order.goingHomeReason).toBe(reason);
  expect(order.next?.stage).toBe('packed');
  expect(order.history[0]).toMatchObject({
    kind: 'going-home',
    summary: 'Going home: the bow is broken',
    reason,
  });
  expect((await boardCards(shop.owner, false))[0]?.goingHome).toBe('broken');
});

test('packing on the way home asks for no final check', async () => {
  const { flow } = await arrived();
  await home(flow);
  const missing = (await flow.order()).next?.missing.map((item) => item.item) ?? [];
  expect(missing).toContain('paid-or-terms');
  expect(missing.filter((item) => finalCheckItems.some((check) => check === item))).toEqual([]);
  expect((await flow.move('packed', override)).outcome).toBe('moved');
  expect((await flow.order()).next?.stage).toBe('shipped');
});

test('a bow that is not here, has left or goes home already is not sent home', async () => {
  const { flow } = await started();
  await expect(home(flow)).rejects.toMatchObject({
    code: 'CONFLICT',
    details: { stage: 'Cancel the request instead.' },
  });
  await flow.move('arrived', override);
  await home(flow);
  await expect(home(flow)).rejects.toMatchObject({ code: 'CONFLICT' });
  await flow.move('packed', override);
  await flow.move('shipped', override);
  await expect(home(flow)).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(takeUp(flow, flow.shop)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a bow standing packed has only the handover before it', () => {
  const work = routeFor(['new-string'], { stripFirst: false, handover: 'collected' });
  expect(routeHome(work, 'packed')).toEqual(work);
  expect(routeHome(work, 'arrived')).toEqual([
    'requested',
    'in-mail',
    'arrived',
    'packed',
    'collected',
  ]);
});

test('what stood packed is looked at anew when it is taken up again', async () => {
  const { flow } = await arrived();
  await home(flow);
  await flow.move('packed', override);
  await takeUp(flow, flow.shop);
  expect((await flow.order()).card).toMatchObject({ stage: 'arrived', goingHome: null });
});

test('a hold is released with the command that sends the bow home', async () => {
  const { shop, flow } = await arrived();
  await holdOrder(shop.owner, {
    ...(await target(flow)),
    kind: 'customer',
    reason: 'no answer',
    remindOn: null,
  });
  await home(flow, 'withdrawn');
  const order = await flow.order();
  expect(order.card).toMatchObject({ hold: null, goingHome: 'withdrawn' });
  expect(
    order.history
      .map((item) => item.kind)
      .slice(0, 2)
      .sort(),
  ).toEqual(['going-home', 'release']);
});

test('taken up again the order has its route of work back, with its choices', async () => {
  const { shop, flow } = await arrived();
  await setStripFirst(shop.owner, { ...(await target(flow)), stripFirst: true });
  const before = (await flow.order()).card.route;
  expect(before.indexOf('strip-sand')).toBeLessThan(before.indexOf('weight-work'));
  await home(flow);
  await setHandover(shop.owner, { ...(await target(flow)), handover: 'collected' });
  expect((await flow.order()).card.route.slice(-2)).toEqual(['packed', 'collected']);
  await takeUp(flow, shop);
  const { card, goingHomeReason } = await flow.order();
  expect(card.route).toEqual(before.map((stage) => (stage === 'shipped' ? 'collected' : stage)));
  expect(card).toMatchObject({ stage: 'arrived', goingHome: null });
  expect(goingHomeReason).toBe('');
});

test('an order in work is not taken up', async () => {
  const { shop, flow } = await arrived();
  await expect(takeUp(flow, shop)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a step back on the way home brings no gate of the work before the parcel', async () => {
  const { flow } = await inWeightWork();
  await home(flow);
  await flow.move('packed', override);
  await flow.move('arrived', { reason: 'forgot the quiver' });
  const { card, next } = await flow.order();
  expect(card.route).toEqual(['requested', 'in-mail', 'arrived', 'packed', 'shipped']);
  expect(next?.stage).toBe('packed');
  await takeUp(flow, flow.shop);
  expect((await flow.order()).card.route).toContain('strip-sand');
});

test('on the way home services and the order of work stay; everything else may be edited', async () => {
  const { shop, flow } = await arrived();
  await home(flow);
  await expect(
    setStripFirst(shop.owner, { ...(await target(flow)), stripFirst: true }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(
    editOrder(shop.owner, { ...(await target(flow)), ...orderFields, services: ['new-string'] }),
  ).rejects.toMatchObject({
    code: 'CONFLICT',
    details: { services: 'Take it up again before changing the services.' },
  });
  const { route } = (await flow.order()).card;
  await editOrder(shop.owner, {
    ...(await target(flow)),
    ...orderFields,
    customerNotes: 'Sent back as agreed.',
  });
  const order = await flow.order();
  expect(order.customerNotes).toBe('Sent back as agreed.');
  expect(order.card.route).toEqual(route);
});

test('a request whose bow never came is cancelled, and may be taken up again', async () => {
  const { shop, flow } = await started();
  await holdOrder(shop.owner, {
    ...(await target(flow)),
    kind: 'customer',
    reason: 'nothing came',
    remindOn: null,
  });
  await cancelOrder(shop.as('office'), { ...(await target(flow)), reason: 'never sent' });
  const cancelled = await flow.order();
  expect(cancelled.card).toMatchObject({ stage: 'cancelled', hold: null });
  expect(cancelled.next).toBeNull();
  expect(await boardCards(shop.owner, false)).toEqual([]);
  expect((await boardCards(shop.owner, true)).map((card) => card.stage)).toEqual(['cancelled']);
  await expect(flow.move('arrived', override)).rejects.toMatchObject({ code: 'CONFLICT' });
  await editOrder(shop.owner, {
    ...(await target(flow)),
    ...orderFields,
    privateNotes: 'moved away',
  });
  await takeUp(flow, shop);
  const again = await flow.order();
  expect(again.card.stage).toBe('requested');
  expect(again.next?.stage).toBe('in-mail');
  expect(again.history[0]).toMatchObject({ fromStage: 'cancelled', toStage: 'requested' });
});

test('a bow that is here is sent home, not cancelled', async () => {
  const { shop, flow } = await arrived();
  await expect(
    cancelOrder(shop.owner, { ...(await target(flow)), reason: 'never sent' }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
  await home(flow);
  await flow.move('requested', { reason: 'was somebody else' });
  await cancelOrder(shop.owner, { ...(await target(flow)), reason: 'was somebody else' });
  expect((await flow.order()).card).toMatchObject({ stage: 'cancelled', goingHome: null });
});

test('an older view does not send home, take up or cancel', async () => {
  const { shop, flow } = await arrived();
  const old = { ...(await target(flow)), rowVersion: 1 };
  for (const attempt of [
    () => sendHome(shop.owner, { ...old, kind: 'declined', reason }),
    () => takeUpAgain(shop.owner, { ...old, reason }),
    () => cancelOrder(shop.owner, { ...old, reason }),
  ])
    await expect(attempt()).rejects.toMatchObject({ code: 'STALE' });
});

test('an order that left is not reopened with a target past what its bow may now be drawn to', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await cancelOrder(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: (await flow.order()).card.rowVersion,
    reason: 'never came',
  });
  const { bow } = await flow.order();
  await editBow(shop.owner, {
    commandId: newCommandId(),
    id: bow?.id ?? '',
    rowVersion: bow?.rowVersion ?? 0,
    ...bowFields,
    markedDrawIn: 26,
    maxSafeDrawIn: 27,
  });
  const rowVersion = (await flow.order()).card.rowVersion;
  await expect(
    takeUpAgain(shop.owner, { commandId: newCommandId(), id, rowVersion, reason: 'it came' }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('safe draw') });
});
