import { expect, test } from 'vitest';
import { bowLifeOf } from '../../../core/shop/bows/bow-life.ts';
import { contract } from '../../../shared/contract/index.ts';
import { z } from '../../../shared/zod.ts';
import { knownBow, planShop } from '../../support/plan-shop.ts';
import { removalOnRecord } from '../../support/removal-on-record.ts';

const hour = 3_600_000;
const at8 = { limb: 'upper' as const, from_fade_in: 8 };

test('widths add up by limb and station, as re-measured where they were, shared as they were cut', async () => {
  const { shop, orderId, bowId } = await planShop();
  await removalOnRecord(
    shop,
    orderId,
    { id: 'first', method: 'narrow' },
    {
      cuts: [
        { ...at8, planned_left_in: 0.02, planned_right_in: 0.02 },
        { limb: 'lower', from_fade_in: 8, done_left_in: 0.01, done_right_in: 0.01 },
        { limb: 'upper', from_fade_in: 14, done_left_in: 0, done_right_in: 0 },
      ],
    },
  );
  shop.clock.advance(hour);
  await removalOnRecord(
    shop,
    orderId,
    { id: 'second', method: 'narrow' },
    {
      cuts: [
        {
          ...at8,
          done_left_in: 0.03,
          done_right_in: 0.01,
          width_before_in: 1.2,
          width_after_in: 1.14,
        },
      ],
    },
  );
  const { lifetime, glassLeft } = await bowLifeOf(shop.owner, bowId);
  expect(lifetime).toEqual([
    {
      limbSetName: null,
      removals: 2,
      noted: [],
      faces: [],
      widths: [
        { limb: 'upper', fromFadeIn: 8, leftIn: 0.065, rightIn: 0.035, totalIn: 0.1 },
        { limb: 'lower', fromFadeIn: 8, leftIn: 0.01, rightIn: 0.01, totalIn: 0.02 },
      ],
    },
  ]);
  expect(glassLeft.map((one) => one.leftThou)).toEqual([45, 45, 45, 45]);
});

test('struck-out and not yet done removals count nowhere; words are shown, and warn of the glass', async () => {
  const { shop, orderId, bowId } = await planShop();
  const faces = [{ limb: 'upper' as const, face: 'belly' as const, planned_thou: 2 }];
  await removalOnRecord(
    shop,
    orderId,
    { id: 'struck', method: 'thin', struck_reason: 'wrong bow' },
    { faces },
  );
  await removalOnRecord(shop, orderId, { id: 'meant', method: 'thin', done_at: null }, { faces });
  const before = await bowLifeOf(shop.owner, bowId);
  expect(before.lifetime).toEqual([]);
  expect(before.glassLeft.every(({ offSinceThou }) => offSinceThou === 0)).toBe(true);
  shop.clock.advance(hour);
  await removalOnRecord(shop, orderId, {
    id: 'said',
    method: 'noted',
    note: 'a stroke on both limbs',
  });
  const { lifetime, glassLeft, events } = await bowLifeOf(shop.owner, bowId);
  expect(lifetime[0]).toMatchObject({
    removals: 1,
    widths: [],
    faces: [],
    noted: [{ words: 'a stroke on both limbs' }],
  });
  expect(glassLeft[0]).toMatchObject({ leftThou: 45, notedSince: 1 });
  const removals = events.filter(({ kind }) => kind === 'removal');
  expect(removals.map(({ id, struckReason }) => [id, struckReason])).toEqual([
    ['said', null],
    ['struck', 'wrong bow'],
  ]);
  expect(removals[0]?.text).toBe('a stroke on both limbs');
});

test('glass left is the loupe figure minus what came off since; a newer figure starts anew', async () => {
  const kit = await planShop();
  const { shop, orderId, bowId } = kit;
  shop.clock.advance(hour);
  const thin = (id: string, measured: number | null) =>
    removalOnRecord(
      shop,
      orderId,
      { id, method: 'thin' },
      {
        faces: [
          { limb: 'lower', face: 'back', planned_thou: 3, done_thou: 2, measured_thou: measured },
        ],
      },
    );
  await thin('one', 2.5);
  const lowerBack = async () =>
    (await bowLifeOf(shop.owner, bowId)).glassLeft.find(
      ({ limb, face }) => limb === 'lower' && face === 'back',
    );
  expect(await lowerBack()).toMatchObject({ basis: 'measured', fromThou: 45, leftThou: 42.5 });
  shop.clock.advance(hour);
  const { back, belly } = knownBow.faces;
  await kit.changeBow({ faces: { back: { ...back, glassNowIn: 0.043 }, belly } });
  shop.clock.advance(hour);
  // Another change of the bow is no measurement of its glass.
  await kit.changeBow({ notes: 'the grip was wrapped' });
  await thin('two', null);
  expect(await lowerBack()).toMatchObject({ fromThou: 43, offSinceThou: 2, leftThou: 41 });
});

test('never measured: the glass it was made with minus everything; not known at all: no figure', async () => {
  const kit = await planShop();
  const { back, belly } = knownBow.faces;
  await kit.changeBow({
    faces: {
      back: { ...back, glassNowIn: null, glassHow: 'maker' },
      belly: { ...belly, glassNowIn: null, glassMadeIn: null, glassHow: 'not-measured' },
    },
  });
  const face = { limb: 'upper' as const, face: 'back' as const, planned_thou: 1.5 };
  await removalOnRecord(kit.shop, kit.orderId, { id: 'a', method: 'strip' }, { faces: [face] });
  const life = await bowLifeOf(kit.shop.owner, kit.bowId);
  expect(life.glassLeft.map(({ limb, face: of, leftThou }) => [limb, of, leftThou])).toEqual([
    ['upper', 'back', 48.5],
    ['lower', 'back', 50],
  ]);
  expect(life.lifetime[0]?.faces).toEqual([
    { limb: 'upper', face: 'back', thou: 1.5, isMeasured: false },
  ]);
  const { outputSchema } = contract.bows.life['~orpc'];
  if (!(outputSchema instanceof z.ZodType)) throw new Error('life has no output');
  expect(outputSchema.safeParse(life).error?.issues ?? []).toEqual([]);
});
