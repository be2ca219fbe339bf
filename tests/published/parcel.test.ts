import { describe, expect, test } from 'vitest';
import {
  assessParcel,
  type CarrierProfile,
  type Parcel,
  parcelSize,
} from '../../core/parcel/index.ts';

const box = (a: number, b: number, c: number): Parcel => ({
  shape: 'box',
  sidesIn: [a, b, c],
  weightLb: 1,
});
const exact = { rounding: 'none', tubes: 'round' } as const;

/** A profile with nothing but the rule under test. */
const plain: CarrierProfile = {
  name: 'under test',
  asOf: '2026-01-26',
  rounding: 'none',
  tubes: 'round',
  accepted: {},
  dimensional: { divisor: 139, overIn3: null },
  surcharges: [],
};

describe('length and girth', () => {
  test.each([
    // USPS, Quick Service Guide 201e (edition of 2016-06-06): length 10, girth 8+5+8+5.
    { parcel: box(10, 8, 5), girth: 26, sum: 36 },
    // Parcel size guides of the trade press: 30 x 10 x 10 and 12 x 8 x 5 (the sum of the second derived).
    { parcel: box(10, 30, 10), girth: 40, sum: 70 },
    { parcel: box(12, 8, 5), girth: 26, sum: 38 },
  ])('$parcel.sidesIn in: girth $girth, length plus girth $sum', ({ parcel, girth, sum }) => {
    const size = parcelSize(parcel, exact);
    expect(size.girthIn).toBe(girth);
    expect(size.lengthPlusGirthIn).toBe(sum);
  });

  test('a three-sided tube 20 in long with 6 in sides: girth 18, sum 38', () => {
    // USPS, Quick Service Guide 201e.
    const tube: Parcel = { shape: 'three-sided-tube', lengthIn: 20, sideIn: 6, weightLb: 1 };
    expect(parcelSize(tube, exact)).toMatchObject({ girthIn: 18, lengthPlusGirthIn: 38 });
  });

  test('a round tube 66 in long and 4 in across: round it 12.57, as a box 16', () => {
    // Derived from the two rules: girth round the tube (postal), extreme points (private carriers).
    const tube: Parcel = { shape: 'round-tube', lengthIn: 66, diameterIn: 4, weightLb: 1 };
    expect(parcelSize(tube, exact).girthIn).toBeCloseTo(12.566, 3);
    expect(parcelSize(tube, { rounding: 'none', tubes: 'as-box' })).toMatchObject({
      girthIn: 16,
      lengthPlusGirthIn: 82,
    });
  });
});

describe('dimensional weight', () => {
  test.each([
    // Parcel Industry, "Decoding Dimensional Weight": 990/139 = 7.12, billed 8 lb.
    { sides: [11, 10, 9], rounding: 'none', billed: 8 },
    // The same article before August 2025, sides as measured: 4.21, billed 5 lb.
    { sides: [11.1, 8.5, 6.2], rounding: 'none', billed: 5 },
    // From August 2025 every fraction of an inch goes up: 12 x 9 x 7 = 756, 5.44, billed 6 lb.
    { sides: [11.1, 8.5, 6.2], rounding: 'next-inch', billed: 6 },
    // The same rule in another worked example: 12 x 9 x 5 = 540, 3.88, billed 4 lb.
    { sides: [11.1, 8.1, 4.1], rounding: 'next-inch', billed: 4 },
  ] as const)(
    '$sides in, sides rounded $rounding, divisor 139: $billed lb',
    ({ sides, rounding, billed }) => {
      const parcel: Parcel = { shape: 'box', sidesIn: sides, weightLb: 1 };
      expect(assessParcel(parcel, { ...plain, rounding }).billableLb).toBe(billed);
    },
  );

  test('20 x 14 x 6 in is 1680 cubic inches and not over 1728: weight counts, volume does not', () => {
    // USPS Customer Support Ruling PS-340.
    const postal = { ...plain, dimensional: { divisor: 166, overIn3: 1728 } };
    expect(assessParcel(box(20, 14, 6), postal)).toMatchObject({
      volumeIn3: 1680,
      dimensionalLb: null,
    });
  });

  test.each([
    // Derived from the divisors 166 and 139, for boxes that bows go in.
    { sides: [72, 6, 6], divisor: 166, billed: 16 },
    { sides: [72, 6, 6], divisor: 139, billed: 19 },
    { sides: [74, 10, 6], divisor: 166, billed: 27 },
    { sides: [74, 10, 6], divisor: 139, billed: 32 },
    { sides: [66, 5, 5], divisor: 139, billed: 12 },
    { sides: [30, 24, 24], divisor: 139, billed: 125 },
  ] as const)('$sides in, divisor $divisor: $billed lb', ({ sides, divisor, billed }) => {
    const parcel: Parcel = { shape: 'box', sidesIn: sides, weightLb: 1 };
    const profile = { ...plain, dimensional: { divisor, overIn3: null } };
    expect(assessParcel(parcel, profile).billableLb).toBe(billed);
  });
});

