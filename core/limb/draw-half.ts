import { type HalfState, halfState, lengthTolerance } from './brace-half.ts';
import type { HalfBow } from './curve.ts';
import { leverIn } from './march.ts';
import type { Mesh } from './mesh.ts';
import { newton, type Pair } from './newton.ts';
import { converged, failed, type Solved } from './solved.ts';

/** A first idea of a drawn state. */
export interface HalfGuess {
  tensionLbf: number;
  angleRad: number;
}

/**
 * The half bow with its nock drawn to a distance from the throat, its half string keeping its
 * length. Unknown are the tension and the angle of the string.
 * @param nockIn throat to nock, inches
 * @param stringIn half string, nock to tip, inches
 */
export function drawHalf(
  bow: HalfBow,
  mesh: Mesh,
  nockIn: number,
  stringIn: number,
  guess: HalfGuess,
): Solved<HalfState> {
  // In units of the guess both unknowns are of order one.
  const stateAt = ([tension, angleRad]: Pair) =>
    halfState(bow, mesh, { tensionLbf: tension * guess.tensionLbf, angleRad, nockIn });
  const result = newton(
    (at) => {
      const state = stateAt(at);
      return [leverIn(state.end, state.pull), state.halfStringIn - stringIn];
    },
    [1, guess.angleRad],
    { stepFor: () => [1e-6, 1e-6], tolerance: lengthTolerance, maxIterations: 25 },
  );
  const state = stateAt(result.at);
  const sane = state.pull.tensionLbf > 0 && Math.abs(state.pull.angleRad) < Math.PI / 2;
  return result.residual <= 1e-8 && sane
    ? converged(state, result.residual, result.evaluations)
    : failed('not-converged', 'No drawn shape was found.', result.residual, result.evaluations);
}
