import { expect, test } from 'vitest';
import { limitsNear, type Parcel, startingProfiles } from '../../../core/parcel/index.ts';

const [postal, carrierA] = startingProfiles;
if (postal === undefined || carrierA === undefined) throw new Error('two profiles to start from');

const box = (a: number, b: number, c: number, weightLb = 5): Parcel => ({
  shape: 'box',
  sidesIn: [a, b, c],
  weightLb,
});

test('a parcel far from every limit hears nothing', () => {
  expect(limitsNear(box(20, 8, 4), postal)).toEqual([]);
  expect(limitsNear(box(20, 8, 4), carrierA)).toEqual([]);
});

test('just inside is said, exactly at is said, over is not near', () => {
  expect(limitsNear(box(47, 6, 4), carrierA)).toEqual([
    'The longest side, 47 in, is just inside 48 in (Additional handling).',
  ]);
  expect(limitsNear(box(48, 6, 4), carrierA)).toEqual([
    'The longest side, 48 in, is exactly at 48 in (Additional handling).',
  ]);
  expect(limitsNear(box(49, 6, 4), carrierA)).toEqual([]);
});

test('sides are rounded as the carrier rounds them before anything is near', () => {
  // 47.2 in counts as 48 in.
  expect(limitsNear(box(47.2, 6, 4), carrierA)).toEqual([
    'The longest side, 48 in, is exactly at 48 in (Additional handling).',
  ]);
});

test("the carrier's own limit is told apart from a surcharge", () => {
  expect(limitsNear(box(97, 10, 6, 69), postal)).toEqual([
    'Length plus girth, 129 in, is just inside 130 in (limit of the carrier).',
    'The weight, 69 lb, is just inside 70 lb (limit of the carrier).',
  ]);
});

test('decimal sides that multiply to a limit are at it, not past it', () => {
  // 69.5 x 5 x 4.4 is 1529 in decimals and a hair more in floating point.
  const exact = { ...postal, accepted: { volumeIn3: 1529 }, surcharges: [] };
  expect(limitsNear(box(69.5, 5, 4.4), exact)).toEqual([
    'The volume, 1529 cubic in, is exactly at 1529 cubic in (limit of the carrier).',
  ]);
});

test('an impossible parcel is refused in words', () => {
  expect(() => limitsNear(box(0, 5, 5), postal)).toThrow('Every side');
});
