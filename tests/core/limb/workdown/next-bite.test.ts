import { describe, expect, test } from 'vitest';
import { braceTiller } from '../../../../core/limb/brace-tiller.ts';
import {
  type MeasuredBow,
  modelledWeight,
  wholeBowOf,
} from '../../../../core/limb/modelled-bow.ts';
import { bowAfter } from '../../../../core/limb/predict-removal.ts';
import { nothingTaken } from '../../../../core/limb/removal.ts';
import { type Bite, nextBite } from '../../../../core/limb/workdown/next-bite.ts';
import { type BiteMethod, limbBite } from '../../../../core/limb/workdown/next-bite-candidate.ts';
import { normalChanceUnder } from '../../../../core/limb/workdown/next-bite-chance.ts';
import type { NextBiteOptions } from '../../../../core/limb/workdown/next-bite-forecast.ts';
import {
  bowResponse,
  weightAndTiller,
  withWidths,
} from '../../../../core/limb/workdown/next-bite-response.ts';
import { sandingThatFits } from '../../../../core/limb/workdown/next-bite-sanding.ts';
import { remeasured } from '../../../../core/limb/workdown/remeasured.ts';
import {
  recordWeighing,
  startWorkdown,
  type WorkdownState,
} from '../../../../core/limb/workdown/workdown.ts';
import { normal } from '../../../../demo-data/simulated/normal.ts';
import { seededRandom } from '../../../support/random.ts';
import { longbow } from '../../../support/sample-limbs.ts';

const placesIn = [2, 6, 10, 14, 18, 22, 26];
/** Full cut from 6 to 14 in, blending out to the fade and to the tip. */
const parts = [0, 1, 1, 1, 0.75, 0.5, 0.25];
const narrow: BiteMethod = { kind: 'narrow', parts: { upper: parts, lower: parts } };

function responseOf(bow: MeasuredBow) {
  const solved = bowResponse(bow, { drawIn: 28, placesIn: { upper: placesIn, lower: placesIn } });
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value;
}

const evenBow = longbow();
const response = responseOf(evenBow);

function stateAt(weightLbf: number, wishes: Partial<WorkdownState> = {}): WorkdownState {
  const effectiveness = { mean: 1, sd: 0.12 };
  const scaleSdLbf = 0.15;
  return {
    ...startWorkdown({ weightLbf, weightSdLbf: 0.2, effectiveness, scaleSdLbf }),
    ...wishes,
  };
}

const asked: NextBiteOptions = {
  response,
  state: stateAt(50),
  targetLbf: 42,
  bitesTaken: 0,
  method: narrow,
  sandingThou: { mean: 1.4, sd: 0.6 },
  tiller: { nowIn: 0.125, targetIn: 0.125 },
};

function biteFor(wishes: Partial<NextBiteOptions> = {}): Bite {
  const next = nextBite({ ...asked, ...wishes });
  if (next.stop !== null) throw new Error(`stopped: ${next.stop}`);
  return next;
}

/** What sanding takes off 50 lb, lbf. */
const sandingLbf = 50 - nextBiteEnd();
function nextBiteEnd(): number {
  const next = nextBite({ ...asked, targetLbf: 60 });
  return next.forecast.endLbf;
}

