import { describe, expect, test } from 'vitest';
import { fitForceDraw, ftLbfFromInLbf, weightsBeside28 } from '../../../core/limb/force-draw.ts';
import type { ForceReading } from '../../../core/limb/force-readings.ts';
import { ShopError } from '../../../shared/errors.ts';
import { seededRandom } from '../../support/random.ts';

const readings: ForceReading[] = [
  { drawIn: 16, forceLbf: 18.4 },
  { drawIn: 20, forceLbf: 26.5 },
  { drawIn: 24, forceLbf: 34.6 },
  { drawIn: 26, forceLbf: 39.2 },
  { drawIn: 28, forceLbf: 44.6 },
];
const braceIn = 7.25;

function refusal(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof ShopError && error.code === 'BAD_INPUT') return error.message;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

describe('three draws or more', () => {
  test('the curve passes through the readings and starts from 0 lb at brace', () => {
    const curve = fitForceDraw(readings, { braceIn });
    expect(curve.basis).toBe('monotone cubic');
    expect(curve.rangeIn).toEqual({ from: 9, to: 28 });
    expect(curve.weightAt(9).forceLbf).toBe(0);
    expect(curve.storedInLbf(9)).toBe(0);
    for (const { drawIn, forceLbf } of readings) {
      expect(curve.weightAt(drawIn).forceLbf).toBeCloseTo(forceLbf, 12);
      expect(curve.weightAt(drawIn).warning).toBeNull();
    }
  });

  test('repeats at one draw count by their mean, in any order', () => {
    const repeats = [44.2, 44.8, 44.8].map((forceLbf) => ({ drawIn: 28, forceLbf }));
    const curve = fitForceDraw([...repeats, ...readings.slice(0, 4).reverse()], { braceIn });
    expect(curve.readings.map(({ drawIn }) => drawIn)).toEqual([16, 20, 24, 26, 28]);
    for (const drawIn of [12, 19.5, 27, 28]) {
      const whole = fitForceDraw(readings, { braceIn }).weightAt(drawIn).forceLbf;
      expect(curve.weightAt(drawIn).forceLbf).toBeCloseTo(whole, 10);
    }
  });

  test('a bow that draws in a straight line: weight, slope and energy are exact', () => {
    const line = [12, 17, 20.5, 28].map((drawIn) => ({ drawIn, forceLbf: 2.5 * (drawIn - 9) }));
    const curve = fitForceDraw(line, { braceIn });
    for (const drawIn of [9, 10.3, 18, 25.0625, 28, 29]) {
      expect(curve.weightAt(drawIn).forceLbf).toBeCloseTo(2.5 * (drawIn - 9), 11);
      expect(curve.slopeAt(drawIn)).toBeCloseTo(2.5, 11);
      expect(curve.storedInLbf(drawIn)).toBeCloseTo(1.25 * (drawIn - 9) ** 2, 10);
    }
    expect(ftLbfFromInLbf(curve.storedInLbf(28))).toBeCloseTo((1.25 * 19 ** 2) / 12, 11);
  });

  test('500 sets of random rising readings: the weight never falls, the energy always grows', () => {
    for (let seed = 1; seed <= 500; seed += 1) {
      const random = seededRandom(seed);
      let [drawIn, forceLbf] = [10 + 2 * random(), 0];
      const given = Array.from({ length: 3 + Math.floor(random() * 10) }, () => {
        drawIn += 0.1 + random() ** 2 * 3;
        forceLbf += 0.05 + random() ** 4 * 15;
        return { drawIn, forceLbf };
      });
      const curve = fitForceDraw(given, random() < 0.5 ? { braceIn } : { braceIn: null });
      const { from, to } = curve.rangeIn;
      const draws = Array.from({ length: 300 }, (_, i) => from + ((to - from) * i) / 299);
      const weights = draws.map((x) => curve.weightAt(Math.min(x, to)).forceLbf);
      const steps = weights.slice(1).map((weight, i) => weight - (weights[i] ?? Number.NaN));
      expect(Math.min(...steps), `seed ${seed}`).toBeGreaterThan(-1e-11);
      expect(Math.max(...weights)).toBeLessThanOrEqual(forceLbf + 1e-11);
      const slopes = draws.map((x) => curve.slopeAt(Math.min(x, to)));
      expect(Math.min(...slopes), `seed ${seed}`).toBeGreaterThan(-1e-9);
      if (from !== 9) continue;
      const stored = draws.map((x) => curve.storedInLbf(Math.min(x, to)));
      const work = stored.slice(1).map((at, i) => at - (stored[i] ?? Number.NaN));
      expect(Math.min(...work), `seed ${seed}`).toBeGreaterThanOrEqual(0);
    }
  });

  test('a long stretch without a reading is warned of, there and nowhere else', () => {
    const curve = fitForceDraw(readings, { braceIn });
    expect(curve.warnings).toEqual([
      'No reading between 9 and 16 in: weights and stored energy there are rough.',
    ]);
    expect(curve.weightAt(12).warning).toBe(curve.warnings[0]);
    expect(curve.weightAt(27).warning).toBeNull();
    const closer = [{ drawIn: 12, forceLbf: 9 }, ...readings];
    expect(fitForceDraw(closer, { braceIn }).warnings).toEqual([]);
  });

  test('without brace there is a weight and a slope, but no stored energy', () => {
    const curve = fitForceDraw(readings);
    expect(curve.rangeIn).toEqual({ from: 16, to: 28 });
    expect(curve.slopeAt(27)).toBeGreaterThan(2);
    expect(refusal(() => curve.storedInLbf(28))).toContain('needs the brace height');
  });
});

