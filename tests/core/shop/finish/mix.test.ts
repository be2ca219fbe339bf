import { expect, test } from 'vitest';
import { recordGeometry } from '../../../../core/shop/bows/geometry.ts';
import { discardBatch, listBatches } from '../../../../core/shop/finish/batches.ts';
import { planMix } from '../../../../core/shop/finish/mix-plan.ts';
import { addFinishSystem } from '../../../../core/shop/finish/systems.ts';
import { stockedLots } from '../../../../core/shop/stores/stocked-lot.ts';
import { dayMs } from '../../../support/clock.ts';
import { type FinishKit, finishKit, oilSheet, twoPartSheet } from '../../../support/finish-kit.ts';
import { newCommandId, takeIn } from '../../../support/test-shop.ts';

const minutes = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / 60_000;

async function onHand({ shop }: FinishKit, consumableId: string) {
  const lots = await stockedLots(shop.owner.read, { consumableId });
  return Object.fromEntries(lots.map((lot) => [lot.row.number, lot.onHand]));
}

const plan = (kit: FinishKit, more: Partial<Parameters<typeof planMix>[1]> = {}) =>
  planMix(kit.shop.owner, {
    finishSystemId: kit.systemId,
    wanted: { by: 'volume', ml: 330 },
    mixF: 70,
    ...more,
  });

test('a plan shows the parts by volume and weight, the lots and the times', async () => {
  const kit = await finishKit();
  const planned = await plan(kit);
  // 2 to 1 with 10 percent of thinner: 3.3 parts of 100 mL; densities 1.2, 1 and 0.8.
  expect(planned.lines).toMatchObject([
    { part: 'resin', name: 'Satin base', ml: 200, g: 240, scaleReadsG: 240 },
    { part: 'hardener', ml: 100, g: 100, scaleReadsG: 340 },
    { part: 'thinner', ml: 30, g: 24, scaleReadsG: 364 },
  ]);
  expect(planned.picks).toMatchObject([
    { part: 'resin', lotNumber: 'R-1', quantity: 200, unit: 'mL', expiresOn: '2026-06-30' },
    { part: 'hardener', lotNumber: 'H-1', quantity: 100 },
    { part: 'thinner', lotNumber: 'T-1', quantity: 30, expiresOn: null },
  ]);
  expect(planned).toMatchObject({ usableFromMin: 15, usableUntilMin: 120, troubles: [] });
});

test('mixing issues all three, keeps the batch with its sheet and starts its clock at once', async () => {
  const kit = await finishKit();
  const mixed = await kit.mix();
  expect(mixed).toMatchObject({ outcome: 'mixed', name: '260302-1' });
  expect(await onHand(kit, kit.resinId)).toEqual({ 'R-1': 300, 'R-2': 1000 });
  expect(await onHand(kit, kit.hardenerId)).toEqual({ 'H-1': 300 });
  expect(await onHand(kit, kit.thinnerId)).toEqual({ 'T-1': 970 });
  const [batch] = await listBatches(kit.shop.owner);
  expect(batch).toMatchObject({ state: 'standing', resinMl: 200, hardenerG: 100, thinnerMl: 30 });
  expect(batch?.lots.map((lot) => `${lot.part} ${lot.lotNumber}`).sort()).toEqual([
    'hardener H-1',
    'resin R-1',
    'thinner T-1',
  ]);
  expect(minutes(batch?.mixedAt ?? '', batch?.usableFrom ?? '')).toBeCloseTo(15, 6);
  expect(minutes(batch?.mixedAt ?? '', batch?.usableUntil ?? '')).toBeCloseTo(120, 6);
  expect(await kit.mix()).toMatchObject({ name: '260302-2' });
});

test('18 F warmer halves the pot life; outside the sheet nothing is mixed', async () => {
  const kit = await finishKit();
  expect(await plan(kit, { mixF: 88 })).toMatchObject({ usableUntilMin: 60 });
  const hot = await kit.mix({ mixF: 92 });
  expect(hot).toMatchObject({ outcome: 'refused' });
  expect(hot.outcome === 'refused' && hot.troubles[0]).toMatch(/says nothing about 92 F/);
  expect(await onHand(kit, kit.resinId)).toEqual({ 'R-1': 500, 'R-2': 1000 });
});

test('what runs over a lot is taken from the next that expires', async () => {
  const kit = await finishKit();
  const mixed = await kit.mix({ wanted: { by: 'volume', ml: 990 } });
  expect(mixed.outcome === 'mixed' && mixed.picks.map((pick) => pick.quantity)).toEqual([
    500, 100, 300, 90,
  ]);
  expect(await onHand(kit, kit.resinId)).toEqual({ 'R-1': 0, 'R-2': 900 });
});

