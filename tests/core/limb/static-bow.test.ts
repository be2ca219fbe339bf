import { describe, expect, test } from 'vitest';
import type { WholeBow } from '../../../core/limb/bow.ts';
import type { HalfBow } from '../../../core/limb/curve.ts';
import { type StaticBow, solveStaticBow } from '../../../core/limb/static-bow.ts';
import { seededRandom } from '../../support/random.ts';
import { profiles, randomBow } from '../../support/random-bow.ts';

const draws = Array.from({ length: 9 }, (_, i) => 12 + 2 * i);
const bows = Array.from({ length: 500 }, (_, seed) => {
  const profile = profiles[seed % profiles.length] ?? 'straight';
  return { seed, ...randomBow(seededRandom(seed + 1), profile) };
});

function solve(
  bow: WholeBow,
  braceIn: number,
  drawsIn: readonly number[],
  segments = 60,
): StaticBow {
  const solved = solveStaticBow(bow, { braceIn, drawsIn, segments });
  if (solved.status !== 'converged') throw new Error(solved.why);
  expect(solved.residual).toBeLessThan(1e-8);
  return solved.value;
}

/** As it is, at two draws: what two of the checks compare with, solved once. */
const asItIs = new Map<WholeBow, StaticBow>();
function atTwoDraws(bow: WholeBow, braceIn: number): StaticBow {
  const solved = asItIs.get(bow) ?? solve(bow, braceIn, [20, 28]);
  asItIs.set(bow, solved);
  return solved;
}

const scaled = (half: HalfBow, factor: number): HalfBow => ({
  ...half,
  limb: { ...half.limb, eiAt: (s) => factor * half.limb.eiAt(s) },
});

describe('500 random bows, straight, reflexed, deflexed and recurved, even and uneven', () => {
  test('each is braced and drawn to 28 in AMO, with finite numbers and rising force', () => {
    let wrapped = 0;
    for (const { seed, bow, braceIn } of bows) {
      const { draws: drawn, brace } = solve(bow, braceIn, draws);
      if (brace.upper.liftOffIn !== null) wrapped += 1;
      for (const [i, draw] of drawn.entries()) {
        const values = [draw.forceLbf, draw.storedInLbf, draw.upper.tensionLbf];
        expect(values.every(Number.isFinite), `bow ${seed}`).toBe(true);
        expect(draw.forceLbf, `bow ${seed}`).toBeGreaterThan(drawn[i - 1]?.forceLbf ?? 0);
      }
    }
    // The string lies on the limbs of a good part of the recurves.
    expect(wrapped).toBeGreaterThan(30);
  });

  test('the work of drawing is the energy stored, to 1e-4', () => {
    for (const { seed, bow, braceIn } of bows) {
      const step = 16 / 40;
      const { draws: drawn } = solve(
        bow,
        braceIn,
        Array.from({ length: 41 }, (_, i) => 12 + i * step),
      );
      const force = (i: number) => drawn[i]?.forceLbf ?? Number.NaN;
      let work = 0;
      // Simpson's rule over pairs of steps.
      for (let i = 0; i < 40; i += 2) {
        work += (step / 3) * (force(i) + 4 * force(i + 1) + force(i + 2));
      }
      const stored = (drawn.at(-1)?.storedInLbf ?? 0) - (drawn[0]?.storedInLbf ?? 0);
      expect(Math.abs(work / stored - 1), `bow ${seed}`).toBeLessThan(1e-4);
    }
  });

  test('scaling every width scales every force, and neither string nor shape', () => {
    for (const { seed, bow, braceIn } of bows) {
      const factor = 0.83;
      const upper = scaled(bow.upper, factor);
      const lower = bow.upper === bow.lower ? upper : scaled(bow.lower, factor);
      const before = atTwoDraws(bow, braceIn);
      const after = solve({ upper, lower }, braceIn, [20, 28]);
      expect(after.brace.stringIn / before.brace.stringIn, `bow ${seed}`).toBeCloseTo(1, 9);
      for (const [i, draw] of before.draws.entries()) {
        const ratio = (after.draws[i]?.forceLbf ?? 0) / draw.forceLbf / factor;
        expect(ratio, `bow ${seed}`).toBeCloseTo(1, 9);
        expect(after.draws[i]?.upper.tipAngleRad, `bow ${seed}`).toBeCloseTo(
          draw.upper.tipAngleRad,
          8,
        );
      }
    }
  });

  test('turned upside down, a bow draws the same and leans the other way', () => {
    for (const { seed, bow, braceIn } of bows) {
      const one = atTwoDraws(bow, braceIn);
      const other = solve({ upper: bow.lower, lower: bow.upper }, braceIn, [20, 28]);
      expect(other.brace.tiltRad, `bow ${seed}`).toBeCloseTo(-one.brace.tiltRad, 8);
      for (const [i, draw] of one.draws.entries()) {
        expect((other.draws[i]?.forceLbf ?? 0) / draw.forceLbf, `bow ${seed}`).toBeCloseTo(1, 9);
        expect(other.draws[i]?.tiltRad, `bow ${seed}`).toBeCloseTo(-draw.tiltRad, 7);
      }
    }
  });

  test('without contact, two halvings of the mesh show an order of at least 1.9', () => {
    for (const { seed, bow, braceIn, profile } of bows) {
      if (profile === 'recurved') continue;
      const forces = (segments: number) =>
        solve(bow, braceIn, [14, 18, 22, 26, 28], segments).draws.map((draw) => draw.forceLbf);
      const truth = forces(256);
      // Over several draws: at a single one, errors of two kinds may happen to cancel on one mesh.
      const error = (segments: number) =>
        Math.hypot(...forces(segments).map((force, i) => force / (truth[i] ?? 1) - 1));
      const [coarse, fine] = [error(16), error(64)];
      // Where the error has sunk into rounding there is no order left to see.
      if (fine < 1e-8) continue;
      const order = Math.log2(coarse / fine) / 2;
      expect(order, `bow ${seed}`).toBeGreaterThan(1.9);
    }
  });

  test('sixty segments keep forces to a part in a hundred thousand', () => {
    for (const { seed, bow, braceIn } of bows.filter((_, i) => i % 10 === 4)) {
      const force = (segments: number) =>
        solve(bow, braceIn, [28], segments).draws[0]?.forceLbf ?? 0;
      expect(Math.abs(force(60) / force(480) - 1), `bow ${seed}`).toBeLessThan(1e-5);
    }
  });
  // Some four seconds each on a machine of its own.
}, 90_000);

