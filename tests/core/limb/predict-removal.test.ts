import { describe, expect, test } from 'vitest';
import { sizesOf } from '../../../core/limb/limb-profile.ts';
import { modelledWeight } from '../../../core/limb/modelled-bow.ts';
import { type BowRemoval, bowAfter, predictRemoval } from '../../../core/limb/predict-removal.ts';
import { applyRemoval, nothingTaken } from '../../../core/limb/removal.ts';
import { longbow, taperedLimb } from '../../support/sample-limbs.ts';

const sure = { drawIn: 28, weightLbf: 47, weightSdLbf: 0, effectiveness: { mean: 1, sd: 0 } };

function both(removal: Partial<BowRemoval['upper']>): BowRemoval {
  const limb = { ...nothingTaken, ...removal };
  return { upper: limb, lower: limb };
}

/** Square edges: rounding does not scale with the width. */
const square = () => longbow({ edgeRadiusIn: 0 });

/** Ten parts in a hundred off every width of the sample limb. */
const tenth = both({
  cuts: Array.from({ length: 27 }, (_, s) => {
    const side = (0.05 * (1.25 - (0.75 * s) / 26)) as number;
    return { fromFadeIn: s, leftIn: side, rightIn: side };
  }),
});

test('a tenth off every width is a tenth off the weight', () => {
  const predicted = predictRemoval(square(), tenth, sure);
  if (predicted.status !== 'converged') throw new Error(predicted.why);
  expect(predicted.value.modelledDrop).toBeCloseTo(0.1, 6);
  expect(predicted.value.weightLbf).toBeCloseTo(42.3, 4);
  expect(predicted.value.bandLbf).toEqual([predicted.value.weightLbf, predicted.value.weightLbf]);
});

test('1 thou off both faces takes two to three parts in a hundred', () => {
  const predicted = predictRemoval(longbow(), both({ bellyThou: 1, backThou: 1 }), sure);
  if (predicted.status !== 'converged') throw new Error(predicted.why);
  expect(predicted.value.modelledDrop).toBeGreaterThan(0.02);
  expect(predicted.value.modelledDrop).toBeLessThan(0.028);
});

test('an all-wood limb scraped on its belly loses as the cube of its thickness', () => {
  const bow = longbow({
    glassIn: 0,
    edgeRadiusIn: 0,
    fadeThicknessIn: 0.5,
    tipThicknessIn: 0.5,
  });
  const predicted = predictRemoval(bow, both({ bellyThou: 10 }), sure);
  if (predicted.status !== 'converged') throw new Error(predicted.why);
  expect(1 - predicted.value.modelledDrop).toBeCloseTo(0.98 ** 3, 6);
});

test('the weight measured on the bow and what its removals did set the pounds', () => {
  const model = predictRemoval(longbow(), tenth, sure);
  const eager = predictRemoval(longbow(), tenth, {
    ...sure,
    weightLbf: 60,
    effectiveness: { mean: 1.2, sd: 0 },
  });
  if (model.status !== 'converged' || eager.status !== 'converged') throw new Error('no answer');
  expect(eager.value.modelledDrop).toBe(model.value.modelledDrop);
  expect(eager.value.dropLbf).toBeCloseTo(60 * 1.2 * model.value.modelledDrop, 12);
});

test('the band holds eight in ten bows of the spread it was told', () => {
  const options = { ...sure, weightSdLbf: 0.2, effectiveness: { mean: 1, sd: 0.12 } };
  const predicted = predictRemoval(longbow(), tenth, options);
  if (predicted.status !== 'converged') throw new Error(predicted.why);
  const { modelledDrop, bandLbf, sdLbf } = predicted.value;
  expect(sdLbf).toBeCloseTo(Math.hypot(0.2 * (1 - modelledDrop), 47 * modelledDrop * 0.12), 12);
  expect((bandLbf[1] - bandLbf[0]) / sdLbf).toBeCloseTo(2 * 1.2815516, 6);
});

test('what is taken off one limb only leaves the other as it was', () => {
  const bow = longbow();
  const after = bowAfter(bow, { upper: nothingTaken, lower: { ...nothingTaken, backThou: 2 } });
  expect(after.lower.profile.layup.backGlassIn).toBeCloseTo(0.038, 12);
  expect(after.upper.profile).toEqual(bow.upper.profile);
  const [one, two] = [modelledWeight(bow, 28), modelledWeight(after, 28)];
  if (one.status !== 'converged' || two.status !== 'converged') throw new Error('no answer');
  expect(two.value).toBeLessThan(one.value);
});

describe('a cut is smooth between its places and nothing past them', () => {
  const profile = taperedLimb();
  const cut = (fromFadeIn: number, sideIn: number) => ({
    fromFadeIn,
    leftIn: sideIn,
    rightIn: sideIn,
  });

  test('it blends in and out, on the faces that are named', () => {
    const removal = {
      ...nothingTaken,
      face: 'back' as const,
      cuts: [cut(2, 0), cut(8, 0.1), cut(20, 0)],
    };
    const after = applyRemoval(profile, removal);
    const at = (s: number) => after.stations.find((station) => station.fromFadeIn === s);
    const widthBefore = (s: number) => 1.25 - (0.75 * s) / 26;
    expect(at(8)?.backWidthIn).toBeCloseTo(widthBefore(8) - 0.2, 12);
    expect(at(8)?.bellyWidthIn).toBeCloseTo(widthBefore(8), 12);
    expect(at(2)?.backWidthIn).toBeCloseTo(widthBefore(2), 12);
    expect(at(24)?.backWidthIn).toBeCloseTo(widthBefore(24), 12);
    expect(at(4)?.backWidthIn).toBeLessThan(widthBefore(4));
  });

  test('between the places the new edge is the old one less the cut, and nothing where none is', () => {
    const cuts = [cut(2, 0), cut(3, 0.0625), cut(16, 0.0625), cut(25, 0)];
    const [was, is] = [profile, applyRemoval(profile, { ...nothingTaken, cuts })].map(sizesOf);
    const off = (s: number) => (was?.(s).backWidthIn ?? 0) - (is?.(s).backWidthIn ?? 0);
    for (let s = 0; s <= 2; s += 0.25) expect(off(s)).toBeCloseTo(0, 12);
    for (let s = 3; s <= 16; s += 0.25) expect(off(s)).toBeCloseTo(0.125, 12);
    expect(off(2.5)).toBeGreaterThan(0.03);
    expect(off(2.5)).toBeLessThan(0.095);
    expect(off(25.5)).toBeCloseTo(0, 12);
  });

  test.each([
    ['out of order', { cuts: [cut(8, 0.1), cut(8, 0)] }, /out of order: 8 in follows 8 in/],
    ['negative', { cuts: [cut(8, -0.1)] }, /width is not put back/],
    ['thickness put back', { backThou: -1 }, /thickness is not put back/],
    ['more glass than there is', { bellyThou: 40 }, /Nothing would be left of the belly glass/],
  ] as const)('%s', (_, removal, sentence) => {
    expect(() => applyRemoval(profile, { ...nothingTaken, ...removal })).toThrow(sentence);
  });

  test('more width than there is', () => {
    const bow = longbow();
    expect(() =>
      predictRemoval(bow, both({ cuts: [cut(0, 0), cut(20, 0.6), cut(26, 0)] }), sure),
    ).toThrow(/The width 12 in from the fade must be more than 0/);
  });
});
