import { describe, expect, test } from 'vitest';
import { type ShareProblem, shareOut } from '../../../../core/limb/plan/tiller-share.ts';

/** A bow that loses 5 % a unit, a little less with each, and moves 0.3 in a unit on one limb. */
function problem(change: Partial<ShareProblem> = {}): ShareProblem {
  return {
    atNone: { weightPart: 0.97, tillerMoveIn: 0 },
    most: { upper: 6, lower: 6 },
    trial: ({ upper, lower }) => ({
      weightPart: 0.97 * Math.exp(-0.05 * (upper + lower)),
      tillerMoveIn: 0.3 * (upper - lower) + 0.01 * (upper ** 2 - lower ** 2),
    }),
    ...change,
  };
}

const units = (weightPart: number) => Math.log(0.97 / weightPart) / 0.05;

test('no tiller to move: both limbs alike', () => {
  const share = shareOut(problem(), { weightPart: 0.85, tillerMoveIn: 0 });
  expect(share?.outcome).toBe('both');
  expect(share?.amounts.upper).toBeCloseTo(units(0.85) / 2, 4);
  expect(share?.amounts.lower).toBeCloseTo(units(0.85) / 2, 4);
});

test('weight and tiller are met together', () => {
  const share = shareOut(problem(), { weightPart: 0.85, tillerMoveIn: -0.125 });
  const { upper, lower } = share?.amounts ?? { upper: Number.NaN, lower: Number.NaN };
  expect(share?.outcome).toBe('both');
  expect(upper + lower).toBeCloseTo(units(0.85), 4);
  expect(0.3 * (upper - lower) + 0.01 * (upper ** 2 - lower ** 2)).toBeCloseTo(-0.125, 4);
});

describe('a tiller that asks for material back', () => {
  test.each([
    [0.6, 'upper', 'lower'],
    [-0.6, 'lower', 'upper'],
  ] as const)('move of %s in: only the %s limb is worked', (tillerMoveIn, worked, left) => {
    const share = shareOut(problem(), { weightPart: 0.93, tillerMoveIn });
    expect(share?.outcome).toBe('weight-only');
    expect(share?.amounts[left]).toBe(0);
    expect(share?.amounts[worked]).toBeCloseTo(units(0.93), 4);
  });
});

test('more than both limbs have is said, and never more is answered', () => {
  const short = problem({ most: { upper: 1, lower: 1 } });
  const share = shareOut(short, { weightPart: 0.8, tillerMoveIn: 0 });
  expect(share).toMatchObject({ outcome: 'out-of-material', amounts: { upper: 1, lower: 1 } });
});

test('the trial is never asked for less than nothing or more than there is', () => {
  const asked: number[] = [];
  const watched = problem();
  const { trial } = watched;
  for (const goal of [
    { weightPart: 0.96, tillerMoveIn: 0.5 },
    { weightPart: 0.5, tillerMoveIn: 0 },
  ]) {
    shareOut(
      {
        ...watched,
        trial: (amounts) => {
          asked.push(amounts.upper, amounts.lower);
          return trial(amounts);
        },
      },
      goal,
    );
  }
  expect(asked.length).toBeGreaterThan(8);
  expect(Math.min(...asked)).toBe(0);
  expect(Math.max(...asked)).toBeLessThanOrEqual(6);
});

test('a model without an answer gives none', () => {
  const mute = problem({ trial: () => null });
  expect(shareOut(mute, { weightPart: 0.9, tillerMoveIn: 0 })).toBeNull();
});
