import { describe, expect, test } from 'vitest';
import { remeasuredSdIn, removalSdLbf, weighingSd } from '../../../../core/limb/workdown/spread.ts';
import {
  measuredBareEffectiveness,
  recordRemoval,
  recordWeighing,
  startWorkdown,
  unknownEffectiveness,
  weightSdLbf,
} from '../../../../core/limb/workdown/workdown.ts';
import { normal } from '../../../../demo-data/simulated/normal.ts';
import { seededRandom } from '../../../support/random.ts';

const start = { weightLbf: 50, weightSdLbf: 1, effectiveness: { mean: 1, sd: 0.2 } };

/*
 * By hand. After a modelled drop of a tenth: w = 50 (1 - 0.1) = 45. With the slopes 0.9 of weight
 * and -50 x 0.1 = -5 lb of effectiveness, its variance is 0.9^2 x 1 + 5^2 x 0.04 = 1.81 and the
 * covariance -5 x 0.04 = -0.2. A reading of 44 +- 0.3 then misses by -1 where the spread of the
 * difference is 1.81 + 0.09 = 1.9; the gains are 1.81/1.9 and -0.2/1.9.
 */
test('one removal and one weighing, worked by hand', () => {
  const cut = recordRemoval(startWorkdown(start), 0.1);
  expect(cut.weightLbf).toBeCloseTo(45, 12);
  expect(cut.weightVarLbf2).toBeCloseTo(1.81, 12);
  expect(cut.covarianceLbf).toBeCloseTo(-0.2, 12);
  const { state, innovation } = recordWeighing(cut, { weightLbf: 44, sdLbf: 0.3 });
  expect(innovation).toBeCloseTo(-1 / Math.sqrt(1.9), 12);
  expect(state.weightLbf).toBeCloseTo(45 - 1.81 / 1.9, 12);
  expect(state.effectiveness).toBeCloseTo(1 + 0.2 / 1.9, 12);
  expect(state.weightVarLbf2).toBeCloseTo((1.81 * 0.09) / 1.9, 12);
  expect(state.covarianceLbf).toBeCloseTo((-0.2 * 0.09) / 1.9, 12);
  expect(state.effectivenessVar).toBeCloseTo(0.04 - 0.2 ** 2 / 1.9, 12);
});

test('what a removal leaves unknown widens the weight and nothing else', () => {
  const cut = recordRemoval(startWorkdown(start), 0.1, 0.4);
  expect(cut.weightVarLbf2).toBeCloseTo(1.81 + 0.16, 12);
  expect(cut.effectivenessVar).toBeCloseTo(0.04, 12);
});

test('a bow that gives less than the model shows it in its effectiveness', () => {
  let state = startWorkdown({ ...start, effectiveness: unknownEffectiveness });
  let truth = 50;
  for (let i = 0; i < 8; i += 1) {
    truth *= 1 - 0.7 * 0.03;
    state = recordWeighing(recordRemoval(state, 0.03), { weightLbf: truth, sdLbf: 0.1 }).state;
  }
  expect(state.effectiveness).toBeCloseTo(0.7, 1);
  expect(Math.sqrt(state.effectivenessVar)).toBeLessThan(measuredBareEffectiveness.sd);
});

test('repeats do not weigh away what the scale itself is off by', () => {
  let state = startWorkdown({ ...start, scaleSdLbf: 0.15 });
  for (let i = 0; i < 400; i += 1) {
    state = recordWeighing(state, { weightLbf: 50, sdLbf: 0.2 }).state;
  }
  expect(Math.sqrt(state.weightVarLbf2)).toBeCloseTo(0.01, 3);
  expect(weightSdLbf(state)).toBeCloseTo(Math.hypot(0.15, 0.01), 3);
});

/**
 * Jobs of five bites in a world that is as the filter believes it. Were the innovations standard
 * normal, the mean square of 10,000 of them would be 1 +- sqrt(2 / 10,000) = 0.014; four such
 * deviations are allowed.
 */
test('innovations are as large as they say, over 10,000 weighings', () => {
  const random = seededRandom(11);
  let [sum, sumSquares, count] = [0, 0, 0];
  for (let job = 0; job < 2000; job += 1) {
    const effectiveness = 1 + 0.12 * normal(random);
    let truth = 40 + 30 * random();
    let state = startWorkdown({
      weightLbf: truth + 0.3 * normal(random),
      weightSdLbf: 0.3,
      effectiveness: measuredBareEffectiveness,
    });
    for (let bite = 0; bite < 5; bite += 1) {
      const drop = 0.005 + 0.03 * random();
      truth = truth * (1 - effectiveness * drop) + 0.1 * normal(random);
      state = recordRemoval(state, drop, 0.1);
      const weighed = recordWeighing(state, {
        weightLbf: truth + 0.2 * normal(random),
        sdLbf: 0.2,
      });
      state = weighed.state;
      sum += weighed.innovation;
      sumSquares += weighed.innovation ** 2;
      count += 1;
    }
  }
  expect(count).toBe(10_000);
  expect(Math.abs(sum / count)).toBeLessThan(0.04);
  expect(Math.abs(sumSquares / count - 1)).toBeLessThan(0.057);
});

