import { expect, test } from 'vitest';
import { addBow, editBow, getBow } from '../../../core/shop/bows/bows.ts';
import { bowTroubles } from '../../../shared/bow-checks.ts';
import type { BowFields } from '../../../shared/contract/bows.ts';
import { bowFields } from '../../support/fixtures.ts';
import { newCommandId, testShop } from '../../support/test-shop.ts';

const wood: BowFields = {
  ...bowFields,
  construction: 'all-wood',
  takeDown: 'one-piece',
  faces: {
    back: { facing: 'bamboo', glassMadeIn: null, glassNowIn: null, glassHow: 'not-measured' },
    belly: { facing: 'wood', glassMadeIn: null, glassNowIn: null, glassHow: 'not-measured' },
  },
  moisturePct: 9.5,
};

const whole: BowFields = {
  ...bowFields,
  tipToTipIn: 64,
  profile: 'recurve',
  recurveDepthIn: 2.5,
  throatToFadeIn: -0.375,
  limbPadDeg: 12.5,
  limbs: { upper: { fadeIn: 9.5, limbIn: 23 }, lower: { fadeIn: 8.75, limbIn: 22.5 } },
  faces: {
    back: { facing: 'E-glass', glassMadeIn: 0.05, glassNowIn: 0.043, glassHow: 'loupe' },
    belly: { facing: 'clear over veneer', glassMadeIn: 0.04, glassNowIn: null, glassHow: 'maker' },
  },
  coreWood: 'red elm',
  edgeRadiusIn: 0.0625,
  lowStretchTips: 'no',
  braceLowIn: 7.25,
  braceHighIn: 7.75,
  listedSpecies: 'listed',
};

test.each([
  ['a whole bow', whole],
  ['an all-wood bow', wood],
])(
  '%s comes back with every field as it was given, and is changed as a whole',
  async (_, given) => {
    const shop = await testShop();
    const { id } = await addBow(shop.owner, {
      commandId: newCommandId(),
      customerId: null,
      ...bowFields,
    });
    await editBow(shop.owner, { commandId: newCommandId(), id, rowVersion: 1, ...given });
    const { bow, ownerName } = await getBow(shop.owner, id);
    expect(bow).toMatchObject(given);
    expect(ownerName).toBe('the shop');
  },
);

const face = (side: 'back' | 'belly', part: Partial<BowFields['faces']['back']>): BowFields => ({
  ...bowFields,
  faces: { ...bowFields.faces, [side]: { ...bowFields.faces[side], ...part } },
});

test.each<[string, string, BowFields]>([
  ['faces.belly.glassNowIn', 'thicker now', face('belly', { glassNowIn: 0.051 })],
  ['faces.back.glassHow', 'how the glass of the back', face('back', { glassHow: 'not-measured' })],
  [
    'faces.back.glassNowIn',
    'Give the thickness',
    face('back', { glassMadeIn: null, glassNowIn: null }),
  ],
  ['faces.back.glassNowIn', 'needs a facing of E-glass', face('back', { facing: 'carbon' })],
  ['faces.back.facing', 'all-wood', { ...bowFields, construction: 'all-wood' }],
  ['faces.back.facing', 'glass-laminated', { ...wood, construction: 'glass-laminated' }],
  ['braceHighIn', 'cannot be under the lowest', { ...bowFields, braceLowIn: 8, braceHighIn: 7 }],
  ['moisturePct', 'Moisture', { ...bowFields, moisturePct: 9 }],
  ['tipToTipIn', 'together', { ...whole, tipToTipIn: 66 }],
  ['recurveDepthIn', 'recurve profile', { ...whole, profile: 'straight' }],
  ['markedWeightLbf', 'needs the marked weight', { ...bowFields, markedWeightLbf: null }],
  ['maxSafeDrawIn', 'past the maximum safe draw', { ...bowFields, maxSafeDrawIn: 27 }],
])('%s: "%s" is refused where fields do not fit together', async (field, words, given) => {
  const shop = await testShop();
  const adding = addBow(shop.owner, { commandId: newCommandId(), customerId: null, ...given });
  await expect(adding).rejects.toMatchObject({
    code: 'BAD_INPUT',
    message: expect.stringContaining(words),
    details: { [field]: expect.stringContaining(words) },
  });
});

test('glass exactly as thick as it was made, and tips just at the end of the limbs, are taken', () => {
  expect(bowTroubles(face('back', { glassNowIn: 0.05 }))).toEqual([]);
  // Fades and limbs come to 63.75; the nocks may stand an inch inside each tip.
  expect(bowTroubles({ ...whole, tipToTipIn: 65.75 })).toEqual([]);
  expect(bowTroubles({ ...whole, tipToTipIn: 65.76 })).toHaveLength(1);
});
