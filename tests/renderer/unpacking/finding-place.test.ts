import { expect, test } from 'vitest';
import {
  type FindingPlace,
  noPlace,
  placeErrors,
  placeLine,
} from '../../../renderer/screens/orders/findings/finding-place.ts';
import { requiredLine } from '../../../shared/fields.ts';

const upper: FindingPlace = { part: 'upper limb', face: 'back', fromFadeIn: 9, more: '' };

test.each<[FindingPlace, string]>([
  [upper, 'upper limb, back, 9 in from the fade'],
  [{ ...upper, fromFadeIn: 9.25 }, 'upper limb, back, 9 1/4 in from the fade'],
  [{ ...upper, fromFadeIn: 9.3 }, 'upper limb, back, 9.3 in from the fade'],
  [
    { ...upper, fromFadeIn: null, more: ' at the tip overlay ' },
    'upper limb, back, at the tip overlay',
  ],
  [{ ...upper, fromFadeIn: Number.NaN }, 'upper limb, back'],
  [{ ...upper, part: 'riser', face: 'side' }, 'riser, side'],
  [{ ...noPlace, part: 'take-down joint' }, 'take-down joint'],
  [{ ...noPlace, more: 'string groove, lower tip' }, 'string groove, lower tip'],
  [noPlace, ''],
])('%j reads as one plain line', (place, line) => {
  expect(placeLine(place)).toBe(line);
});

test('a place needs a part or words, and a distance that a limb has', () => {
  expect(placeErrors(noPlace)).toEqual({ words: 'Say where on the bow.' });
  expect(placeErrors({ ...noPlace, face: 'back' })).toHaveProperty('words');
  expect(placeErrors(upper)).toEqual({});
  expect(placeErrors({ ...noPlace, more: 'tip' })).toEqual({});
  for (const fromFadeIn of [-1, 41, Number.NaN]) {
    expect(placeErrors({ ...upper, fromFadeIn })).toEqual({ fromFadeIn: 'Between 0 and 40 in.' });
  }
  // A distance typed for a limb does not stand in the way once the place is elsewhere.
  expect(placeErrors({ ...upper, part: 'riser', fromFadeIn: 99 })).toEqual({});
});

test('the longest place that can be typed is one the contract takes', () => {
  const longest = placeLine({
    part: 'take-down joint',
    face: 'belly',
    fromFadeIn: null,
    more: 'x'.repeat(120),
  });
  expect(requiredLine(200).safeParse(longest).success).toBe(true);
});
