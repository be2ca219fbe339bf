import { expect, test } from 'vitest';
import { editBow } from '../../../core/shop/bows/bows.ts';
import {
  listGeometry,
  recordGeometry,
  strikeOutGeometry,
} from '../../../core/shop/bows/geometry.ts';
import { addLimbSet } from '../../../core/shop/bows/limb-sets.ts';
import { stationChange } from '../../../core/shop/bows/station-changes.ts';
import type { Station } from '../../../shared/contract/geometry.ts';
import { bowFields } from '../../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const at = (limb: 'upper' | 'lower', fromFadeIn: number, part: Partial<Station> = {}): Station => ({
  limb,
  fromFadeIn,
  widthIn: 1.25 - fromFadeIn / 50,
  thicknessIn: 0.4 - fromFadeIn / 100,
  surface: 'bare',
  ...part,
});
const both = (['upper', 'lower'] as const).flatMap((limb) => [2, 8, 14].map((d) => at(limb, d)));

async function job() {
  const shop = await testShop();
  const { id: orderId } = await takeIn(shop);
  const bowId = (await new Flow(shop, orderId).order()).bow?.id ?? '';
  const limbs = { upper: { fadeIn: 9, limbIn: 22.5 }, lower: { fadeIn: 9, limbIn: 22.5 } };
  const takeDown = 'bolted three-piece' as const;
  const change = { ...bowFields, limbs, takeDown };
  await editBow(shop.owner, { commandId: newCommandId(), id: bowId, rowVersion: 1, ...change });
  return { shop, orderId, bowId };
}

const measure = (
  { shop, bowId }: { shop: TestShop; bowId: string },
  stations: Station[],
  more: { orderId?: string; limbSetId?: string; note?: string } = {},
) =>
  recordGeometry(shop.owner, {
    commandId: newCommandId(),
    bowId,
    limbSetId: more.limbSetId ?? null,
    orderId: more.orderId ?? null,
    note: more.note ?? '',
    stations,
  });

test('each measuring is a new version, newest first, told with its order', async () => {
  const given = await job();
  expect(await measure(given, both)).toMatchObject({ version: 1 });
  expect(await measure(given, both, { orderId: given.orderId, note: 'after bites' })).toMatchObject(
    { version: 2 },
  );
  const versions = await listGeometry(given.shop.owner, given.bowId);
  expect(versions.map((one) => [one.version, one.comparedWith, one.note])).toEqual([
    [2, 1, 'after bites'],
    [1, null, ''],
  ]);
  expect(versions[0]?.orderNumber).toBe('26-0001');
  expect(versions[0]?.stations.map(({ limb, fromFadeIn }) => `${limb} ${fromFadeIn}`)).toEqual([
    'upper 2',
    'upper 8',
    'upper 14',
    'lower 2',
    'lower 8',
    'lower 14',
  ]);
  const { history } = await new Flow(given.shop, given.orderId).order();
  expect(history.map((line) => line.summary)).toContain('Limbs measured (version 2, 6 stations)');
});

test('a version is compared with the one before it of the same limbs that stands', async () => {
  const given = await job();
  await measure(given, both);
  const wrong = await measure(
    given,
    both.map((one) => ({ ...one, widthIn: one.widthIn + 0.5 })),
  );
  const limbSet = await addLimbSet(given.shop.owner, {
    commandId: newCommandId(),
    bowId: given.bowId,
    name: 'others',
    upperSerial: '',
    lowerSerial: '',
    amoLengthIn: null,
    markedWeightLbf: null,
    markedDrawIn: null,
    markedDrawReference: 'unknown',
    riserName: '',
    riserLengthIn: null,
    riserPadDeg: null,
    notes: '',
  });
  await measure(given, both, { limbSetId: limbSet.id });
  await strikeOutGeometry(given.shop.owner, {
    commandId: newCommandId(),
    id: wrong.id,
    rowVersion: wrong.rowVersion,
    reason: 'read off the wrong edge',
  });
  const narrower = both.map((one) => ({
    ...one,
    widthIn: one.widthIn - 3 / 64,
    thicknessIn: one.thicknessIn === null ? null : one.thicknessIn - 0.012,
  }));
  await measure(given, narrower);
  const [last, others, struck] = await listGeometry(given.shop.owner, given.bowId);
  expect(last?.comparedWith).toBe(1);
  expect(last?.stations.map((one) => one.changeText)).toEqual(
    both.map(() => '3/64" narrower, 12 thou thinner'),
  );
  expect(others).toMatchObject({ limbSetName: 'others', comparedWith: null });
  expect(struck?.struckReason).toBe('read off the wrong edge');
  await expect(
    strikeOutGeometry(given.shop.owner, {
      commandId: newCommandId(),
      id: wrong.id,
      rowVersion: 2,
      reason: 'once more',
    }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});

test.each<[string, Station[], string]>([
  ['of no limb', [], 'Measure at least 3 stations of a limb.'],
  ['two of one limb', [...both.slice(0, 5)], 'Lower limb: 2 of at least 3 stations measured.'],
  [
    'out of order',
    [at('upper', 2), at('upper', 14), at('upper', 8)],
    'Upper limb, station 8" from the fade: it comes after the one 14" from the fade.',
  ],
  [
    'twice',
    [at('upper', 2), at('upper', 8), at('upper', 8)],
    'Upper limb, station 8" from the fade: it is there twice.',
  ],
  [
    'past the limb',
    [at('lower', 2), at('lower', 8), at('lower', 22.625)],
    'Lower limb, station 22 5/8" from the fade: the limb is 22 1/2" long.',
  ],
  [
    'changed places',
    [at('upper', 2, { widthIn: 0.4, thicknessIn: 1.25 }), at('upper', 8), at('upper', 14)],
    'Upper limb, station 2" from the fade: it is much thicker than it is wide.',
  ],
])('stations %s are refused with limb and station named', async (_, stations, message) => {
  const given = await job();
  await expect(measure(given, stations)).rejects.toMatchObject({ code: 'BAD_INPUT', message });
  expect(await listGeometry(given.shop.owner, given.bowId)).toEqual([]);
});

test('one limb alone may be measured, to the very end, and another limb set past it', async () => {
  const given = await job();
  await measure(given, [at('upper', 0), at('upper', 8), at('upper', 22.5)]);
  const [version] = await listGeometry(given.shop.owner, given.bowId);
  expect(version?.stations).toHaveLength(3);
});

test('it is recorded on no order of another bow', async () => {
  const given = await job();
  const other = await takeIn(given.shop, {}, 'shop');
  await expect(measure(given, both, { orderId: other.id })).rejects.toMatchObject({
    code: 'CONFLICT',
    message: 'Order 26-0002 is about another bow.',
  });
});

test('a station is compared with the nearest one an eighth away at most, and over like surfaces', () => {
  const old = [at('upper', 2), at('upper', 8.125, { surface: 'over-finish' })];
  expect(stationChange(at('upper', 8), old).changeText).toContain('bare now, over finish before');
  expect(stationChange(at('upper', 8.3), old)).toEqual({
    widthChangeIn: null,
    thicknessChangeIn: null,
    changeText: '',
  });
  expect(stationChange(at('lower', 2), old).widthChangeIn).toBeNull();
  expect(stationChange(at('upper', 2), old).changeText).toBe('as before');
  expect(stationChange(at('upper', 2, { thicknessIn: null }), old).thicknessChangeIn).toBeNull();
});