describe('how much', () => {
  test('the first bite takes at most four tenths of what is left, later ones six', () => {
    const targetLbf = 38;
    const leftLbf = 50 - targetLbf - sandingLbf - 0.5;
    const [first, later] = [biteFor({ targetLbf }), biteFor({ targetLbf, bitesTaken: 1 })];
    expect(first.modelledDrop * 50).toBeLessThanOrEqual(0.4 * leftLbf);
    expect(first.modelledDrop * 50).toBeGreaterThan(0.2 * leftLbf);
    expect(later.modelledDrop * 50).toBeLessThanOrEqual(0.6 * leftLbf);
    expect(later.modelledDrop).toBeGreaterThan(first.modelledDrop);
    expect(later.forecast.chanceUnder).toBeLessThanOrEqual(0.01);
  });

  test('cuts are whole sixty-fourths a side, rounded down, and thinning whole thousandths', () => {
    const { upper, lower } = biteFor({ bitesTaken: 1 });
    for (const { removal, steps } of [upper, lower]) {
      for (const [i, cut] of removal.cuts.entries()) {
        expect(cut.leftIn).toBe(cut.rightIn);
        expect(cut.leftIn * 64).toBe(Math.floor(steps * (parts[i] ?? 0)));
      }
    }
    const thin = biteFor({ method: { kind: 'thin both faces' } });
    expect(thin.upper.removal.cuts).toEqual([]);
    expect(Number.isInteger(thin.upper.removal.bellyThou)).toBe(true);
    expect(thin.upper.removal.backThou).toBe(thin.upper.removal.bellyThou);
    const scrape = biteFor({ method: { kind: 'belly scrape' } });
    expect(scrape.lower.removal.backThou).toBe(0);
    const strokes = biteFor({ method: { kind: 'sanding strokes' }, sandingThou: null });
    expect(Number.isInteger(strokes.lower.removal.bellyThou * 4)).toBe(true);
  });

  /** Many such bites, each in a world drawn from what the state believes. */
  test('the chance of ending under the target is as told', () => {
    const random = seededRandom(3);
    const bite = biteFor({
      targetLbf: 44,
      rules: { laterPart: 1, reserveLbf: 0 },
      bitesTaken: 1,
      method: { kind: 'sanding strokes' },
    });
    const perThou = response.upper.perThouBothFaces.drop + response.lower.perThouBothFaces.drop;
    let under = 0;
    const worlds = 200_000;
    for (let i = 0; i < worlds; i += 1) {
      const effectiveness = 1 + 0.12 * normal(random);
      const weight = 50 + 0.25 * normal(random);
      const sanding = perThou * (1.4 + 0.6 * normal(random));
      const miss = (bite.missSdLbf / 50) * normal(random);
      const end =
        weight * (1 - effectiveness * (bite.modelledDrop + miss)) * (1 - effectiveness * sanding);
      if (end < 44) under += 1;
    }
    expect(bite.forecast.chanceUnder).toBeGreaterThan(0.001);
    expect(under / worlds).toBeCloseTo(bite.forecast.chanceUnder, 2);
    expect(under / worlds).toBeLessThan(0.013);
  });

  test('a bow unsure of its weight gets a smaller bite', () => {
    const wishes = { targetLbf: 40, bitesTaken: 1, rules: { laterPart: 1 } };
    const unsure = biteFor({ ...wishes, state: stateAt(50, { weightVarLbf2: 4 }) });
    const sure = biteFor(wishes);
    expect(unsure.modelledDrop).toBeLessThan(sure.modelledDrop);
  });

  test('the band holds eight in ten and widens with what is not known', () => {
    const { forecast } = biteFor();
    expect((forecast.bandLbf[1] - forecast.bandLbf[0]) / forecast.sdLbf).toBeCloseTo(2.563, 3);
    expect(forecast.weightLbf).toBeCloseTo(50 * (1 - biteFor().modelledDrop), 12);
    expect(forecast.sdLbf).toBeGreaterThan(0.25);
  });
});

describe('the linear response', () => {
  test.each([
    ['narrowing', narrow],
    ['thinning', { kind: 'thin both faces' }],
  ] as const)('%s: a bite of it agrees with two full solves', (_, method) => {
    const bite = biteFor({ method, bitesTaken: 1, tiller: { nowIn: 0.2, targetIn: 0.125 } });
    const after = bowAfter(evenBow, bite.removal);
    const [full, left] = [modelledWeight(evenBow, 28), modelledWeight(after, 28)];
    const braced = braceTiller(wholeBowOf(after), 7);
    if (full.status !== 'converged' || left.status !== 'converged') throw new Error('no answer');
    if (braced.status !== 'converged') throw new Error(braced.why);
    // A twentieth of a bite: half of what the shop's own cutting misses by.
    expect(bite.modelledDrop / (1 - left.value / full.value)).toBeGreaterThan(0.95);
    expect(bite.modelledDrop / (1 - left.value / full.value)).toBeLessThan(1.05);
    expect(bite.forecast.tillerIn - 0.2).toBeCloseTo(braced.value.tillerIn, 2);
  });

  test('weight and tiller of one solve are those of the bow and of its brace', () => {
    const lower = { ...evenBow.lower, fadeIn: 7.5, fadeOffsetIn: -0.25 };
    const bow = bowAfter(
      { ...evenBow, lower },
      { upper: { ...nothingTaken, backThou: 3 }, lower: nothingTaken },
    );
    const one = weightAndTiller(bow, 28, 60);
    const [weight, braced] = [modelledWeight(bow, 28), braceTiller(wholeBowOf(bow), 7)];
    if (weight.status !== 'converged' || braced.status !== 'converged')
      throw new Error('no answer');
    expect(one.value?.lbf).toBeCloseTo(weight.value, 9);
    expect(one.value?.tillerIn).toBeCloseTo(braced.value.tillerIn, 9);
  });

  test('with narrower widths an inch takes more', () => {
    const widthsIn = { upper: placesIn.map(() => 0.5), lower: placesIn.map(() => 0.5) };
    const narrower = withWidths(response, widthsIn).upper.stations[2];
    const before = response.upper.stations[2];
    expect((narrower?.perIn.drop ?? 0) * 0.5).toBeCloseTo(
      (before?.perIn.drop ?? 0) * (before?.widthIn ?? 0),
      12,
    );
  });
});

