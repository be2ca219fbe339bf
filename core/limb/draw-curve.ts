import {
  type BowGuess,
  type BowState,
  drawBow,
  type Meshes,
  type Strings,
  type WholeBow,
} from './bow.ts';
import type { HalfState } from './brace-half.ts';
import type { HalfGuess } from './draw-half.ts';
import { converged, failed, type Solved } from './solved.ts';

/** Draw steps are never longer than this, inches: continuation stays on the branch it began on. */
const longestStepIn = 2;
const shortestStepIn = 1 / 64;

/** On the straight line through two values, t steps past the second. */
const beyond = (before: number, last: number, t: number) => last + t * (last - before);

function halfGuess(
  before: HalfState | null,
  last: HalfState,
  t: number,
  turnRad: number,
): HalfGuess {
  if (before === null) {
    return { tensionLbf: last.pull.tensionLbf, angleRad: last.pull.angleRad + turnRad };
  }
  return {
    tensionLbf: beyond(before.pull.tensionLbf, last.pull.tensionLbf, t),
    angleRad: beyond(before.pull.angleRad, last.pull.angleRad, t),
  };
}

function guessAt(nockIn: number, before: BowState | null, last: BowState): BowGuess {
  const t = before === null ? 0 : (nockIn - last.nockIn) / (last.nockIn - before.nockIn);
  // From brace the string turns by about the draw over its own length.
  const turn = (half: HalfState) => (nockIn - last.nockIn) / half.halfStringIn;
  return {
    tiltRad: before === null ? last.tiltRad : beyond(before.tiltRad, last.tiltRad, t),
    upper: halfGuess(before?.upper ?? null, last.upper, t, turn(last.upper)),
    lower: halfGuess(before?.lower ?? null, last.lower, t, turn(last.lower)),
  };
}

/** Both halves of the string from a nock set square to it from the throat. */
export function nockedStrings({ nockIn, tiltRad, upper, lower }: BowState): Strings {
  const shift = nockIn * Math.sin(tiltRad);
  return { upperIn: upper.halfStringIn - shift, lowerIn: lower.halfStringIn + shift };
}

/** The braced bow seen from the hand: its string square to the arrow, its riser leaning instead. */
function atRest(braced: BowState): BowState {
  const { tiltRad, nockIn } = braced;
  const turned = (half: HalfState): HalfState => ({
    ...half,
    pull: { ...half.pull, angleRad: 0 },
  });
  return {
    nockIn: nockIn * Math.cos(tiltRad),
    tiltRad,
    upper: turned(braced.upper),
    lower: turned(braced.lower),
  };
}

/**
 * Draws a braced bow to each nock distance in turn by continuation from brace.
 * @param nocksIn throat to nock, inches, rising, from the brace height
 */
export function drawCurve(
  bow: WholeBow,
  meshes: Meshes,
  braced: BowState,
  nocksIn: readonly number[],
): Solved<BowState[]> {
  const strings = nockedStrings(braced);
  const states: BowState[] = [];
  let before: BowState | null = null;
  let last = atRest(braced);
  let iterations = 0;
  let residual = 0;
  let step = longestStepIn;
  for (const target of nocksIn) {
    while (target - last.nockIn > 1e-12) {
      const left = target - last.nockIn;
      const nockIn = step >= left ? target : last.nockIn + step;
      const solved = drawBow(bow, meshes, nockIn, strings, guessAt(nockIn, before, last));
      iterations += solved.iterations;
      if (solved.status === 'converged') {
        residual = Math.max(residual, solved.residual);
        [before, last] = [last, solved.value];
        step = Math.min(longestStepIn, step * 2);
        continue;
      }
      step = Math.min(step, left) / 2;
      if (step < shortestStepIn) {
        const why = `The bow cannot be drawn past ${last.nockIn.toFixed(2)} in from the throat: string or limb are at an end.`;
        return failed('infeasible', why, solved.residual, iterations);
      }
    }
    states.push(last);
  }
  return converged(states, residual, iterations);
}
