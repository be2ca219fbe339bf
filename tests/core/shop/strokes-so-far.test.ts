import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { strokeWords } from '../../../core/shop/bench/stroke-words.ts';
import {
  type SandingUnderWay,
  type StrokesSoFar,
  sandingInAll,
  sandingStillToCome,
  strokesSoFar,
} from '../../../core/shop/bench/strokes-so-far.ts';

const at = (hour: number) => new Date(Date.UTC(2026, 4, 4, hour)).toISOString();
const usual = { mean: 1.4, sd: 0.6 };
const figure = { mean: 0.01, sd: 0.003, jobs: 4 };

const grit = (hour: number, strokes: number | null = 60) =>
  (['upper-limb', 'lower-limb'] as const).map((section) => ({
    section,
    substrate: 'glass' as const,
    grit_json: '{"grit":80,"scale":"P"}',
    strokes,
    at: at(hour),
    struck_reason: null,
  }));

const underWay = (part: Partial<SandingUnderWay> = {}): SandingUnderWay => ({
  sandings: [...grit(9), ...grit(11)],
  construction: 'glass-laminated',
  since: at(8),
  weighedAt: null,
  isDone: false,
  now: at(17),
  ...part,
});

function so(part: Partial<SandingUnderWay> = {}): StrokesSoFar {
  const strokes = strokesSoFar(underWay(part), figure);
  if (strokes === null) throw new Error('nothing was counted');
  return strokes;
}

describe('what the strokes on record took', () => {
  test('by the figure of the closed jobs; without one they say nothing', () => {
    const { thou, weighedPart, jobs } = so();
    expect(thou.mean).toBeCloseTo(1.2, 12);
    expect(thou.sd).toBeCloseTo(0.36, 12);
    expect([weighedPart, jobs]).toEqual([0, 4]);
    expect(strokesSoFar(underWay(), null)).toBeNull();
    expect(
      strokesSoFar(underWay({ sandings: [...grit(9), ...grit(11, null)] }), figure),
    ).toBeNull();
  });

  test('a weighing between two grits has seen the first', () => {
    expect(so({ weighedAt: at(10) }).weighedPart).toBeCloseTo(0.5, 12);
    expect(so({ weighedAt: at(12) }).weighedPart).toBe(1);
    expect(so({ weighedAt: at(7) }).weighedPart).toBe(0);
  });
});

describe('beside the allowance of the plan', () => {
  test('under way the allowance holds, until the strokes have taken more', () => {
    expect(sandingInAll(usual, so())).toEqual(usual);
    const more = so({ sandings: [...grit(9, 100), ...grit(11, 100)] });
    expect(sandingInAll(usual, more)).toEqual(more.thou);
  });

  test('done, both count by how sure they are', () => {
    const { mean, sd } = sandingInAll(usual, so({ isDone: true }));
    const [a, b] = [1 / 0.6 ** 2, 1 / 0.36 ** 2];
    expect(mean).toBeCloseTo((1.4 * a + 1.2 * b) / (a + b), 12);
    expect(sd).toBeCloseTo(1 / Math.sqrt(a + b), 12);
    expect(sd).toBeLessThan(0.36);
  });

  test('what was weighed is not to come again', () => {
    const half = so({ weighedAt: at(10) });
    expect(sandingStillToCome(usual, half).mean).toBeCloseTo(1.4 - 0.6, 12);
    expect(sandingStillToCome(usual, so({ weighedAt: at(12), isDone: true })).mean).toBeCloseTo(
      0,
      12,
    );
    expect(sandingStillToCome(usual, so({ weighedAt: at(12) })).mean).toBeCloseTo(0.2, 12);
  });

  test('never less than nothing, never more than in all, the spread in proportion', () => {
    const spread = (most: number) =>
      fc.record({
        mean: fc.double({ min: 0.05, max: most, noNaN: true }),
        sd: fc.double({ min: 0.05, max: 1, noNaN: true }),
      });
    const strokes = fc.record({
      thou: spread(4),
      weighedPart: fc.double({ min: 0, max: 1, noNaN: true }),
      isDone: fc.boolean(),
      jobs: fc.constant(3),
    });
    fc.assert(
      fc.property(spread(3), strokes, (allowance, each) => {
        const inAll = sandingInAll(allowance, each);
        const left = sandingStillToCome(allowance, each);
        expect(left.mean).toBeGreaterThanOrEqual(0);
        expect(left.mean).toBeLessThanOrEqual(inAll.mean + 1e-12);
        expect(left.sd * inAll.mean).toBeCloseTo(left.mean * inAll.sd, 9);
      }),
    );
  });
});

test('said in one sentence, and what to do where it is too much', () => {
  const words = (strokes: StrokesSoFar | null) => strokeWords({ strokes, allowance: usual });
  expect(words(null)).toEqual([]);
  expect(words(so())).toEqual([
    'The strokes on record took about 1.2 ± 0.36 thou a face, by 4 closed jobs of this shop, of 1.4 planned.',
  ]);
  expect(words(so({ isDone: true }))[0]).toMatch(
    /with the 1\.4 planned, sanding counts as 1\.25\.$/,
  );
  expect(words(so({ sandings: [...grit(9, 100), ...grit(11, 100)] }))).toEqual([
    expect.stringMatching(/took about 2 ± 0\.6 thou a face.*: more than the 1\.4 planned\.$/),
    'Weigh it before another stroke.',
  ]);
});