describe('what a cut did, from the widths measured after it', () => {
  const cuts = placesIn.map((fromFadeIn, i) => {
    const sideIn = (parts[i] ?? 0) / 32;
    return { fromFadeIn, leftIn: sideIn, rightIn: sideIn };
  });
  const widths = response.upper.stations.map(({ widthIn }) => widthIn);
  const after = widths.map((widthIn, i) => {
    const cut = cuts[i];
    return cut === undefined || cut.leftIn === 0 ? null : widthIn - 2 * cut.leftIn;
  });
  const taken = remeasured(response, { upper: after, lower: placesIn.map(() => null) });

  test('agrees with two full solves, and knows the widths from then on', () => {
    const upper = { ...nothingTaken, cuts };
    const bow = bowAfter(evenBow, { upper, lower: nothingTaken });
    const [full, left] = [modelledWeight(evenBow, 28), modelledWeight(bow, 28)];
    if (full.status !== 'converged' || left.status !== 'converged') throw new Error('no answer');
    expect(taken.modelledDrop / (1 - left.value / full.value)).toBeGreaterThan(0.97);
    expect(taken.modelledDrop / (1 - left.value / full.value)).toBeLessThan(1.03);
    expect(taken.places).toHaveLength(6);
    const now = taken.response.upper.stations.map(({ widthIn }) => widthIn);
    expect(now).toEqual(widths.map((widthIn, i) => after[i] ?? widthIn));
    expect(taken.response.lower.stations[3]?.widthIn).toBe(response.lower.stations[3]?.widthIn);
  });

  test('a width that has grown is measured again', () => {
    const grown = widths.map((widthIn, i) => (i === 2 ? widthIn + 0.05 : null));
    const none = placesIn.map(() => null);
    expect(() => remeasured(response, { upper: grown, lower: none })).toThrow(
      /Measure the width 10.0 in from the fade again/,
    );
    const read = widths.map((widthIn, i) => (i === 2 ? widthIn + 0.004 : null));
    expect(remeasured(response, { upper: read, lower: none }).modelledDrop).toBe(0);
  });
});

describe('how it is shared', () => {
  test('the stronger limb gives more and tiller moves to its target', () => {
    const weakUpper = biteFor({ tiller: { nowIn: 0.28, targetIn: 0.125 } });
    expect(weakUpper.lower.steps).toBeGreaterThan(weakUpper.upper.steps);
    expect(weakUpper.forecast.tillerIn).toBeLessThan(0.28);
    const weakLower = biteFor({ tiller: { nowIn: -0.03, targetIn: 0.125 } });
    expect(weakLower.upper.steps).toBeGreaterThan(weakLower.lower.steps);
    expect(weakLower.forecast.tillerIn).toBeGreaterThan(-0.03);
  });

  test('a bow in tiller stays within half of its tolerance', () => {
    for (const targetLbf of [36, 38, 40, 42]) {
      const { forecast } = biteFor({ targetLbf });
      expect(Math.abs(forecast.tillerIn - 0.125)).toBeLessThanOrEqual(1 / 32);
    }
  });

  test('a tip that tracks to the left is cut more on the left, no narrower in total', () => {
    const straight = biteFor({ bitesTaken: 1 });
    const tracked = biteFor({ bitesTaken: 1, tracking: { upper: 'left', lower: null } });
    const [a, b] = [straight.upper.removal.cuts[2], tracked.upper.removal.cuts[2]];
    if (a === undefined || b === undefined) throw new Error('no cut');
    expect(b.leftIn - b.rightIn).toBe(2 / 64);
    expect(b.leftIn + b.rightIn).toBe(a.leftIn + a.rightIn);
    expect(tracked.lower.removal).toEqual(straight.lower.removal);
    expect(tracked.modelledDrop).toBeCloseTo(straight.modelledDrop, 12);
  });
});

