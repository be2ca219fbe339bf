import { expect, test } from 'vitest';
import { startingProfiles } from '../../../core/parcel/index.ts';
import {
  addCarrier,
  addUsualCarriers,
  editCarrier,
  listCarriers,
} from '../../../core/shop/carriers/carriers.ts';
import type { CarrierProfile } from '../../../shared/parcel.ts';
import { carrierProfile } from '../../../shared/parcel.ts';
import { newCommandId, testShop } from '../../support/test-shop.ts';

const courier: CarrierProfile = {
  name: 'Valley courier',
  asOf: '2026-02-01',
  rounding: 'nearest-inch',
  tubes: 'as-box',
  accepted: { longestIn: 84, weightLb: 44 },
  dimensional: { divisor: 166, overIn3: null },
  surcharges: [{ name: 'Long goods', over: { longestIn: 60 }, minimumLb: 20 }],
};

test('a new shop starts with the generic profiles, each with days to claim', async () => {
  const shop = await testShop();
  const carriers = await listCarriers(shop.owner);
  expect(carriers.map((carrier) => carrier.profile)).toEqual(startingProfiles);
  expect(carriers.map((carrier) => carrier.claimDays)).toEqual([60, 60]);
  expect(carriers.every((carrier) => carrier.active)).toBe(true);
});

test('the profiles a shop starts with are within what Settings accepts', () => {
  for (const profile of startingProfiles) expect(carrierProfile.parse(profile)).toEqual(profile);
});

test('an older shop gets the usual profiles once, beside those it has', async () => {
  const shop = await testShop();
  await shop.core.shop().write.deleteFrom('carrier').execute();
  await addCarrier(shop.owner, { commandId: newCommandId(), profile: courier, claimDays: 30 });
  const add = () => addUsualCarriers(shop.owner, { commandId: newCommandId() });
  expect(await add()).toEqual({ added: 2 });
  expect(await add()).toEqual({ added: 0 });
  expect((await listCarriers(shop.owner)).map((carrier) => carrier.name)).toEqual([
    'Postal ground',
    'Private carrier A',
    'Valley courier',
  ]);
});

test('limits are changed as a whole; a carrier out of use is listed last', async () => {
  const shop = await testShop();
  const { id, rowVersion } = await addCarrier(shop.owner, {
    commandId: newCommandId(),
    profile: { ...courier, name: 'A courier' },
    claimDays: 30,
  });
  const looked = { ...courier, name: 'A courier', asOf: '2026-03-01', accepted: { longestIn: 96 } };
  await editCarrier(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion,
    profile: looked,
    claimDays: 14,
    active: false,
  });
  const carriers = await listCarriers(shop.owner);
  expect(carriers.at(-1)).toEqual({
    id,
    rowVersion: 2,
    name: 'A courier',
    asOf: '2026-03-01',
    profile: looked,
    claimDays: 14,
    active: false,
  });
});

test('two carriers of one name are refused, an older view is told so', async () => {
  const shop = await testShop();
  const [postal] = await listCarriers(shop.owner);
  if (postal === undefined) throw new Error('a carrier to change');
  const add = addCarrier(shop.owner, {
    commandId: newCommandId(),
    profile: { ...courier, name: postal.name },
    claimDays: 60,
  });
  await expect(add).rejects.toMatchObject({ code: 'CONFLICT' });
  const edit = editCarrier(shop.owner, {
    commandId: newCommandId(),
    id: postal.id,
    rowVersion: 7,
    profile: postal.profile,
    claimDays: 60,
    active: true,
  });
  await expect(edit).rejects.toMatchObject({ code: 'STALE' });
});

test.each([
  ['a surcharge without a limit', { surcharges: [{ name: 'Odd', over: {} }] }],
  ['a limit of nothing', { accepted: { longestIn: 0 } }],
  ['an unknown limit', { accepted: { widestIn: 40 } }],
  ['a divisor of one', { dimensional: { divisor: 1, overIn3: null } }],
  ['a day that does not exist', { asOf: '2026-02-30' }],
])('%s is no profile', (_what, change) => {
  expect(carrierProfile.safeParse({ ...courier, ...change }).success).toBe(false);
});
