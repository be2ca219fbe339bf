import { expect, test } from 'vitest';
import { strikeOutAir } from '../../../../core/shop/finish/air.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { editFinishPolicy, finishPolicy } from '../../../../core/shop/finish/policy.ts';
import { finishRoom } from '../../../../core/shop/finish/room.ts';
import { lookAtSession, spray } from '../../../../core/shop/finish/spray.ts';
import { strikeOutCoat } from '../../../../core/shop/finish/strike-coat.ts';
import { readSurface } from '../../../../core/shop/finish/surfaces.ts';
import { hour } from '../../../support/clock.ts';
import { type FinishKit, finishKit, usableBatch } from '../../../support/finish-kit.ts';
import { sessionOf } from '../../../support/session-of.ts';
import { newCommandId } from '../../../support/test-shop.ts';
import type { Flow } from '../../../support/whole-flow.ts';

type Result = Awaited<ReturnType<FinishKit['spray']>>;

const items = (result: Result) =>
  result.outcome === 'recorded'
    ? 'recorded'
    : [...result.session, ...result.orders.flatMap((order) => order.missing)].map(
        (missing) => missing.item,
      );

const sentences = (result: Result) =>
  result.outcome === 'recorded'
    ? []
    : [...result.session, ...result.orders.flatMap((order) => order.missing)].map(
        (missing) => missing.sentence,
      );

const override = { reason: 'the owner watched it' };

async function ready() {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  const batchId = await usableBatch(kit);
  return { kit, bow, batchId };
}

const coatsOf = async (kit: FinishKit, bow: Flow) =>
  (await orderFinishNow(kit.shop.owner, bow.orderId)).coats;

test('one session coats several bows in one entry, with what has not changed left out', async () => {
  const { kit, bow, batchId } = await ready();
  const other = await kit.bow();
  const done = await kit.spray([bow, other], { batchId });
  expect(items(done)).toBe('recorded');
  const [coat] = await coatsOf(kit, bow);
  // The middle of 3 to 5 mil; 44 percent of solids over 1.1 parts: 40 percent of it stays.
  expect(coat).toMatchObject({ purpose: 'clear', coats: 1, wetMil: 4, batchName: '260302-1' });
  expect(coat?.dryMil).toBeCloseTo(1.6, 9);
  expect(await coatsOf(kit, other)).toHaveLength(1);
  const { history } = await bow.order();
  expect(history[0]?.summary).toBe('Clear coat: Satin top coat, batch 260302-1, 4 mil wet');
});

test('a batch that still stands, or is past its pot life, coats nothing', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  const mixed = await kit.mix();
  const batchId = mixed.outcome === 'mixed' ? mixed.id : '';
  const early = await kit.spray([bow], { batchId });
  expect(sentences(early)).toEqual(['Batch 260302-1 must stand another 15 min before it is used.']);
  kit.shop.clock.advance(2.5 * hour);
  const late = await kit.spray([bow], { batchId });
  expect(sentences(late)).toEqual([
    'Batch 260302-1 is past its pot life by 30 min: mix a new one. Thinner does not bring it back.',
  ]);
  expect(await coatsOf(kit, bow)).toEqual([]);
  const passed = await kit.spray([bow], { batchId, override });
  expect(passed).toMatchObject({ outcome: 'recorded', warnings: sentences(late) });
  const { history } = await bow.order();
  expect(history[0]).toMatchObject({ reason: override.reason });
  expect(history[0]?.summary).toMatch(/Let pass: Batch 260302-1 is past its pot life/);
});

test('only the owner lets a coat pass', async () => {
  const { kit, bow } = await ready();
  const input = {
    commandId: newCommandId(),
    ...sessionOf(kit.systemId, [bow.orderId]),
    note: '',
    used: null,
    override,
  };
  await expect(spray(kit.shop.as('bench'), input)).rejects.toMatchObject({ code: 'NOT_ALLOWED' });
});

test('wet air refuses a coat, in words; so does air nobody read, or read too long ago', async () => {
  const { kit, bow, batchId } = await ready();
  const { air } = await finishRoom(kit.shop.owner);
  await strikeOutAir(kit.shop.owner, {
    commandId: newCommandId(),
    id: air?.id ?? '',
    rowVersion: 1,
    reason: 'read beside the heater',
  });
  expect(sentences(await kit.spray([bow], { batchId }))).toEqual(['Air not read before the coat.']);
  await kit.air({ humidityPercent: 85, surfaceF: 68 });
  const wet = await kit.spray([bow], { batchId });
  expect(items(wet)).toEqual(['air']);
  expect(sentences(wet)[0]).toMatch(/Humidity is 85 percent, over 80 percent.*above the dew point/);
  expect(items(await kit.spray([bow], { batchId, override }))).toBe('recorded');

  const kit2 = await ready();
  kit2.kit.shop.clock.advance(4.1 * hour);
  const old = await kit2.kit.spray([kit2.bow], { batchId: kit2.batchId });
  expect(sentences(old).join(' ')).toMatch(/The air was read 4 h 22 min ago: read it again/);
});

