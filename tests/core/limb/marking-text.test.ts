import { describe, expect, test } from 'vitest';
import { amoAtNock, nockAtAmo } from '../../../core/limb/draw-length.ts';
import {
  amoLengthFromMasterString,
  amoLengthText,
  type MarkingRounding,
  markingText,
  markingTextAt28,
  masterStringFor,
} from '../../../core/limb/marking-text.ts';
import { ShopError } from '../../../shared/errors.ts';

const amo = (weightLbf: number, drawIn: number, rounding?: MarkingRounding) =>
  ({ weightLbf, drawIn, reference: 'amo', ...(rounding && { rounding }) }) as const;

function refusal(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof ShopError && error.code === 'BAD_INPUT') return error.message;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

describe('AMO Standards, Field Publication FP-3, 2000', () => {
  test.each([
    [62, 59],
    [66, 63],
    [68, 65],
    [58, 55],
  ])('a bow of AMO %d in takes a master string of %d in', (bow, master) => {
    expect(amoLengthFromMasterString(master)).toBe(bow);
    expect(masterStringFor(bow)).toBe(master);
  });

  test('AMO 28 in is 26 1/4 in from the throat', () => {
    expect(amoAtNock(26.25)).toBe(28);
    expect(nockAtAmo(28)).toBe(26.25);
  });
});

describe('the weight as lettered', () => {
  test.each([
    [44.7, undefined, '45# @ 28"'],
    [44.4, 'nearest-pound', '44# @ 28"'],
    [44.5, 'nearest-pound', '45# @ 28"'],
    [44.7, 'nearest-half', '44.5# @ 28"'],
    [44.75, 'nearest-half', '45# @ 28"'],
    [44.7, 'as-measured', '44.7# @ 28"'],
    [44.96, 'as-measured', '45# @ 28"'],
    // A mean of 44.4, 44.5 and 44.6 as binary fractions keep it.
    [(44.4 + 44.5 + 44.6) / 3, 'nearest-pound', '45# @ 28"'],
    [44.4999999999, 'nearest-pound', '45# @ 28"'],
  ] as const)('%d lb, %s: %s', (weightLbf, rounding, text) => {
    expect(markingText(amo(weightLbf, 28, rounding))).toBe(text);
    expect(markingTextAt28(amo(weightLbf, 28, rounding))).toBe(text);
  });

  test.each([
    [28.5, '45# @ 28 1/2"'],
    [26.25, '45# @ 26 1/4"'],
    [27.0625, '45# @ 27 1/16"'],
    [27.98, '45# @ 27.98"'],
    [28.0001, '45# @ 28.0001"'],
  ])('a draw of %d in: %s', (drawIn, text) => {
    expect(markingText(amo(45, drawIn))).toBe(text);
  });

  test.each([28.5, 27.98, 28.0001, 27])('at %d in it is not the weight at 28 in', (drawIn) => {
    expect(refusal(() => markingTextAt28(amo(45, drawIn)))).toMatch(/is not the weight at 28"/);
  });

  test('a draw too fine to letter is refused, since it would read as 28 in', () => {
    expect(refusal(() => markingText(amo(45, 28.00001)))).toContain('cannot be lettered');
  });

  test.each([
    ['to-back', '45# @ 28" to the back may not be marked'],
    ['unknown', '45# @ 28" reference unknown may not be marked'],
  ] as const)('a weight measured %s is refused', (reference, sentence) => {
    const measured = { weightLbf: 45, drawIn: 28, reference };
    expect(refusal(() => markingText(measured))).toContain(sentence);
    expect(refusal(() => markingTextAt28(measured))).toContain(sentence);
  });

  test.each([0, -3, 0.4, Number.NaN, Number.POSITIVE_INFINITY])('a weight of %d lb', (weight) => {
    expect(refusal(() => markingText(amo(weight, 28)))).toContain('must be over 0 lb');
  });

  test.each([0, -28, Number.NaN, Number.POSITIVE_INFINITY])('a draw of %d in', (drawIn) => {
    expect(refusal(() => markingText(amo(45, drawIn)))).toContain('must be over 0 in');
  });
});

describe('the length as lettered', () => {
  test.each([
    [62, 'AMO 62"'],
    [60.5, 'AMO 60 1/2"'],
    [61.9999, 'AMO 61.9999"'],
  ])('%d in: %s', (lengthIn, text) => {
    expect(amoLengthText(lengthIn)).toBe(text);
  });

  test.each([0, -62, Number.NaN, Number.POSITIVE_INFINITY])('%d in is refused', (lengthIn) => {
    for (const ask of [amoLengthText, amoLengthFromMasterString, masterStringFor]) {
      expect(refusal(() => ask(lengthIn))).toContain('must be over 0 in');
    }
  });

  test('no master string is shorter than nothing', () => {
    expect(refusal(() => masterStringFor(3))).toContain('must be over 3 in');
  });
});
