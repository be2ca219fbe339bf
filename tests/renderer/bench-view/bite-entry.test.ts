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
  const twice = withAmount(narrowed, 1 / 32, untouched);
  expect(twice.cuts.map(({ offLeftIn }) => offLeftIn)).toEqual([1 / 64, 1 / 32]);
});

it('cuts a limb that was to be left alone as the other one', () => {
  const cut = withAmount(untouched, 1 / 64, narrowed);
  expect(cut.limb).toBe('lower');
  expect(cut.cuts.map(({ offRightIn }) => offRightIn)).toEqual([1 / 128, 1 / 64]);
  expect(biteSaid(narrowed, cut)).toBe('Both limbs 1/64 in per side.');
  const scraped = { ...untouched, bellyThou: 2 };
  expect(withAmount({ ...untouched, limb: 'upper' }, 1, scraped)).toMatchObject({
    limb: 'upper',
    bellyThou: 1,
    backThou: 0,
  });
});

it('is read back limb by limb', () => {
  expect(biteSaid(narrowed, untouched)).toBe('Upper 1/64 in per side, lower nothing.');
  expect(biteSaid(narrowed, { ...narrowed, limb: 'lower' })).toBe('Both limbs 1/64 in per side.');
});
