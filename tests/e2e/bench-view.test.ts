import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { BenchViewDriver, bowBehind } from './bench-view-driver.ts';
import { cupsBehind } from './finish-behind.ts';
import { acceptedBehind, atTheBench, longbowArrived } from './longbow-behind.ts';
import { openShop } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let bench: BenchViewDriver;
let bow: Awaited<ReturnType<typeof longbowArrived>>;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  bow = await longbowArrived(client);
  await cupsBehind(client, 3);
  const planId = await acceptedBehind(client, bow.orderId);
  await atTheBench(client, bow.orderId);
  const world = await bowBehind(client, planId, 7);
  bench = new BenchViewDriver(session.page, client, bow.orderId, world);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

/** Looks at a step on the smallest tablet, with clocks of the finish room running. */
async function onTablet(step: string, look: () => Promise<void>): Promise<void> {
  const { page } = session;
  await page.setViewportSize({ width: 1024, height: 768 });
  await see(page.getByRole('region', { name: 'Running clocks' })).toBeVisible();
  await session.look(`bench ${step} with clocks`);
  await look();
  await page.setViewportSize({ width: 1280, height: 860 });
}

/** Nothing of the step is under the edge. */
const standsWhole = (step: string) =>
  onTablet(step, async () => {
    const main = session.page.locator('main');
    const beyond = await main.evaluate((all) => all.scrollHeight - all.clientHeight);
    expect(beyond, step).toBeLessThanOrEqual(0);
  });

test('a scanned work order opens the bow, and keys alone take the first bite; another tab is told', async () => {
  const { page, context } = session;
  await page.goto(session.at('bench'));
  await see(page.getByRole('button', { name: new RegExp(bow.number) })).toBeVisible();
  await bench.enter(bow.number);
  await see(page).toHaveURL(new RegExp(`/bench/${bow.orderId}$`));
  await bench.until('bite');
  await session.accessible('bench view before a bite');
  await session.picture('bench-view');
  await standsWhole('bite');

  // A bow weighed in between is strung and drawn: what is said of cutting is not said there.
  const ofCutting = page.getByText(/^Unstring the bow first/);
  await see(ofCutting).toBeVisible();
  await page.getByRole('button', { name: 'Weigh again' }).click();
  await see(page.getByText(/^Never past its maximum safe draw/)).toBeVisible();
  await see(ofCutting).toBeHidden();
  await standsWhole('weigh in between');
  await page.getByRole('button', { name: 'Do not weigh' }).click();
  await see(ofCutting).toBeVisible();

  const second = await context.newPage();
  await second.goto(session.at(`bench/${bow.orderId}`));
  await see(second.getByText((await bench.view()).sentence)).toBeVisible();
  await page.bringToFront();
  await bench.step();
  await see(second.getByRole('alert').filter({ hasText: 'The advice has changed' })).toBeVisible();
  await second.close();
  expect((await bench.view()).bitesTaken).toBe(1);
});

test('the clocks behind the most pressing one are read over the work, and lead nowhere', async () => {
  const { page } = session;
  const clocks = page.getByRole('region', { name: 'Running clocks' });
  await see(clocks.getByText(/^May be used in/).first()).toBeVisible();
  await clocks.getByRole('button', { name: /2 more$/ }).click();
  const all = page.getByRole('region', { name: 'All clocks' });
  await see(all.getByRole('listitem')).toHaveCount(3);
  await see(all.getByRole('link')).toHaveCount(0);
  await session.accessible('bench view with all clocks');
  await clocks.getByRole('button', { name: /Close$/ }).click();
  await see(all).toBeHidden();
});

test('a weight that cannot be true is asked about and struck out', async () => {
  const { page } = session;
  await bench.until('remeasure');
  await see(page.getByRole('heading', { name: /in from the fade/ })).toBeVisible();
  await onTablet('remeasure', async () => {
    await see(page.getByRole('button', { name: /^Take this width/ })).toBeInViewport({ ratio: 1 });
    await see(page.getByRole('button', { name: 'Strike out' })).toBeInViewport({ ratio: 1 });
  });
  await bench.until('weigh');
  await see(page.getByText(/This first pull is dropped/)).toBeVisible();
  await standsWhole('weigh');
  await bench.weigh(bench.world.weigh() + 6);
  const view = await bench.view();
  if (view.step.kind !== 'questions') throw new Error(`no questions, but ${view.step.kind}`);
  await session.accessible('bench view with a question');
  await standsWhole('questions');
  const first = view.step.questions[0]?.about ?? '';
  await bench.answer(view, view.step, first);
  const after = await bench.view();
  expect(after.step.kind).toBe('weigh');
  const { readings } = await client.orders.get({ id: bow.orderId });
  expect(readings.filter(({ struckReason }) => struckReason !== null)).toHaveLength(1);
  await see(page.getByText(/This first pull is dropped/)).toBeVisible();
});

test('bites as advised go on until the bench says to sand only, and end above the target', async () => {
  const { page } = session;
  const view = await bench.until('sand-only');
  await see(page.getByText('STOP - SAND ONLY')).toBeVisible();
  await session.accessible('bench view at sand only');
  await standsWhole('sand only');
  if (view.step.kind !== 'sand-only') throw new Error(view.step.kind);
  const { forecast } = view.step;
  // Sanding still takes weight: never so far down that it would end under the target.
  expect(forecast.endLbf).toBeGreaterThan(45 - 0.5);
  expect(forecast.weightLbf).toBeLessThan(52);
  expect(Math.abs(bench.world.trueLbf - forecast.weightLbf)).toBeLessThan(4 * forecast.sdLbf);
  expect(Math.abs(bench.world.trueTillerIn - (view.tiller?.targetIn ?? 9))).toBeLessThan(1 / 16);
});

test('stripped, sanded and brought down by light passes, it stands within a pound of its target', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${bow.orderId}`));
  const order = new OrderDriver(page);
  await order.move('Strip & sand');
  await order.standsIn('Strip & sand');
  await page.goto(session.at(`bench/${bow.orderId}`));
  const view = await bench.until('at-target');
  await see(page.getByText('AT TARGET - STOP')).toBeVisible();
  await session.accessible('bench view at its target');
  await standsWhole('at target');
  expect(bench.done).toContain('sand-only');
  expect(Math.abs(bench.world.trueLbf - 45)).toBeLessThan(1);
  expect(Math.abs(bench.world.trueTillerIn - (view.tiller?.targetIn ?? 9))).toBeLessThan(1 / 16);
  const { next } = await client.orders.get({ id: bow.orderId });
  expect(next?.stage).toBe('finish');
  expect(next?.missing.map(({ item }) => item)).not.toContain('weighed-after-sanding');
  expect(session.troubles()).toEqual([]);
}, 240_000);