test('no variance is ever negative, however odd the numbers', () => {
  const random = seededRandom(5);
  for (let job = 0; job < 300; job += 1) {
    let state = startWorkdown({
      weightLbf: 50,
      weightSdLbf: 10 ** (4 * random() - 3),
      effectiveness: { mean: 1, sd: 10 ** (3 * random() - 4) },
    });
    for (let i = 0; i < 30; i += 1) {
      const cut = recordRemoval(state, 0.02 * random());
      state = recordWeighing(cut, {
        weightLbf: cut.weightLbf * (1 + 1e-4 * normal(random)),
        sdLbf: 10 ** (8 * random() - 7),
      }).state;
      expect(state.weightVarLbf2).toBeGreaterThanOrEqual(0);
      expect(state.effectivenessVar).toBeGreaterThanOrEqual(0);
      // Schwarz: the covariance is no larger than the two deviations; rounding is allowed for.
      const most = Math.sqrt(state.weightVarLbf2 * state.effectivenessVar);
      expect(Math.abs(state.covarianceLbf)).toBeLessThanOrEqual(most + 1e-9);
    }
  }
});

describe('odd input is named', () => {
  const state = startWorkdown(start);
  test.each([
    ['no weight', () => startWorkdown({ ...start, weightLbf: 0 }), /must be more than 0 lb/],
    ['negative spread', () => startWorkdown({ ...start, weightSdLbf: -1 }), /cannot be negative/],
    [
      'no effectiveness',
      () => startWorkdown({ ...start, effectiveness: { mean: 0, sd: 1 } }),
      /must be more than 0/,
    ],
    ['a drop put back', () => recordRemoval(state, -0.1), /between nothing and all/],
    ['a drop of all', () => recordRemoval(state, 1), /between nothing and all/],
    [
      'a spread of nothing',
      () => recordWeighing(state, { weightLbf: 50, sdLbf: 0 }),
      /never exact/,
    ],
    ['no reading', () => recordWeighing(state, { weightLbf: Number.NaN, sdLbf: 1 }), /more than 0/],
  ])('%s', (_, odd, sentence) => {
    expect(odd).toThrow(sentence);
  });
});

describe('the spread of a weighing', () => {
  const sources = {
    resolutionLbf: 0.1,
    checkSdLbf: 0.15,
    perPullSdLbf: 0.15,
    pulls: 3,
    slopeLbfPerIn: 2.6,
    braceLbfPerIn: -0.4,
  };

  test('is the root sum of squares of named parts', () => {
    const spread = weighingSd(sources);
    expect(spread.resolutionLbf).toBeCloseTo(0.1 / Math.sqrt(12), 12);
    expect(spread.repeatLbf).toBeCloseTo(0.15 / Math.sqrt(3), 12);
    expect(spread.drawLbf).toBeCloseTo(0.1625, 12);
    expect(spread.braceLbf).toBeCloseTo(0.025, 12);
    expect(spread.totalLbf ** 2 - spread.sessionLbf ** 2).toBeCloseTo(0.15 ** 2, 12);
  });

  test('1/8 in of draw at 2.6 lb/in is a third of a pound', () => {
    expect(weighingSd({ ...sources, drawSdIn: 1 / 8 }).drawLbf).toBeCloseTo(0.325, 12);
  });

  test('no pull and negative parts are refused', () => {
    expect(() => weighingSd({ ...sources, pulls: 0 })).toThrow(/one pull at least/);
    expect(() => weighingSd({ ...sources, checkSdLbf: -1 })).toThrow(/can be negative/);
  });
});

test('a removal is as unsure as its places together, each measured twice', () => {
  const places = [
    { dropPerIn: 0.3, sdIn: remeasuredSdIn(0.005) },
    { dropPerIn: 0.4, sdIn: remeasuredSdIn(0.005) },
  ];
  expect(removalSdLbf(45, places)).toBeCloseTo(45 * 0.5 * 0.005 * Math.SQRT2, 12);
  expect(() => removalSdLbf(45, [{ dropPerIn: 1, sdIn: -1 }])).toThrow(/cannot be negative/);
});