test('force runs on smoothly where the string lifts off the limb', () => {
  let lifted = 0;
  for (const { bow, braceIn, profile } of bows) {
    if (profile !== 'recurved' || lifted === 20) continue;
    const fine = Array.from({ length: 161 }, (_, i) => 12 + i / 10);
    const { draws: drawn } = solve(bow, braceIn, fine);
    const at = drawn.findIndex((draw) => draw.upper.liftOffIn === null);
    if (at < 3 || at > drawn.length - 4) continue;
    lifted += 1;
    const force = (i: number) => drawn[i]?.forceLbf ?? Number.NaN;
    const steps = [-2, -1, 0, 1, 2].map((k) => force(at + k) - force(at + k - 1));
    // A jump would stand out among the steps of a tenth of an inch around it.
    expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.1);
  }
  expect(lifted).toBe(20);
});

describe('what cannot be is said by name', () => {
  const half: HalfBow = {
    fadeIn: 4,
    fadeOffsetIn: 0,
    padAngleRad: 0,
    limb: { lengthIn: 30, breaksIn: [0, 30], eiAt: () => 40_000, curvatureAt: () => 0 },
  };
  const bow = { upper: half, lower: half };

  test('a limb that stands past the string already', () => {
    const bent = { ...half, padAngleRad: 0.6 };
    const solved = solveStaticBow({ upper: bent, lower: bent }, { braceIn: 6, drawsIn: [28] });
    expect(solved).toMatchObject({ status: 'infeasible', value: null });
  });

  test('a brace height that its limbs cannot reach', () => {
    const solved = solveStaticBow(bow, { braceIn: 19.9, drawsIn: [] });
    const short = { ...half, limb: { ...half.limb, lengthIn: 6, breaksIn: [0, 6] } };
    const tooHigh = solveStaticBow({ upper: short, lower: short }, { braceIn: 12, drawsIn: [] });
    expect(solved.status).toBe('converged');
    expect(tooHigh).toMatchObject({ status: 'infeasible', value: null });
    expect(tooHigh.status === 'infeasible' && tooHigh.why).toMatch(/No string tension/);
  });

  test('a draw past the end of the string', () => {
    const solved = solveStaticBow(bow, { braceIn: 6, drawsIn: [28, 90] });
    expect(solved).toMatchObject({ status: 'infeasible', value: null });
    expect(solved.status === 'infeasible' && solved.why).toMatch(/cannot be drawn past/);
  });

  test.each([
    [{ braceIn: 0, drawsIn: [28] }, 'brace height'],
    [{ braceIn: 7, drawsIn: [8] }, 'is not past'],
    [{ braceIn: 7, drawsIn: [28, 27] }, 'is not past'],
    [{ braceIn: 7, drawsIn: [30], maxSafeDrawIn: 29 }, 'maximum safe draw'],
  ])('options %j', (options, sentence) => {
    expect(() => solveStaticBow(bow, options)).toThrow(sentence);
  });

  test.each([
    [{ lengthIn: 0 }, 'longer than 0'],
    [{ breaksIn: [0, 20] }, 'breaks'],
    [{ eiAt: () => 0 }, 'no stiffness'],
    [{ curvatureAt: () => Number.NaN }, 'no curvature'],
  ])('limb %j', (change, sentence) => {
    const odd = { ...half, limb: { ...half.limb, ...change } };
    expect(() =>
      solveStaticBow({ upper: odd, lower: half }, { braceIn: 6, drawsIn: [28] }),
    ).toThrow(sentence);
  });
});