test('without a surface the bow must have hung two hours; its own reading answers too', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air({ surfaceF: null });
  const batchId = await usableBatch(kit);
  expect(sentences(await kit.spray([bow], { batchId }))[0]).toMatch(/Measure the surface/);
  const hung = [
    { orderId: bow.orderId, scuffed: null, surfaceF: null, hungSince: '2026-03-02T06:00:00Z' },
  ];
  const looked = await lookAtSession(kit.shop.owner, {
    ...sessionOf(kit.systemId, []),
    batchId,
    bows: hung,
  });
  expect(looked).toMatchObject({ session: [], orders: [], slots: { used: 0, wanted: 1, all: 6 } });
  const cold = hung.map((each) => ({ ...each, surfaceF: 52 }));
  expect(sentences(await kit.spray([bow], { batchId, bows: cold }))[0]).toMatch(/dew point/);
  await readSurface(kit.shop.owner, {
    commandId: newCommandId(),
    orderIds: [bow.orderId],
    surfaceF: 70,
    at: null,
  });
  expect(items(await kit.spray([bow], { batchId }))).toBe('recorded');
});

test('the recoat window is asked bow by bow: too early, open, scuffed, closed', async () => {
  const { kit, bow, batchId } = await ready();
  await kit.spray([bow], { batchId });
  expect(sentences(await kit.spray([bow], { batchId }))).toEqual([
    'Too early: the next coat may follow in 4 h.',
  ]);
  const later = async (hours: number) => {
    kit.shop.clock.advance(hours * hour);
    await kit.air();
    return usableBatch(kit);
  };
  const open = await later(4.5);
  expect(items(await kit.spray([bow], { batchId: open }))).toBe('recorded');
  const dry = await later(30);
  expect(sentences(await kit.spray([bow], { batchId: dry }))[0]).toMatch(
    /Scuff the film, then coat/,
  );
  const scuffed = [
    {
      orderId: bow.orderId,
      scuffed: { grit: { grit: 400, scale: 'P' as const } },
      surfaceF: null,
      hungSince: null,
    },
  ];
  expect(items(await kit.spray([bow], { batchId: dry, bows: scuffed }))).toBe('recorded');
  const closed = await later(120);
  expect(sentences(await kit.spray([bow], { batchId: closed, bows: scuffed }))[0]).toMatch(
    /Closed/,
  );
});

test('the rack holds so many bows a day; a second coat takes no second place', async () => {
  const { kit, bow, batchId } = await ready();
  const { rowVersion } = await finishPolicy(kit.shop.owner.read);
  await editFinishPolicy(kit.shop.owner, {
    commandId: newCommandId(),
    rowVersion,
    rackSlots: 1,
    transferPercent: 25,
  });
  await kit.spray([bow], { batchId });
  const other = await kit.bow();
  expect(sentences(await kit.spray([other], { batchId }))).toEqual([
    'The rack takes one bow a day, 1 today so far: one bow more does not fit.',
  ]);
  kit.shop.clock.advance(5 * hour);
  await kit.air();
  expect(items(await kit.spray([bow], { batchId: await usableBatch(kit) }))).toBe('recorded');
});

test('another finish than the chosen, another stage and unknown ids are refused', async () => {
  const { kit, bow, batchId } = await ready();
  await bow.move('cure');
  expect(items(await kit.spray([bow], { batchId, override }))).toEqual(['stage']);
  await expect(kit.spray([bow], { batchId: 'nowhere' })).rejects.toMatchObject({
    code: 'NOT_FOUND',
  });
  await expect(kit.spray([bow], { batchId, finishSystemId: 'x' })).rejects.toMatchObject({
    code: 'NOT_FOUND',
  });
  await expect(kit.spray([bow, bow], { batchId })).rejects.toThrow('A bow is chosen twice');
  await expect(kit.spray([bow], { batchId, purpose: 'oil' })).rejects.toThrow('hand-rubbed oil');
});

test('a struck-out coat counts no more, for the window or the cure', async () => {
  const { kit, bow, batchId } = await ready();
  await kit.spray([bow], { batchId });
  const [coat] = await coatsOf(kit, bow);
  await strikeOutCoat(kit.shop.owner, {
    commandId: newCommandId(),
    id: coat?.id ?? '',
    rowVersion: 1,
    reason: 'the other bow was coated',
  });
  const finish = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(finish).toMatchObject({ coatsOn: 0, lastCoatAt: null, cure: [], window: null });
  expect(finish.coats[0]?.struckReason).toBe('the other bow was coated');
  expect(items(await kit.spray([bow], { batchId }))).toBe('recorded');
});

test('the film is told beside the weight and changes none', async () => {
  const { kit, bow, batchId } = await ready();
  await kit.spray([bow], { batchId, coats: 5 });
  const { film } = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(film?.dryMil).toBeCloseTo(8, 9);
  expect(film?.percent).toBeGreaterThan(0.5);
  expect(film?.percent).toBeLessThan(2);
  expect(film?.sentence).toMatch(/8 mil of dry film on each face adds about/);
});