test('short or expired stock refuses the whole batch and writes nothing', async () => {
  const kit = await finishKit();
  const short = await kit.mix({ wanted: { by: 'volume', ml: 1650 } });
  expect(short).toMatchObject({ outcome: 'refused' });
  expect(short.outcome === 'refused' && short.troubles).toEqual([
    'There is 400 mL of Satin hardener in date, not 500 mL. Receive more, or count what is there.',
  ]);
  kit.shop.clock.advance(60 * dayMs);
  const expired = await kit.mix();
  expect(expired.outcome === 'refused' && expired.troubles[0]).toMatch(
    /There is no Satin hardener in date\. Lot H-1 has expired/,
  );
  expect(await listBatches(kit.shop.owner)).toEqual([]);
  expect(await onHand(kit, kit.thinnerId)).toEqual({ 'T-1': 1000 });
});

test('the amount comes from area, film, coats and what reaches the work', async () => {
  const kit = await finishKit();
  const { id } = await takeIn(kit.shop);
  const unmeasured = await plan(kit, {
    wanted: { by: 'bows', orderIds: [id], moreAreaIn2: 0, coats: 2, wetMil: null, leftInGunMl: 20 },
  });
  expect(unmeasured.troubles[0]).toMatch(/limbs are measured, or type an area/);
  const order = await kit.shop.owner.read.selectFrom('shop_order').selectAll().executeTakeFirst();
  const station = (limb: 'upper' | 'lower', fromFadeIn: number, widthIn: number) => ({
    limb,
    fromFadeIn,
    widthIn,
    thicknessIn: 0.4,
    surface: 'bare' as const,
  });
  await recordGeometry(kit.shop.owner, {
    commandId: newCommandId(),
    bowId: order?.bow_id ?? '',
    limbSetId: null,
    orderId: null,
    note: '',
    stations: (['upper', 'lower'] as const).flatMap((limb) => [
      station(limb, 0, 1.4),
      station(limb, 12, 1.2),
      station(limb, 24, 0.6),
    ]),
  });
  const planned = await plan(kit, {
    wanted: { by: 'bows', orderIds: [id], moreAreaIn2: 0, coats: 2, wetMil: null, leftInGunMl: 20 },
  });
  const limb = 12 * 3.4 + 12 * 2.6;
  const area = 2 * limb + 8 * 20;
  expect(planned.areaIn2).toBeCloseTo(area, 6);
  expect(planned.wetMil).toBe(4);
  // A fifth, say: a quarter of what is sprayed reaches the work, two coats of 4 mil.
  expect(planned.readyMl).toBeCloseTo((area * 0.004 * 2 * 16.387064) / 0.25 + 20, 3);
  expect(planned.areas[0]?.sentence).toMatch(/limbs as measured, riser by allowance/);
});

test('what is not named in the stores, or has no batch, is refused in words', async () => {
  const kit = await finishKit();
  const add = (sheet: typeof twoPartSheet | typeof oilSheet, name: string) =>
    addFinishSystem(kit.shop.owner, {
      commandId: newCommandId(),
      sheet: { ...sheet, name },
      resinId: kit.resinId,
      hardenerId: null,
      thinnerId: null,
      active: true,
    });
  const { id } = await add(twoPartSheet, 'Half kept');
  const half = await kit.mix({ finishSystemId: id });
  expect(half.outcome === 'refused' && half.troubles).toEqual([
    'Name the hardener of Half kept in the stores: its lot and date are looked at when it is issued.',
  ]);
  const { id: oil } = await add(oilSheet, 'Oil');
  const oiled = await kit.mix({ finishSystemId: oil });
  expect(oiled.outcome === 'refused' && oiled.troubles.join(' ')).toMatch(/used as it comes/);
  await expect(kit.mix({ finishSystemId: 'nowhere' })).rejects.toMatchObject({ code: 'NOT_FOUND' });
});

test('a batch may be written down later, never ahead, and is discarded once', async () => {
  const kit = await finishKit();
  await expect(kit.mix({ at: '2026-03-02T10:00:00Z' })).rejects.toThrow('has not come yet');
  const mixed = await kit.mix({ at: '2026-03-02T06:00:00Z', name: 'morning cup' });
  if (mixed.outcome !== 'mixed') throw new Error('refused');
  expect(mixed.usableUntil).toBe('2026-03-02T08:00:00.000Z');
  const discard = () =>
    discardBatch(kit.shop.owner, {
      commandId: newCommandId(),
      id: mixed.id,
      rowVersion: 1,
      reason: 'past its pot life',
    });
  await discard();
  expect((await listBatches(kit.shop.owner))[0]).toMatchObject({
    name: 'morning cup',
    state: 'discarded',
    discardedWhy: 'past its pot life',
  });
  await expect(discard()).rejects.toThrow('already discarded');
});