describe('parts of a step', () => {
  test('what is rounded off now comes with a later bite', () => {
    const stepped = (stepsDone: { upper: number; lower: number }) => {
      const method: BiteMethod = {
        kind: 'narrow',
        parts: { upper: parts, lower: parts },
        stepsDone,
      };
      return limbBite(response, method, 'upper', 1, { upper: null, lower: null }).removal.cuts;
    };
    const inSteps = [0, 1, 2, 3].map((upper) =>
      stepped({ upper, lower: 0 }).map((cut) => cut.leftIn * 64),
    );
    // Quarters of a step at the tip make one whole step by the fourth bite.
    expect(inSteps.map((cuts) => cuts.at(-1))).toEqual([0, 0, 0, 1]);
    expect(inSteps.map((cuts) => cuts.at(4))).toEqual([0, 1, 1, 1]);
    expect(inSteps.map((cuts) => cuts.at(1))).toEqual([1, 1, 1, 1]);
  });
});

describe('tiller alone', () => {
  test('spends fewer pounds than weight and tiller together', () => {
    const tiller = { nowIn: 0.28, targetIn: 0.125 };
    const alone = biteFor({ tiller, wanted: 'tiller', targetLbf: 38, bitesTaken: 1 });
    const together = biteFor({ tiller, targetLbf: 38, bitesTaken: 1 });
    expect(alone.upper.steps).toBe(0);
    expect(alone.modelledDrop).toBeLessThan(together.modelledDrop);
    expect(alone.forecast.tillerIn).toBeLessThan(0.28);
  });

  test('a bow in tiller gets no such bite', () => {
    const tiller = { nowIn: 0.125, targetIn: 0.125 };
    expect(nextBite({ ...asked, tiller, wanted: 'tiller', targetLbf: 38 }).stop).toBe('sand only');
  });
});

describe('when to stop', () => {
  test('too unsure for the smallest step: weigh again, as long as that would help', () => {
    const strokes = { ...asked, method: { kind: 'sanding strokes' }, sandingThou: null } as const;
    const unsure = { ...strokes, state: stateAt(42.5, { weightVarLbf2: 0.25 }) };
    expect(nextBite(unsure).stop).toBe('at target');
    expect(nextBite({ ...unsure, weighingSdLbf: 0.2 }).stop).toBe('weigh again');
    expect(nextBite({ ...unsure, weighingSdLbf: 2 }).stop).toBe('at target');
    const known = recordWeighing(unsure.state, { weightLbf: 42.5, sdLbf: 0.2 }).state;
    expect(nextBite({ ...unsure, state: known, weighingSdLbf: 0.2 }).stop).toBeNull();
  });

  test('less left than a step: sand only', () => {
    const next = nextBite({ ...asked, targetLbf: 50 - sandingLbf - 0.5 - 0.2, bitesTaken: 2 });
    expect(next.stop).toBe('sand only');
    expect(next.forecast.weightLbf).toBe(50);
  });

  test('one step is allowed where it is more than the part but leaves the end above', () => {
    const sure = stateAt(50, { weightVarLbf2: 0.001, effectivenessVar: 0.0001, scaleSdLbf: 0 });
    const next = nextBite({
      ...asked,
      state: sure,
      sandingThou: { mean: 1.4, sd: 0.05 },
      targetLbf: 50 - sandingLbf - 0.5 - 0.8,
      bitesTaken: 2,
      tiller: { nowIn: 0.2, targetIn: 0.125 },
      method: { kind: 'thin both faces' },
    });
    if (next.stop !== null) throw new Error(next.stop);
    expect([next.upper.steps, next.lower.steps].sort()).toEqual([0, 1]);
    expect(next.forecast.endLbf).toBeGreaterThan(50 - sandingLbf - 1.3 + 0.5);
  });

  test('nothing to come and within the tolerance: at target', () => {
    const state = stateAt(42.1);
    const next = nextBite({
      ...asked,
      method: { kind: 'sanding strokes' },
      state,
      sandingThou: null,
    });
    expect(next.stop).toBe('at target');
  });

  test('strokes go on while there is more than that left', () => {
    const state = stateAt(43.2, { weightVarLbf2: 0.01 });
    const next = nextBite({
      ...asked,
      method: { kind: 'sanding strokes' },
      state,
      sandingThou: null,
    });
    if (next.stop !== null) throw new Error(next.stop);
    expect(next.forecast.weightLbf).toBeGreaterThan(42);
    expect(next.forecast.chanceUnder).toBeLessThanOrEqual(0.01);
  });

  test('an undershoot says by how much, sanding included', () => {
    const before = nextBite({ ...asked, targetLbf: 50 - sandingLbf + 0.7 });
    if (before.stop !== 'undershot') throw new Error('not undershot');
    expect(before.byLbf).toBeCloseTo(0.7, 9);
    const after = nextBite({ ...asked, state: stateAt(41), sandingThou: null });
    if (after.stop !== 'undershot') throw new Error('not undershot');
    expect(after.byLbf).toBeCloseTo(1, 9);
    expect(nextBite({ ...asked, state: stateAt(41.6), sandingThou: null }).stop).toBe('at target');
  });

  test('a limit turns the next best bite up, and is named where none is left', () => {
    const free = biteFor({ targetLbf: 36 });
    const dear = biteFor({
      targetLbf: 36,
      refusedBecause: ({ upper }) =>
        upper.cuts.some((cut) => cut.leftIn >= free.upper.steps / 64) ? 'Too narrow.' : null,
    });
    expect(dear.upper.steps).toBeLessThan(free.upper.steps);
    const next = nextBite({ ...asked, refusedBecause: () => 'The tip is too narrow.' });
    if (next.stop !== 'limit') throw new Error('no limit');
    expect(next.why).toBe('The tip is too narrow.');
  });
});

