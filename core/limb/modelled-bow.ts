import type { WholeBow } from './bow.ts';
import type { HalfBow } from './curve.ts';
import { type LimbProfile, limbCurve } from './limb-profile.ts';
import { converged, type Solved } from './solved.ts';
import { solveStaticBow } from './static-bow.ts';

/** One limb on its half of the riser, as it was measured. */
export interface MeasuredLimb {
  /** Throat to fade along the bow, inches. */
  fadeIn: number;
  /** Throat to fade towards the archer, inches. */
  fadeOffsetIn: number;
  /** Angle of the limb at the fade, degrees; positive towards the archer. */
  padDeg: number;
  profile: LimbProfile;
}

export interface MeasuredBow {
  upper: MeasuredLimb;
  lower: MeasuredLimb;
  braceIn: number;
}

export function halfBowOf(limb: MeasuredLimb): HalfBow {
  return {
    fadeIn: limb.fadeIn,
    fadeOffsetIn: limb.fadeOffsetIn,
    padAngleRad: (limb.padDeg * Math.PI) / 180,
    limb: limbCurve(limb.profile),
  };
}

export function wholeBowOf(bow: MeasuredBow): WholeBow {
  const upper = halfBowOf(bow.upper);
  return { upper, lower: bow.lower === bow.upper ? upper : halfBowOf(bow.lower) };
}

/**
 * Draw weight that the model gives a bow, lbf. Moduli are guesses, so only ratios of two such
 * weights are to be trusted.
 * @param drawIn AMO, inches
 */
export function modelledWeight(bow: MeasuredBow, drawIn: number): Solved<number> {
  const solved = solveStaticBow(wholeBowOf(bow), { braceIn: bow.braceIn, drawsIn: [drawIn] });
  if (solved.status !== 'converged') return solved;
  const force = solved.value.draws[0]?.forceLbf ?? Number.NaN;
  return converged(force, solved.residual, solved.iterations);
}
