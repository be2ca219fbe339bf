import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { AgreementDriver } from './agreement-driver.ts';
import { BenchBehind } from './bench-behind.ts';
import { bowBehind } from './bench-view-driver.ts';
import { DeskBenchDriver } from './desk-bench-driver.ts';
import { acceptedBehind, atTheBench, longbowArrived } from './longbow-behind.ts';
import { openShop } from './open-shop.ts';
import { movedBehind } from './order-behind.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let desk: DeskBenchDriver;
let orderId: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  ({ orderId } = await longbowArrived(client));
  const planId = await acceptedBehind(client, orderId);
  await atTheBench(client, orderId);
  desk = new DeskBenchDriver(session, client, orderId, await bowBehind(client, planId, 11));
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

test('the template of the plan is printed at true size, both limbs by name', async () => {
  const papers = new AgreementDriver(session.page);
  await desk.atOrder();
  await papers.unfold('Papers');
  await papers.openPaper('For the bench', 'Marking-out template');
  const { bytes } = await papers.savePaper();
  const text = await textOf(bytes);
  expect(text).toContain('UPPER');
  expect(text).toContain('LOWER');
  await papers.closeDialog();
});

test('the first bite is taken by mouse, its widths are measured, glass and tiller noted at the desk', async () => {
  await desk.until('weigh');
  expect(desk.done).toEqual(['bite', 'remeasure', 'glass-check', 'read-tiller']);
  const { bench } = await client.orders.get({ id: orderId });
  expect(bench.removals[0]?.remeasuredAt).not.toBeNull();
  await see(desk.records).toContainText('re-measured');
});

test('a mistaken reading is struck out at the desk, and the bow is weighed again', async () => {
  const { page } = session;
  await desk.weigh(desk.world.weigh() + 6);
  expect((await desk.view()).step.kind).toBe('questions');
  const weight = page.getByRole('region', { name: 'Weight', exact: true });
  await weight
    .getByRole('button', { name: /^Strike out/ })
    .first()
    .click();
  const form = page.getByRole('form', { name: /strike/i });
  await form.getByRole('textbox').fill('read the wrong tick of the scale');
  await form.getByRole('button', { name: /strike/i }).click();
  await see.poll(async () => (await desk.view()).step.kind).toBe('weigh');
  await desk.weigh(desk.world.weigh());
  const { readings } = await client.orders.get({ id: orderId });
  expect(readings.filter(({ struckReason }) => struckReason !== null)).toHaveLength(1);
});

test('followed to the end, it passes its gates within a pound of the target', async () => {
  const scaleId = (await client.scales.list())[0]?.id ?? '';
  const behind = new BenchBehind(desk, scaleId);
  await behind.until('sand-only');
  await desk.atOrder();
  await desk.order.move('Strip & sand');
  await desk.order.standsIn('Strip & sand');
  await behind.until('at-target');
  expect(Math.abs(desk.world.trueLbf - 45)).toBeLessThan(1);
  const gate = async () => {
    const { next } = await client.orders.get({ id: orderId });
    return { stage: next?.stage, missing: next?.missing.map(({ item }) => item) ?? [] };
  };
  expect(await gate()).toMatchObject({ stage: 'finish' });
  // What weight work owes is there; the rest is the finish room's, which another test follows.
  for (const item of (await gate()).missing)
    expect(['last-grit', 'finish-system', 'air']).toContain(item);
  await movedBehind(client, orderId, 'finish');
  await desk.order.standsIn('Finish');
  expect(session.troubles()).toEqual([]);
});
