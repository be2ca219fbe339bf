import { expect, it } from 'vitest';
import { amountOf, biteSaid, withAmount } from '../../../renderer/screens/bench-view/bite-entry.ts';
import type { LimbWork } from '../../../renderer/screens/bench-view/cut-words.ts';

const narrowed: LimbWork = {
  limb: 'upper',
  cuts: [
    { fromFadeIn: 2, widthNowIn: 1.2, offLeftIn: 1 / 128, offRightIn: 1 / 128 },
    { fromFadeIn: 8, widthNowIn: 1, offLeftIn: 1 / 64, offRightIn: 1 / 64 },
  ],
  bellyThou: 0,
  backThou: 0,
};
const untouched: LimbWork = { limb: 'lower', cuts: [], bellyThou: 0, backThou: 0 };

it('is told by the full cut per side, or by thousandths a face', () => {
  expect(amountOf(narrowed)).toEqual({ unit: 'inches', value: 1 / 64 });
  expect(amountOf({ ...untouched, bellyThou: 1, backThou: 1 })).toEqual({ unit: 'thou', value: 1 });
});

it('keeps the shape of the cut when its amount changes', () => {
  const twice = withAmount(narrowed, 1 / 32);
  expect(twice.cuts.map(({ offLeftIn }) => offLeftIn)).toEqual([1 / 64, 1 / 32]);
  expect(withAmount(untouched, 1).bellyThou).toBe(0);
});

it('is read back limb by limb', () => {
  expect(biteSaid(narrowed, untouched)).toBe('Upper 1/64 in per side, lower nothing.');
  expect(biteSaid(narrowed, { ...narrowed, limb: 'lower' })).toBe('Both limbs 1/64 in per side.');
});
