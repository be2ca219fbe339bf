/** Two equations in two unknowns. */
export type Pair = readonly [number, number];

export interface NewtonResult {
  at: Pair;
  /** Largest of the two equations, in their own units. */
  residual: number;
  /** Evaluations of the equations. */
  evaluations: number;
}

interface Options {
  /** Steps of the difference quotient, in the units of the unknowns. */
  stepFor(at: Pair): Pair;
  tolerance: number;
  maxIterations: number;
}

const size = (f: Pair) => Math.max(Math.abs(f[0]), Math.abs(f[1]));

type Matrix = [number, number, number, number];

function jacobian(equations: (at: Pair) => Pair, at: Pair, f: Pair, step: Pair): Matrix {
  const f0 = equations([at[0] + step[0], at[1]]);
  const f1 = equations([at[0], at[1] + step[1]]);
  return [
    (f0[0] - f[0]) / step[0],
    (f1[0] - f[0]) / step[1],
    (f0[1] - f[1]) / step[0],
    (f1[1] - f[1]) / step[1],
  ];
}

function solve([a, b, c, d]: Matrix, f: Pair): Pair {
  const det = a * d - b * c;
  return [-(d * f[0] - b * f[1]) / det, -(a * f[1] - c * f[0]) / det];
}

/** Broyden's rank-one update: keeps the matrix right along the step just taken. */
function updated(j: Matrix, step: Pair, before: Pair, after: Pair): Matrix {
  const norm = step[0] ** 2 + step[1] ** 2;
  const miss0 = (after[0] - before[0] - j[0] * step[0] - j[1] * step[1]) / norm;
  const miss1 = (after[1] - before[1] - j[2] * step[0] - j[3] * step[1]) / norm;
  return [
    j[0] + miss0 * step[0],
    j[1] + miss0 * step[1],
    j[2] + miss1 * step[0],
    j[3] + miss1 * step[1],
  ];
}

/** The step, halved until it brings the residual down; null where no part of it does. */
function damped(equations: (at: Pair) => Pair, at: Pair, f: Pair, full: Pair, tries: number) {
  let part = 1;
  for (let i = 0; i < tries; i += 1) {
    const step: Pair = [part * full[0], part * full[1]];
    const next: Pair = [at[0] + step[0], at[1] + step[1]];
    const after = equations(next);
    if (size(after) < size(f)) return { at: next, f: after, step };
    part /= 2;
  }
  return null;
}

/**
 * Newton's method with a difference quotient, carried on by Broyden updates while they halve the
 * residual at least, with steps cut short where a full one would go astray. Never answers a point
 * worse than the one it had; ends early, with the residual to show for it, where nothing helps.
 * Source: C. G. Broyden, "A class of methods for solving nonlinear simultaneous equations",
 * Math. Comp. 19 (1965).
 */
export function newton(equations: (at: Pair) => Pair, start: Pair, options: Options): NewtonResult {
  let evaluations = 0;
  const counted = (at: Pair) => {
    evaluations += 1;
    return equations(at);
  };
  let at = start;
  let f = counted(at);
  let j: Matrix | null = null;
  for (let i = 0; i < options.maxIterations && !(size(f) <= options.tolerance); i += 1) {
    const fresh = j === null;
    j ??= jacobian(counted, at, f, options.stepFor(at));
    const taken = damped(counted, at, f, solve(j, f), fresh ? 8 : 1);
    if (taken === null) {
      if (fresh) break;
      j = null;
      continue;
    }
    j = size(taken.f) < 0.5 * size(f) ? updated(j, taken.step, f, taken.f) : null;
    at = taken.at;
    f = taken.f;
  }
  return { at, residual: size(f), evaluations };
}
