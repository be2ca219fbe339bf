import { braceHalf, type HalfState, halfState, lengthTolerance } from './brace-half.ts';
import type { HalfBow } from './curve.ts';
import { drawHalf, type HalfGuess } from './draw-half.ts';
import { leverIn } from './march.ts';
import { type Mesh, meshOf } from './mesh.ts';
import { type NewtonResult, newton, type Pair } from './newton.ts';
import { converged, failed, type Solved } from './solved.ts';

/** Both limbs on one riser. The lower one is described as if it were an upper one. */
export interface WholeBow {
  upper: HalfBow;
  lower: HalfBow;
}

export interface Meshes {
  upper: Mesh;
  lower: Mesh;
}

/** Both halves at one draw. */
export interface BowState {
  /** Throat to nock, inches; brace height at rest. */
  nockIn: number;
  /** How far the bow leans in the hand: string at brace, riser when drawn; radian, upper limb forward. */
  tiltRad: number;
  upper: HalfState;
  lower: HalfState;
}

export const isEven = (bow: WholeBow) => bow.upper === bow.lower;

export function meshesOf(bow: WholeBow, segments: number): Meshes {
  const upper = meshOf(bow.upper.limb, segments);
  return { upper, lower: isEven(bow) ? upper : meshOf(bow.lower.limb, segments) };
}

/** Draw force: what both halves of the string pull along the line of the arrow, lbf. */
export function forceLbf({ upper, lower }: BowState): number {
  const half = ({ pull }: HalfState) => pull.tensionLbf * Math.sin(pull.angleRad);
  return half(upper) + half(lower);
}

export function elasticInLbf({ upper, lower }: BowState): number {
  return upper.end.energyInLbf + lower.end.energyInLbf;
}

/**
 * The tension and tilt at which one straight string through the brace height meets both limbs,
 * sought from a first idea of them; the tension is answered as a multiple of that idea.
 */
export function commonString(
  bow: WholeBow,
  meshes: Meshes,
  braceIn: number,
  from: { tensionLbf: number; tiltRad: number },
  maxIterations: number,
): { result: NewtonResult; state: BowState } {
  const halves = ([tension, tilt]: Pair) => {
    const pull = { tensionLbf: tension * from.tensionLbf, nockIn: braceIn };
    return {
      upper: halfState(bow.upper, meshes.upper, { ...pull, angleRad: tilt }),
      lower: halfState(bow.lower, meshes.lower, { ...pull, angleRad: -tilt }),
    };
  };
  const result = newton(
    (at) => {
      const { upper, lower } = halves(at);
      return [leverIn(upper.end, upper.pull), leverIn(lower.end, lower.pull)];
    },
    [1, from.tiltRad],
    { stepFor: () => [1e-6, 1e-7], tolerance: lengthTolerance, maxIterations },
  );
  return { result, state: { nockIn: braceIn, tiltRad: result.at[1], ...halves(result.at) } };
}

/** The braced bow: both limbs share one tension and one straight string through the brace height. */
export function braceBow(bow: WholeBow, meshes: Meshes, braceIn: number): Solved<BowState> {
  const first = braceHalf(bow.upper, meshes.upper, braceIn);
  if (first.status !== 'converged') return first;
  if (isEven(bow)) {
    const half = first.value;
    const state = { nockIn: braceIn, tiltRad: 0, upper: half, lower: half };
    return converged(state, first.residual, first.iterations);
  }
  const second = braceHalf(bow.lower, meshes.lower, braceIn);
  if (second.status !== 'converged') return second;
  const tensionLbf = (first.value.pull.tensionLbf + second.value.pull.tensionLbf) / 2;
  const { result, state } = commonString(bow, meshes, braceIn, { tensionLbf, tiltRad: 0 }, 40);
  const iterations = first.iterations + second.iterations + result.evaluations;
  return result.residual <= 1e-8
    ? converged(state, result.residual, iterations)
    : failed('not-converged', 'The two limbs found no common string.', result.residual, iterations);
}

/** The same half with the riser leaning by an angle about the throat. */
export function leaning(half: HalfBow, angleRad: number): HalfBow {
  const [sin, cos] = [Math.sin(angleRad), Math.cos(angleRad)];
  return {
    ...half,
    fadeIn: half.fadeIn * cos - half.fadeOffsetIn * sin,
    fadeOffsetIn: half.fadeIn * sin + half.fadeOffsetIn * cos,
    padAngleRad: half.padAngleRad + angleRad,
  };
}

export interface Strings {
  upperIn: number;
  lowerIn: number;
}

export interface BowGuess {
  tiltRad: number;
  upper: HalfGuess;
  lower: HalfGuess;
}

/**
 * The drawn bow. Held at the throat and drawn at the nock, it is pulled by two forces only, so
 * both lie on the line from throat to nock: the bow leans in the hand until the halves of the
 * string pull equally along the bow.
 */
export function drawBow(
  bow: WholeBow,
  meshes: Meshes,
  nockIn: number,
  strings: Strings,
  guess: BowGuess,
): Solved<BowState> {
  if (isEven(bow)) {
    const half = drawHalf(bow.upper, meshes.upper, nockIn, strings.upperIn, guess.upper);
    if (half.status !== 'converged') return half;
    const state = { nockIn, tiltRad: 0, upper: half.value, lower: half.value };
    return converged(state, half.residual, half.iterations);
  }
  let iterations = 0;
  let residual = 0;
  let near = guess;
  const at = (tiltRad: number): BowState | null => {
    const upper = drawHalf(
      leaning(bow.upper, tiltRad),
      meshes.upper,
      nockIn,
      strings.upperIn,
      near.upper,
    );
    const lower = drawHalf(
      leaning(bow.lower, -tiltRad),
      meshes.lower,
      nockIn,
      strings.lowerIn,
      near.lower,
    );
    iterations += upper.iterations + lower.iterations;
    if (upper.status !== 'converged' || lower.status !== 'converged') return null;
    residual = Math.max(upper.residual, lower.residual);
    near = { tiltRad, upper: upper.value.pull, lower: lower.value.pull };
    return { nockIn, tiltRad, upper: upper.value, lower: lower.value };
  };
  const along = ({ pull }: HalfState) => pull.tensionLbf * Math.cos(pull.angleRad);
  const unbalance = (state: BowState) =>
    (along(state.upper) - along(state.lower)) / (along(state.upper) + along(state.lower));
  const miss = () => failed('not-converged', 'No drawn shape was found.', residual, iterations);

  let [tilt0, tilt1] = [guess.tiltRad, guess.tiltRad + 1e-4];
  let last = at(tilt0);
  if (last === null) return miss();
  let f0 = unbalance(last);
  for (let i = 0; i < 30; i += 1) {
    const state = at(tilt1);
    if (state === null) return miss();
    last = state;
    const f1 = unbalance(state);
    if (Math.abs(f1) < 1e-12) break;
    if (f1 === f0) break;
    [tilt0, tilt1, f0] = [tilt1, tilt1 - (f1 * (tilt1 - tilt0)) / (f1 - f0), f1];
  }
  return Math.abs(unbalance(last)) < 1e-9 ? converged(last, residual, iterations) : miss();
}