describe('past the readings', () => {
  test('at most one inch, straight on, with a warning', () => {
    const curve = fitForceDraw(readings, { braceIn });
    const [end, slope] = [curve.weightAt(28).forceLbf, curve.slopeAt(28)];
    const answer = curve.weightAt(28.5);
    expect(answer.forceLbf).toBeCloseTo(end + slope / 2, 12);
    expect(answer.warning).toBe(
      '28.5 in is 0.5 in past the readings: carried on by the slope at the nearest reading.',
    );
    expect(curve.slopeAt(29)).toBe(slope);
    expect(curve.storedInLbf(29) - curve.storedInLbf(28)).toBeCloseTo(end + slope / 2, 10);
    expect(curve.weightAt(29).warning).toContain('1 in past');
  });

  test('not further, and not before brace', () => {
    const curve = fitForceDraw(readings, { braceIn });
    for (const ask of [curve.weightAt, curve.slopeAt, curve.storedInLbf]) {
      expect(refusal(() => ask(29.01))).toContain('more than 1 in past the readings');
      expect(refusal(() => ask(8.9))).toContain('before brace at 9 in');
      expect(refusal(() => ask(Number.NaN))).toContain('draw length in inches');
    }
    const loose = fitForceDraw(readings);
    expect(loose.weightAt(15).warning).toContain('past the readings');
    expect(refusal(() => loose.weightAt(14.9))).toContain('more than 1 in');
  });

  test('a weight carried down is never negative', () => {
    const steep = fitForceDraw([
      { drawIn: 10, forceLbf: 2 },
      { drawIn: 11, forceLbf: 7 },
      { drawIn: 12, forceLbf: 12 },
    ]);
    expect(steep.weightAt(9).forceLbf).toBe(0);
  });

  test('never past the maximum safe draw, whatever was measured', () => {
    const curve = fitForceDraw(readings, { braceIn, maxSafeDrawIn: 28.5 });
    expect(curve.weightAt(28.5).forceLbf).toBeGreaterThan(44.6);
    for (const ask of [curve.weightAt, curve.slopeAt, curve.storedInLbf]) {
      expect(refusal(() => ask(28.75))).toContain("past the bow's maximum safe draw of 28.5 in");
    }
    const overdrawn = fitForceDraw(readings, { braceIn, maxSafeDrawIn: 27 });
    expect(overdrawn.warnings).toContain(
      'The bow was drawn to 28 in, past its maximum safe draw of 27 in.',
    );
    expect(refusal(() => overdrawn.weightAt(28))).toContain('maximum safe draw of 27 in');
    expect(overdrawn.weightAt(27).forceLbf).toBeGreaterThan(39.2);
  });
});

describe('two readings', () => {
  const two = readings.slice(-2);

  test('a straight line, said so', () => {
    const curve = fitForceDraw(two, { braceIn });
    expect(curve.basis).toBe('straight line');
    expect(curve.rangeIn).toEqual({ from: 26, to: 28 });
    expect(curve.weightAt(27).forceLbf).toBeCloseTo((39.2 + 44.6) / 2, 12);
    expect(curve.slopeAt(26.5)).toBeCloseTo(2.7, 12);
    expect(curve.warnings[0]).toContain('straight line');
    expect(curve.weightAt(27).warning).toBe(curve.warnings[0]);
    expect(curve.weightAt(28).warning).toBeNull();
    expect(refusal(() => curve.storedInLbf(28))).toContain('weights at three draws');
  });

  test('three pulls at two draws are two readings', () => {
    expect(fitForceDraw([...two, { drawIn: 28, forceLbf: 44.4 }]).basis).toBe('straight line');
  });
});

