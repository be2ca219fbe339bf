import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { longbowArrived, measuredBehind } from './longbow-behind.ts';
import { openShop } from './open-shop.ts';
import { expect as see } from './page.ts';
import { everyLook, expectReadable } from './readable.ts';
import { Session } from './session.ts';
import { WeightBenchDriver } from './weight-bench-driver.ts';

let session: Session;
let client: Client;
let bow: Awaited<ReturnType<typeof longbowArrived>>;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  bow = await longbowArrived(client);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

test('52 lb is planned to 45 lb, the ways side by side, and narrowing is accepted', async () => {
  const { page } = session;
  await page.goto(session.at('weight-bench'));
  await page.getByRole('link', { name: new RegExp(bow.number) }).click();
  const desk = new WeightBenchDriver(page);
  await see(desk.ways.getByRole('columnheader').first()).toContainText('Sanding only');
  await desk.accept('Narrowing', 'the customer wants 45 lb and the glass is thick');
  await see(desk.banner(/is now the plan of this order: stop at/)).toBeVisible();
  const { plans } = await client.orders.get({ id: bow.orderId });
  expect(plans.map(({ method, fits }) => ({ method, fits }))).toEqual([
    { method: 'narrowing', fits: { ok: true, why: [] } },
  ]);
  const { input } = await client.plans.get({ id: plans[0]?.id ?? '' });
  expect(input.wish).toMatchObject({ weightLbf: 52, targetLbf: 45, drawIn: 28 });
  expect(plans[0]?.stopAtLbf).toBeGreaterThan(45);
  await session.accessible('weight bench with a plan');
  await session.picture('weight-bench');
});

test.each([
  { width: 1920, height: 1080 },
  { width: 1024, height: 768 },
  { width: 800, height: 1280 },
  // 1280 by 860 at 200 %.
  { width: 640, height: 430 },
])('the desk is as wide as a window of $width', async (size) => {
  const { page } = session;
  await page.setViewportSize(size);
  const desk = new WeightBenchDriver(page);
  await see(desk.ways).toBeVisible();
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over).toBeLessThanOrEqual(0);
});

test('limbs measured again: the plan says that it no longer fits, and why', async () => {
  const { page } = session;
  await page.setViewportSize({ width: 1280, height: 860 });
  const { orderId, bowId } = bow;
  await measuredBehind(client, { bowId, orderId, narrowerIn: 0.03 });
  const { plans } = await client.orders.get({ id: orderId });
  const why = plans[0]?.fits.why ?? [];
  expect(why.length).toBeGreaterThan(0);
  const told = new WeightBenchDriver(page).banner(/no longer fits/);
  await see(told).toBeVisible();
  await see(told.getByRole('listitem')).toHaveText(why);
  await page.goto(session.at(`orders/${orderId}?open=weight-plan`));
  await see(page.getByText('It no longer fits. Plan again before more comes off.')).toBeVisible();
  expect(session.troubles()).toEqual([]);
});

test('forty stations on each limb: the plan is reckoned on all of them, and the desk stays readable', async () => {
  const { orderId, bowId } = bow;
  await measuredBehind(client, { bowId, orderId, narrowerIn: 0, stationsOnLimb: 40 });
  const { input } = await client.plans.start({ orderId });
  expect(input.bow.upper.stations).toHaveLength(40);
  const desk = new WeightBenchDriver(session.page);
  await expectReadable(session, 'weight bench, forty stations', `weight-bench/order/${orderId}`, {
    looks: everyLook.filter(({ look }) => ['light', 'small', 'narrow'].includes(look)),
    prepare: () =>
      see(desk.ways.getByRole('button', { name: 'Accept Narrowing', exact: true })).toBeVisible(),
  });
  expect(session.troubles()).toEqual([]);
});
