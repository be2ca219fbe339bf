import { expect, test } from 'vitest';
import { lookAtAir } from '../../../../core/shop/finish/air.ts';
import { finishRoom } from '../../../../core/shop/finish/room.ts';
import { hour } from '../../../support/clock.ts';
import { finishKit, usableBatch } from '../../../support/finish-kit.ts';
import { testShop } from '../../../support/test-shop.ts';

test('an empty room says that nothing is there', async () => {
  const shop = await testShop();
  expect(await finishRoom(shop.owner)).toMatchObject({
    systems: [],
    batches: [],
    air: null,
    bows: [],
    slots: { used: 0, all: 6 },
    transferPercent: 25,
    clockTrouble: null,
  });
});

test('the room shows its bows with window and times, the batch, the air and the rack', async () => {
  const kit = await finishKit();
  const [coated, bare] = [await kit.bow(), await kit.bow()];
  await kit.air({ airF: 72 });
  await kit.spray([coated], { batchId: await usableBatch(kit) });
  kit.shop.clock.advance(hour);
  const room = await finishRoom(kit.shop.owner);
  expect(room.air).toMatchObject({ airF: 72, personName: 'Ida Penn' });
  expect(room.batches).toMatchObject([{ name: '260302-1', state: 'usable' }]);
  expect(room.slots).toEqual({ used: 1, all: 6 });
  const [first, second] = room.bows;
  expect(first).toMatchObject({
    orderId: coated.orderId,
    stage: 'finish',
    finishName: 'Satin top coat',
    coatsOn: 1,
    coatsFrom: 2,
    coatsTo: 3,
    window: { state: 'before', sentence: 'Too early: the next coat may follow in 3 h.' },
    passed: [],
    lettered: false,
  });
  expect(first?.cure.map(({ step }) => step)).toEqual(['handle', 'stringAndFlex', 'wrap', 'full']);
  expect(second).toMatchObject({ orderId: bare.orderId, coatsOn: 0, window: null, cure: [] });
});

test('air is looked at before it is recorded, with the limits of the finish', async () => {
  const kit = await finishKit();
  const look = (airF: number, humidityPercent: number, surfaceF: number | null) =>
    lookAtAir(kit.shop.owner, { airF, humidityPercent, surfaceF, finishSystemId: kit.systemId });
  // 70 F at 50 percent: dew point 50.5 F.
  const good = await look(70, 50, 68);
  expect(good.dewPointF).toBeCloseTo(50.5, 1);
  expect(good.marginF).toBeCloseTo(17.5, 1);
  expect(good).toMatchObject({ leastMarginF: 5.4, troubles: [] });
  expect((await look(70, 50, 54)).troubles).toMatchObject([
    expect.stringMatching(/only 3\.\d F .* above the dew point/),
  ]);
  expect((await look(58, 50, null)).troubles).toMatchObject([
    expect.stringMatching(/The air is 58 F .* under 60 F/),
  ]);
});