describe('one reading', () => {
  const one = [{ drawIn: 28, forceLbf: 44 }];
  const modelledForceAt = (drawIn: number) => 2 * (drawIn - 9);

  test('without a model: that very draw and nothing else', () => {
    const curve = fitForceDraw(one, { braceIn });
    expect(curve.basis).toBe('one reading');
    expect(curve.weightAt(28)).toEqual({ drawIn: 28, forceLbf: 44, warning: null });
    expect(refusal(() => curve.weightAt(27.5))).toBe(
      'The bow was weighed at 28 in only: weigh it at 27.5 in too.',
    );
    expect(refusal(() => curve.slopeAt(28))).toContain('second draw');
    expect(refusal(() => curve.storedInLbf(28))).toContain('three draws');
    expect(curve.warnings[0]).toContain('One reading only, at 28 in');
  });

  test('with a model: its shape, brought to the reading, said so', () => {
    const curve = fitForceDraw(one, { braceIn, modelledForceAt });
    expect(curve.basis).toBe('model');
    expect(curve.weightAt(28)).toEqual({ drawIn: 28, forceLbf: 44, warning: null });
    const factor = 44 / 38;
    expect(curve.slopeAt(28)).toBeCloseTo(2 * factor, 10);
    expect(curve.weightAt(20).forceLbf).toBeCloseTo(22 * factor, 10);
    expect(curve.weightAt(20).warning).toBe(
      'One reading only, at 28 in: the slope is modelled, not measured.',
    );
    expect(curve.storedInLbf(28)).toBeCloseTo(19 ** 2 * factor, 8);
    expect(curve.weightAt(29).warning).toContain('carried on by the modelled slope');
    expect(curve.weightAt(29).forceLbf).toBeCloseTo(40 * factor, 10);
  });

  test('with a model and no brace: an inch to either side', () => {
    const curve = fitForceDraw(one, { modelledForceAt });
    expect(curve.rangeIn).toEqual({ from: 28, to: 28 });
    for (const drawIn of [27, 27.6, 28, 29]) {
      expect(curve.weightAt(drawIn).forceLbf).toBeCloseTo(modelledForceAt(drawIn) * (44 / 38), 10);
    }
    expect(curve.weightAt(27.5).warning).toContain('modelled slope');
    expect(refusal(() => curve.weightAt(26.9))).toContain('more than 1 in');
    expect(refusal(() => curve.storedInLbf(28))).toContain('brace height');
  });

  test.each([
    ['falls', (drawIn: number) => 60 - drawIn],
    ['is nothing', () => 0],
    ['is not a number', () => Number.NaN],
  ])('a model that %s is refused', (_, model) => {
    const act = () => fitForceDraw(one, { braceIn, modelledForceAt: model });
    expect(refusal(act)).toContain('The modelled weight does not rise at');
  });

  test('a model is not asked where readings suffice', () => {
    const model = () => Number.NaN;
    expect(fitForceDraw(readings, { modelledForceAt: model }).basis).toBe('monotone cubic');
  });
});

describe("the customer's own draw beside 28 in", () => {
  test('both are told where both are known', () => {
    const { at28, own } = weightsBeside28(fitForceDraw(readings, { braceIn }), 26);
    expect(at28).toMatchObject({ drawIn: 28, warning: null });
    expect(at28.forceLbf).toBeCloseTo(44.6, 12);
    expect(own.forceLbf).toBeCloseTo(39.2, 12);
  });

  test('where one is out of reach, its place says why', () => {
    const short = fitForceDraw(readings, { braceIn, maxSafeDrawIn: 27 });
    const { at28, own } = weightsBeside28(short, 26);
    expect(at28).toMatchObject({ forceLbf: null, why: expect.stringContaining('safe draw') });
    expect(own.forceLbf).toBeCloseTo(39.2, 12);
    const long = weightsBeside28(fitForceDraw(readings), 31);
    expect(long.own).toMatchObject({ drawIn: 31, forceLbf: null });
  });
});

describe('what cannot be is said by name', () => {
  test('a weight that falls while the draw rises, both readings named', () => {
    const fallen = [...readings, { drawIn: 27, forceLbf: 45.2 }];
    expect(refusal(() => fitForceDraw(fallen))).toBe(
      'The weight falls from 45.2# @ 27" to 44.6# @ 28": weigh again at both.',
    );
  });

  test('the mean of repeats may rise where single pulls cross', () => {
    const crossing = [...readings, { drawIn: 28, forceLbf: 39 }];
    expect(fitForceDraw(crossing).weightAt(28).forceLbf).toBeCloseTo(41.8, 10);
  });

  test.each<[string, ForceReading[], string]>([
    ['no readings', [], 'at one draw length at least'],
    ['no draw', [{ drawIn: 0, forceLbf: 40 }], 'between 0 and 60 in, not 0'],
    ['a draw past any bow', [{ drawIn: 280, forceLbf: 40 }], 'between 0 and 60 in, not 280'],
    ['a draw that is no number', [{ drawIn: Number.NaN, forceLbf: 40 }], 'not NaN'],
    ['no weight', [{ drawIn: 28, forceLbf: 0 }], 'The weight at 28 in must be over 0 lb.'],
    ['a weight without end', [{ drawIn: 28, forceLbf: Number.POSITIVE_INFINITY }], 'over 0 lb'],
    ['a draw at brace', [{ drawIn: 9, forceLbf: 1 }], 'A draw of 9 in is not past brace at 9 in.'],
  ])('%s', (_, given, sentence) => {
    expect(refusal(() => fitForceDraw(given, { braceIn }))).toContain(sentence);
  });

  test.each([
    [{ braceIn: 0 }, 'brace height'],
    [{ braceIn: Number.NaN }, 'brace height'],
    [{ maxSafeDrawIn: 0 }, 'maximum safe draw'],
    [{ maxSafeDrawIn: Number.NaN }, 'maximum safe draw'],
  ])('options %j', (options, sentence) => {
    expect(refusal(() => fitForceDraw(readings, options))).toContain(sentence);
  });
});
