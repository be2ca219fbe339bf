import { expect, test } from 'vitest';
import { braceTiller } from '../../../core/limb/brace-tiller.ts';
import type { HalfBow } from '../../../core/limb/curve.ts';
import { type MeasuredBow, wholeBowOf } from '../../../core/limb/modelled-bow.ts';
import { applyRemoval, nothingTaken } from '../../../core/limb/removal.ts';
import { longbow } from '../../support/sample-limbs.ts';

function tiller(bow: MeasuredBow) {
  const solved = braceTiller(wholeBowOf(bow), bow.braceIn);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value;
}

const weaker = (bow: MeasuredBow, which: 'upper' | 'lower'): MeasuredBow => {
  const removal = { ...nothingTaken, bellyThou: 1, backThou: 1 };
  const limb = bow[which];
  return { ...bow, [which]: { ...limb, profile: applyRemoval(limb.profile, removal) } };
};

test('two equal limbs have no tiller, and stand from the string as they are bent', () => {
  const { tillerIn, upper, lower } = tiller(longbow());
  expect(tillerIn).toBe(0);
  expect(upper).toEqual(lower);
  // Throat offset of half an inch: brace height and the offset at the fade.
  expect(upper[0]).toMatchObject({ fromFadeIn: 0, distanceIn: 7.5 });
  expect(upper.at(-1)?.distanceIn).toBeCloseTo(0, 8);
  expect(upper.map((place) => place.fromFadeIn)).toEqual([0, 4, 8, 12, 16, 20, 24, 26]);
});

test('the weaker limb stands farther from the string, and turned over the sign turns', () => {
  // Positive tiller is the mark of a weaker upper limb (common practice).
  const { tillerIn, upper, lower } = tiller(weaker(longbow(), 'upper'));
  expect(tillerIn).toBeGreaterThan(0.05);
  expect(upper[3]?.distanceIn ?? 0).toBeGreaterThan(lower[3]?.distanceIn ?? 0);
  const turned = tiller(weaker(longbow(), 'lower'));
  expect(turned.tillerIn).toBeCloseTo(-tillerIn, 8);
});

test('scaling both limbs changes the tension and neither string nor tiller', () => {
  const bow = wholeBowOf(weaker(longbow(), 'lower'));
  const scaled = (half: HalfBow): HalfBow => ({
    ...half,
    limb: { ...half.limb, eiAt: (s) => 0.8 * half.limb.eiAt(s) },
  });
  const before = braceTiller(bow, 7);
  const after = braceTiller({ upper: scaled(bow.upper), lower: scaled(bow.lower) }, 7);
  if (before.status !== 'converged' || after.status !== 'converged') throw new Error('no answer');
  expect(after.value.tillerIn).toBeCloseTo(before.value.tillerIn, 8);
  expect(after.value.stringIn).toBeCloseTo(before.value.stringIn, 8);
  expect(after.value.tensionLbf / before.value.tensionLbf).toBeCloseTo(0.8, 8);
});

test('where the string lies on a recurve the list ends there', () => {
  const bow = longbow({ unstrung: { reflexIn: 0, recurveIn: 3.2, recurveFromIn: 16 } });
  const { upper } = tiller(bow);
  expect(upper.at(-1)?.fromFadeIn).toBeLessThan(26);
});