describe('how a carrier rounds the sides', () => {
  test.each([
    // Derived from the three rules. Up to August 2025 private carriers went to the nearest inch,
    // halves up; since then every fraction goes up (Parcel Industry). The post has not changed.
    { rounding: 'none', side: 10.5, counted: 10.5 },
    { rounding: 'nearest-inch', side: 10.5, counted: 11 },
    { rounding: 'next-inch', side: 10.5, counted: 11 },
    { rounding: 'none', side: 10.4, counted: 10.4 },
    { rounding: 'nearest-inch', side: 10.4, counted: 10 },
    { rounding: 'next-inch', side: 10.4, counted: 11 },
    { rounding: 'next-inch', side: 10, counted: 10 },
  ] as const)('$rounding: $side in counts as $counted in', ({ rounding, side, counted }) => {
    const size = parcelSize(box(30, side, 5), { rounding, tubes: 'as-box' });
    expect(size.sidesIn).toEqual([30, counted, 5]);
    expect(size.volumeIn3).toBeCloseTo(30 * counted * 5, 9);
  });

  test('the printed "4.20 / 5.43 lb" is not a charge: whole pounds are billed', () => {
    // The same Parcel Industry article prints the quotients of its example as the charge; they are
    // 4.208 and 5.439, and carriers bill the next whole pound.
    const parcel: Parcel = { shape: 'box', sidesIn: [11.1, 8.5, 6.2], weightLb: 1 };
    const before = assessParcel(parcel, plain);
    const since = assessParcel(parcel, { ...plain, rounding: 'next-inch' });
    expect(before.volumeIn3 / 139).toBeCloseTo(4.208, 3);
    expect(since.volumeIn3 / 139).toBeCloseTo(5.439, 3);
    expect([before.billableLb, since.billableLb]).not.toEqual([4.2, 5.43]);
    expect([before.billableLb, since.billableLb]).toEqual([5, 6]);
  });
});

test.each([
  // Derived, for boxes that bows go in: girth, length plus girth and volume.
  { sides: [66, 5, 5], girth: 20, sum: 86, volume: 1650 },
  { sides: [72, 6, 6], girth: 24, sum: 96, volume: 2592 },
  { sides: [48, 6, 6], girth: 24, sum: 72, volume: 1728 },
  { sides: [74, 10, 6], girth: 32, sum: 106, volume: 4440 },
  { sides: [30, 24, 24], girth: 96, sum: 126, volume: 17_280 },
] as const)(
  '$sides in: girth $girth, sum $sum, $volume cubic in',
  ({ sides: [a, b, c], girth, sum, volume }) => {
    expect(parcelSize(box(a, b, c), exact)).toMatchObject({
      girthIn: girth,
      lengthPlusGirthIn: sum,
      volumeIn3: volume,
    });
  },
);

describe('limits are broken by going over them, not by reaching them', () => {
  const over = (limits: CarrierProfile['accepted'], parcel: Parcel) =>
    assessParcel(parcel, { ...plain, accepted: limits }).refusals.length > 0;
  const heavy = (weightLb: number): Parcel => ({ shape: 'box', sidesIn: [20, 5, 5], weightLb });

  test.each([
    // "Over 48 in", "over 17,280 cubic in", "over 96 in", "over 130 in": surcharges of private
    // carriers in 2026 (trade press; the last two also FedEx, "What is an oversize charge").
    { limits: { longestIn: 48 }, at: box(48, 6, 6), past: box(48.01, 6, 6) },
    { limits: { volumeIn3: 17_280 }, at: box(30, 24, 24), past: box(30, 24, 24.01) },
    { limits: { longestIn: 96 }, at: box(96, 4, 4), past: box(96.1, 4, 4) },
    { limits: { lengthPlusGirthIn: 130 }, at: box(98, 10, 6), past: box(98.1, 10, 6) },
    // UPS, "Shipping dimensions and weight": 150 lb, 108 in, 165 in length plus girth.
    { limits: { longestIn: 108 }, at: box(108, 4, 4), past: box(108.1, 4, 4) },
    { limits: { lengthPlusGirthIn: 165 }, at: box(105, 20, 10), past: box(105, 20, 10.1) },
    { limits: { weightLb: 150 }, at: heavy(150), past: heavy(150.1) },
    // USPS, Domestic Mail Manual 401.1.3: 70 lb.
    { limits: { weightLb: 70 }, at: heavy(70), past: heavy(70.1) },
  ])('$limits', ({ limits, at, past }) => {
    expect(over(limits, at)).toBe(false);
    expect(over(limits, past)).toBe(true);
  });

  test('exactly a cubic foot, 48 x 6 x 6 in, is not over it: its volume is not charged', () => {
    // Derived from USPS Customer Support Ruling PS-340: "over 1728 cubic in".
    const postal = { ...plain, dimensional: { divisor: 166, overIn3: 1728 } };
    expect(assessParcel(box(48, 6, 6), postal).dimensionalLb).toBeNull();
    expect(assessParcel(box(48.1, 6, 6), postal).dimensionalLb).toBe(11);
  });
});