describe('the sanding that fits', () => {
  const question = {
    response,
    weightLbf: 50,
    targetLbf: 47,
    tiller: { nowIn: 0.125, targetIn: 0.125 },
  };

  test('a full strip leaves what the forecast says, and fits where that is the reserve', () => {
    const { sanding, leftLbf, tillerLbf } = sandingThatFits(question);
    expect(leftLbf).toBeCloseTo(3 - sandingLbf, 9);
    expect(tillerLbf).toBe(0);
    expect(sanding).toBe('full strip');
    const small = sandingThatFits({ ...question, targetLbf: 48 });
    expect(small.leftLbf).toBeLessThan(0.5);
    expect(small.sanding).toBe('final sanding only');
  });

  test('tiller takes its pounds first, off either limb alike on an even bow', () => {
    const [high, low] = [0.25, 0].map((nowIn) =>
      sandingThatFits({ ...question, tiller: { nowIn, targetIn: 0.125 } }),
    );
    expect(high?.sanding).toBe('final sanding only');
    expect(high?.tillerLbf).toBeCloseTo(low?.tillerLbf ?? 0, 1);
    expect(high?.tillerLbf).toBeGreaterThan(0.5);
  });

  test('no target is refused', () => {
    expect(() => sandingThatFits({ ...question, targetLbf: 0 })).toThrow(/more than 0 lb/);
  });
});

describe('odd input is named', () => {
  test.each([
    ['no target', { targetLbf: 0 }, /target must be more than 0/],
    ['half a bite', { bitesTaken: 0.5 }, /Count the bites/],
    ['sanding put back', { sandingThou: { mean: -1, sd: 0 } }, /cannot be negative/],
    ['no tiller', { tiller: { nowIn: Number.NaN, targetIn: 0 } }, /Give the tiller/],
  ])('%s', (_, odd, sentence) => {
    expect(() => nextBite({ ...asked, ...odd })).toThrow(sentence);
  });

  test('one place is no limb', () => {
    const odd = { drawIn: 28, placesIn: { upper: [4], lower: placesIn } };
    expect(() => bowResponse(evenBow, odd)).toThrow(/two places at least to cut the upper limb/);
  });
});

/** Table values: M. Abramowitz, I. A. Stegun, "Handbook of Mathematical Functions", table 26.1. */
test.each([
  [0, 0.5],
  [1, 0.841_344_746],
  [-2.326_347_9, 0.01],
  [-3, 0.001_349_898],
])('chance under %d standard deviations', (z, chance) => {
  expect(Math.abs(normalChanceUnder(z) - chance)).toBeLessThan(7.5e-8);
});

test('nothing taken changes nothing', () => {
  const same = bowAfter(evenBow, { upper: nothingTaken, lower: nothingTaken });
  expect(responseOf(same)).toEqual(response);
});
