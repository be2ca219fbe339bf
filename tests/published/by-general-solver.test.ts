import { expect, test } from 'vitest';
import type { HalfBow } from '../../core/limb/curve.ts';
import { solveStaticBow } from '../../core/limb/static-bow.ts';
import { Solver } from '../support/general-ode.mjs';

/**
 * The same bow by general-purpose means: E. Hairer and G. Wanner's extrapolation code ODEX (as
 * ported to the registry) for the differential equation, and a plain Newton iteration for tension,
 * string angle and the point where the string leaves the limb. Nothing of core/limb takes part.
 */
function shoot(half: HalfBow, tension: number, angle: number, nock: number, to: number) {
  const solver = new Solver(3);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  const { limb } = half;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  let state = [half.fadeIn, half.fadeOffsetIn, half.padAngleRad];
  const stops = [...limb.breaksIn.filter((at) => at > 0 && at < to), to];
  let from = 0;
  for (const stop of stops) {
    const derivative = (s: number, [x = 0, y = 0, theta = 0]: number[]) => [
      Math.cos(theta),
      Math.sin(theta),
      limb.curvatureAt(s) + (tension * ((nock - y) * cos - x * sin)) / limb.eiAt(s),
    ];
    state = solver.solve(derivative, from, state, stop).y;
    from = stop;
  }
  const [x = 0, y = 0, theta = 0] = state;
  return {
    lever: (nock - y) * cos - x * sin,
    string: Math.hypot(x, y - nock) + limb.lengthIn - to,
    tangent: theta + angle,
  };
}

/** Newton in as many unknowns as equations, derivatives by central differences. */
function newton(equations: (at: number[]) => number[], start: number[]): number[] {
  let at = start;
  for (let i = 0; i < 30; i += 1) {
    const f = equations(at);
    if (Math.max(...f.map(Math.abs)) < 1e-9) break;
    const columns = at.map((value, j) => {
      const h = 1e-5 * Math.max(1, Math.abs(value));
      const shifted = (by: number) => at.map((v, k) => (k === j ? v + by : v));
      const [up, down] = [equations(shifted(h)), equations(shifted(-h))];
      return up.map((u, k) => (u - (down[k] ?? 0)) / (2 * h));
    });
    const rows = f.map((value, k) => [...columns.map((column) => column[k] ?? 0), -value]);
    at = at.map((value, j) => value + (solveRows(rows)[j] ?? 0));
  }
  return at;
}

/** Gauss and Jordan's elimination with the largest pivot of each column. */
function solveRows(given: number[][]): number[] {
  let rows = given;
  for (let i = 0; i < rows.length; i += 1) {
    const size = (row: number[] | undefined) => Math.abs(row?.[i] ?? 0);
    const best = rows.slice(i).reduce((a, b) => (size(b) > size(a) ? b : a));
    const others = rows.filter((row) => row !== best);
    const done = [...others.slice(0, i), best, ...others.slice(i)];
    rows = done.map((row) => {
      if (row === best) return row;
      const factor = (row[i] ?? 0) / (best[i] ?? 1);
      return row.map((value, j) => value - factor * (best[j] ?? 0));
    });
  }
  return rows.map((row, i) => (row.at(-1) ?? 0) / (row[i] ?? 1));
}

// EI may not be asked for at the very tip, where the linear taper ends in nothing.
const nearTip = 1e-9;

test('case A, straight with a linear taper', () => {
  const half: HalfBow = {
    fadeIn: 4,
    fadeOffsetIn: 0,
    padAngleRad: 0,
    limb: {
      lengthIn: 32,
      breaksIn: [0, 32],
      eiAt: (s) => (57_569.62 * Math.max(32 - s, nearTip)) / 32,
      curvatureAt: () => 0,
    },
  };
  const [tension = 0] = newton(([k = 0]) => [shoot(half, k, 0, 6, 32).lever], [80]);
  const { string } = shoot(half, tension, 0, 6, 32);
  const ours = solveStaticBow(
    { upper: half, lower: half },
    { braceIn: 6, drawsIn: [12, 20, 28, 30], segments: 240 },
  );
  if (ours.status !== 'converged') throw new Error(ours.why);
  expect(ours.value.brace.tensionLbf / tension).toBeCloseTo(1, 6);
  for (const draw of ours.value.draws) {
    const nock = draw.drawIn - 1.75;
    const [k = 0, angle = 0] = newton(
      ([t = 0, a = 0]) => {
        const at = shoot(half, t, a, nock, 32);
        return [at.lever, at.string - string];
      },
      [draw.upper.tensionLbf * 1.03, draw.upper.stringAngleRad * 0.97],
    );
    expect(draw.forceLbf / (2 * k * Math.sin(angle))).toBeCloseTo(1, 6);
  }
});

test('a recurve whose string lies on its limbs, from brace until it has lifted off', () => {
  const half: HalfBow = {
    fadeIn: 8,
    fadeOffsetIn: -1,
    padAngleRad: -0.2,
    limb: {
      lengthIn: 22,
      breaksIn: [0, 14, 22],
      eiAt: (s) => 20_000 * (1 - (0.6 * s) / 22),
      curvatureAt: (s) => (s > 14 ? (-0.35 * (s - 14)) / 8 : 0),
    },
  };
  const ours = solveStaticBow(
    { upper: half, lower: half },
    { braceIn: 8, drawsIn: [11, 14, 16, 18, 22, 28], segments: 240 },
  );
  if (ours.status !== 'converged') throw new Error(ours.why);
  const { brace } = ours.value;
  const start = brace.upper.liftOffIn ?? 0;
  const [tension = 0, contact = 0] = newton(
    ([k = 0, s = 0]) => {
      const at = shoot(half, k, 0, 8, s);
      return [at.lever, at.tangent];
    },
    [brace.tensionLbf * 1.02, start - 0.1],
  );
  expect(contact).toBeLessThan(22);
  const { string } = shoot(half, tension, 0, 8, contact);
  expect(brace.tensionLbf / tension).toBeCloseTo(1, 6);
  expect(brace.upper.liftOffIn).toBeCloseTo(contact, 4);
  let touching = 0;
  for (const draw of ours.value.draws) {
    const nock = draw.drawIn - 1.75;
    const { tensionLbf, stringAngleRad, liftOffIn } = draw.upper;
    if (liftOffIn !== null) touching += 1;
    const solved = newton(
      ([t = 0, a = 0, s = 22]) => {
        const at = shoot(half, t, a, nock, liftOffIn === null ? 22 : s);
        const free = [at.lever, at.string - string];
        return liftOffIn === null ? free : [...free, at.tangent];
      },
      [
        tensionLbf * 1.01,
        stringAngleRad * 0.99,
        ...(liftOffIn === null ? [] : [Math.min(liftOffIn + 0.02, 21.99)]),
      ],
    );
    const [k = 0, angle = 0] = solved;
    expect(draw.forceLbf / (2 * k * Math.sin(angle)), `draw ${draw.drawIn}`).toBeCloseTo(1, 6);
  }
  expect(touching).toBeGreaterThan(1);
  expect(touching).toBeLessThan(ours.value.draws.length);
});
