import { describe, expect, test } from 'vitest';
import { bowAreaIn2, limbAreaIn2, riserAreaIn2 } from '../../../core/finish/bow-area.ts';
import { ShopError } from '../../../shared/errors.ts';

const limb = {
  lengthIn: 24,
  stations: [
    { fromFadeIn: 22, widthIn: 0.6, thicknessIn: 0.3 },
    { fromFadeIn: 2, widthIn: 1.4, thicknessIn: 0.5 },
    { fromFadeIn: 12, widthIn: 1.2, thicknessIn: 0.4 },
  ],
};

describe('area of a bow', () => {
  test('agrees with a reckoning by hand of both faces and both edges', () => {
    // Girths 3.8, 3.2 and 1.8 in: 2 x 3.8 to the first station, 10 x 3.5, 10 x 2.5, 2 x 1.8 to the tip.
    expect(limbAreaIn2(limb)).toBeCloseTo(7.6 + 35 + 25 + 3.6, 9);
  });

  test('takes the other thicknesses of the limb where one was not measured', () => {
    const stations = [
      { fromFadeIn: 0, widthIn: 1, thicknessIn: 0.4 },
      { fromFadeIn: 10, widthIn: 1, thicknessIn: null },
    ];
    expect(limbAreaIn2({ stations, lengthIn: null })).toBeCloseTo(28, 9);
    const none = stations.map((station) => ({ ...station, thicknessIn: null }));
    expect(limbAreaIn2({ stations: none, lengthIn: null })).toBeCloseTo(29, 9);
  });

  test('ends at the last station where the length is not known or shorter', () => {
    expect(limbAreaIn2({ ...limb, lengthIn: null })).toBeCloseTo(67.6, 9);
    expect(limbAreaIn2({ ...limb, lengthIn: 20 })).toBeCloseTo(67.6, 9);
  });

  test('adds the riser by its allowance, its length as measured or as usual', () => {
    expect(riserAreaIn2(18)).toBe(144);
    expect(riserAreaIn2(null)).toBe(160);
    const bow = { limbs: [limb, limb], riserLengthIn: 18, limbsOnly: false };
    expect(bowAreaIn2(bow)).toBeCloseTo(2 * 71.2 + 144, 9);
    expect(bowAreaIn2({ ...bow, limbsOnly: true })).toBeCloseTo(142.4, 9);
  });

  test('takes one limb for both where only one was measured', () => {
    const bow = { limbs: [limb], riserLengthIn: null, limbsOnly: true };
    expect(bowAreaIn2(bow)).toBeCloseTo(142.4, 9);
  });

  test('refuses a bow whose limbs nobody measured', () => {
    expect(() => bowAreaIn2({ limbs: [], riserLengthIn: 18, limbsOnly: false })).toThrow(ShopError);
  });
});
