import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assessParcel, type Parcel, startingProfiles } from '../../../core/parcel/index.ts';

const [postal, carrierA] = startingProfiles;
if (postal === undefined || carrierA === undefined) throw new Error('two profiles to start from');

const box = (a: number, b: number, c: number, weightLb = 5): Parcel => ({
  shape: 'box',
  sidesIn: [a, b, c],
  weightLb,
});

describe('exactly at a limit is still inside it', () => {
  test('48 in long is not over 48; the next sixteenth is', () => {
    expect(assessParcel(box(48, 6, 6), carrierA).surcharges).toEqual([]);
    expect(assessParcel(box(48.0625, 6, 6), carrierA).surcharges).toEqual(['Additional handling']);
  });

  test('1728 cubic inches is not over a cubic foot', () => {
    expect(assessParcel(box(48, 6, 6), postal).dimensionalLb).toBeNull();
    expect(assessParcel(box(48, 6, 6.01), postal).dimensionalLb).toBe(11);
  });

  test('17,280 cubic inches is not a large package', () => {
    expect(assessParcel(box(30, 24, 24), carrierA).surcharges).not.toContain('Large package');
    expect(assessParcel(box(30, 24, 25), carrierA).surcharges).toContain('Large package');
  });

  test('108 and 130 in length plus girth, 70 lb', () => {
    expect(assessParcel(box(76, 10, 6), postal).surcharges).not.toContain(
      'Oversized: over 108 in length plus girth',
    );
    expect(assessParcel(box(76.1, 10, 6), postal).surcharges).toContain(
      'Oversized: over 108 in length plus girth',
    );
    expect(assessParcel(box(98, 10, 6, 70), postal).refusals).toEqual([]);
    expect(assessParcel(box(98.5, 10, 6, 70.5), postal).refusals).toEqual([
      'Length plus girth is 130.5 in, over 130 in.',
      'The weight is 70.5 lb, over 70 lb.',
    ]);
  });
});

test('decimal sides that multiply to a limit are not over it by rounding noise', () => {
  // 69.5 x 5 x 4.4 is 1529 and 11 x 139 in decimals, and a hair more in floating point.
  expect(69.5 * 5 * 4.4).toBeGreaterThan(1529);
  const exact = {
    ...postal,
    accepted: { volumeIn3: 1529 },
    dimensional: { divisor: 139, overIn3: null },
  };
  expect(assessParcel(box(69.5, 5, 4.4), exact)).toMatchObject({
    refusals: [],
    dimensionalLb: 11,
  });
  const almost = { ...exact, dimensional: { divisor: 166, overIn3: 1529 } };
  expect(assessParcel(box(69.5, 5, 4.4), almost).dimensionalLb).toBeNull();
});

test('a large package is charged as 90 lb at least', () => {
  expect(assessParcel(box(97, 4, 4, 6), carrierA).billableLb).toBe(90);
});

test('the order in which the sides were measured does not matter, and more is never charged less', () => {
  const side = fc.double({ min: 0.5, max: 120, noNaN: true });
  const weight = fc.double({ min: 0.1, max: 160, noNaN: true });
  fc.assert(
    fc.property(side, side, side, weight, (a, b, c, weightLb) => {
      for (const profile of startingProfiles) {
        const one = assessParcel(box(a, b, c, weightLb), profile);
        expect(assessParcel(box(c, a, b, weightLb), profile)).toEqual(one);
        const larger = assessParcel(box(a + 1, b, c, weightLb + 1), profile);
        expect(larger.billableLb).toBeGreaterThanOrEqual(one.billableLb);
        expect(Number.isInteger(one.billableLb)).toBe(true);
      }
    }),
    { seed: 20_261_125, numRuns: 300 },
  );
});

test.each([
  [box(0, 5, 5), 'Every side'],
  [box(66, Number.NaN, 5), 'Every side'],
  [box(66, 5, 5, -1), 'weigh more than 0'],
  [
    {
      shape: 'round-tube',
      lengthIn: 60,
      diameterIn: Number.POSITIVE_INFINITY,
      weightLb: 3,
    } as Parcel,
    'Every side',
  ],
])('an impossible parcel is refused in words', (parcel, words) => {
  expect(() => assessParcel(parcel, postal)).toThrow(words);
});
