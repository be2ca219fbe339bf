import {
  type BowState,
  braceBow,
  commonString,
  drawBow,
  forceLbf,
  type Meshes,
  meshesOf,
  type WholeBow,
} from '../bow.ts';
import { drawCurve, nockedStrings } from '../draw-curve.ts';
import { nockAtAmo } from '../draw-length.ts';
import { type MeasuredBow, wholeBowOf } from '../modelled-bow.ts';
import { converged, failed, type Solved } from '../solved.ts';

/** The modelled bow at brace and at one draw. Only ratios of such weights are to be trusted. */
export interface ModelState {
  bow: WholeBow;
  meshes: Meshes;
  braced: BowState;
  drawn: BowState;
  weightLbf: number;
  /** Upper minus lower string distance at the fades, inches. */
  tillerIn: number;
}

export interface ModelOptions {
  /** AMO, inches. */
  drawIn: number;
  /** From fade to tip. */
  segments: number;
}

/** String to fade, square to the string, inches: needs no march, since the riser is rigid. */
function atFadeIn({ pull }: BowState['upper'], { fadeIn, fadeOffsetIn }: WholeBow['upper']) {
  return (pull.nockIn - fadeOffsetIn) * Math.cos(pull.angleRad) - fadeIn * Math.sin(pull.angleRad);
}

/** Braced again from a bow much like it; not converged where that does not come to an answer. */
function braceNear(bow: WholeBow, meshes: Meshes, near: BowState): Solved<BowState> {
  const from = { tensionLbf: near.upper.pull.tensionLbf, tiltRad: near.tiltRad };
  const { result, state } = commonString(bow, meshes, near.nockIn, from, 20);
  const sane = result.at[0] > 0.2 && result.at[0] < 2;
  return result.residual <= 1e-8 && sane
    ? converged(state, result.residual, result.evaluations)
    : failed('not-converged', 'No braced shape near by.', result.residual, result.evaluations);
}

/** Straight to the draw of a bow much like it. */
function stateNear(bow: WholeBow, meshes: Meshes, near: ModelState): Solved<ModelState> {
  const braced = braceNear(bow, meshes, near.braced);
  if (braced.status !== 'converged') return braced;
  const { nockIn, tiltRad, upper, lower } = near.drawn;
  const guess = { tiltRad, upper: upper.pull, lower: lower.pull };
  const drawn = drawBow(bow, meshes, nockIn, nockedStrings(braced.value), guess);
  if (drawn.status !== 'converged') return drawn;
  return converged(
    stateOf(bow, meshes, braced.value, drawn.value),
    Math.max(braced.residual, drawn.residual),
    braced.iterations + drawn.iterations,
  );
}

function stateOf(bow: WholeBow, meshes: Meshes, braced: BowState, drawn: BowState): ModelState {
  const tillerIn = atFadeIn(braced.upper, bow.upper) - atFadeIn(braced.lower, bow.lower);
  return { bow, meshes, braced, drawn, weightLbf: forceLbf(drawn), tillerIn };
}

/**
 * Weight and tiller of the modelled bow, straight from those of a bow much like it where there is
 * one, otherwise by continuation from rest.
 * @returns not converged or infeasible with a sentence where there is no such state
 * @throws ShopError BAD_INPUT for a profile out of order
 */
export function modelState(
  measured: MeasuredBow,
  { drawIn, segments }: ModelOptions,
  near: ModelState | null = null,
): Solved<ModelState> {
  const bow = wholeBowOf(measured);
  const meshes = meshesOf(bow, segments);
  if (near !== null) {
    const state = stateNear(bow, meshes, near);
    if (state.status === 'converged') return state;
  }
  const braced = braceBow(bow, meshes, measured.braceIn);
  if (braced.status !== 'converged') return braced;
  const drawn = drawCurve(bow, meshes, braced.value, [nockAtAmo(drawIn)]);
  if (drawn.status !== 'converged') return drawn;
  const last = drawn.value[0] ?? braced.value;
  return converged(
    stateOf(bow, meshes, braced.value, last),
    Math.max(braced.residual, drawn.residual),
    braced.iterations + drawn.iterations,
  );
}
