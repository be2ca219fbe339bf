import { refuseField } from '../../shared/errors.ts';
import { type BowState, braceBow, elasticInLbf, forceLbf, meshesOf, type WholeBow } from './bow.ts';
import type { HalfState } from './brace-half.ts';
import type { HalfBow } from './curve.ts';
import { drawCurve } from './draw-curve.ts';
import { amoAtNock, nockAtAmo } from './draw-length.ts';
import { converged, type Solved } from './solved.ts';

export interface StaticBowOptions {
  /** Throat to string, inches. */
  braceIn: number;
  /** AMO draw lengths, inches, rising. */
  drawsIn: readonly number[];
  /** Nothing is computed past it, inches AMO; null where it is unknown. */
  maxSafeDrawIn?: number | null;
  /** Segments from fade to tip. Sixty keep forces to about a part in a million. */
  segments?: number;
}

/** One half of the string and the limb it pulls. */
export interface HalfShape {
  tensionLbf: number;
  /** Angle of the half string to the line square to the arrow, radian. */
  stringAngleRad: number;
  tipAngleRad: number;
  /** Distance from the fade where the string leaves the limb, inches; null where it leaves at the nock. */
  liftOffIn: number | null;
}

export interface DrawnBow {
  /** AMO, inches. */
  drawIn: number;
  forceLbf: number;
  /** Work done from brace, which is the energy stored, in lbf. */
  storedInLbf: number;
  /** How far the bow leans in the hand, radian. */
  tiltRad: number;
  upper: HalfShape;
  lower: HalfShape;
}

export interface StaticBow {
  brace: {
    braceIn: number;
    tensionLbf: number;
    /** From tip to tip along the string, inches. */
    stringIn: number;
    /** Slope of the string to the bow, radian; positive when it runs down to the upper tip. */
    tiltRad: number;
    upper: HalfShape;
    lower: HalfShape;
  };
  draws: DrawnBow[];
}

function refuseOddHalf(name: string, half: HalfBow): void {
  const { limb } = half;
  if (!(limb.lengthIn > 0)) refuseField(name, `The ${name} limb must be longer than 0 in.`);
  if (!(half.fadeIn >= 0)) refuseField(name, `The ${name} fade cannot lie before the throat.`);
  const breaks = limb.breaksIn;
  const rising = breaks.every((at, i) => i === 0 || at > (breaks[i - 1] ?? at));
  if (breaks[0] !== 0 || breaks.at(-1) !== limb.lengthIn || !rising) {
    refuseField(name, `The breaks of the ${name} limb must rise from 0 to its length.`);
  }
  for (let i = 0; i < 20; i += 1) {
    const at = (limb.lengthIn * (i + 0.5)) / 20;
    if (!(limb.eiAt(at) > 0)) {
      refuseField(name, `The ${name} limb has no stiffness ${at.toFixed(1)} in from the fade.`);
    }
    if (!Number.isFinite(limb.curvatureAt(at))) {
      refuseField(name, `The ${name} limb has no curvature ${at.toFixed(1)} in from the fade.`);
    }
  }
}

function refuseOddDraws({ braceIn, drawsIn, maxSafeDrawIn = null }: StaticBowOptions): void {
  if (!(braceIn > 0 && braceIn < 20)) {
    refuseField('braceIn', 'The brace height must lie between 0 and 20 in.');
  }
  for (const [i, drawIn] of drawsIn.entries()) {
    const before = drawsIn[i - 1] ?? amoAtNock(braceIn);
    if (!(drawIn > before)) {
      refuseField('drawsIn', `A draw of ${drawIn} in is not past the ${before} in before it.`);
    }
    if (maxSafeDrawIn !== null && drawIn > maxSafeDrawIn) {
      refuseField(
        'drawsIn',
        `A draw of ${drawIn} in is past the bow's maximum safe draw of ${maxSafeDrawIn} in.`,
      );
    }
  }
}

function halfShape({ pull, end }: HalfState): HalfShape {
  return {
    tensionLbf: pull.tensionLbf,
    stringAngleRad: pull.angleRad,
    tipAngleRad: end.thetaRad,
    liftOffIn: end.inContact ? end.fromFadeIn : null,
  };
}

function braceOf(state: BowState): StaticBow['brace'] {
  return {
    braceIn: state.nockIn,
    tensionLbf: state.upper.pull.tensionLbf,
    stringIn: state.upper.halfStringIn + state.lower.halfStringIn,
    tiltRad: state.tiltRad,
    upper: halfShape(state.upper),
    lower: halfShape(state.lower),
  };
}

/**
 * The bow at rest and drawn: limbs bending by their own stiffness under a string that does not
 * stretch and may lie on the limbs, without friction. Units inch, lbf, radian.
 *
 * Sources of the model: B. W. Kooi, "On the mechanics of the bow and arrow", thesis, Groningen
 * 1983, ch. 2; the uniform straight bow at brace is the pinned elastica of S. P. Timoshenko and
 * J. M. Gere, "Theory of Elastic Stability", 2nd ed. 1961, 2.7.
 *
 * Found to converge for every one of 500 random bows with limbs of 18 to 32 in, fades 4 to 10 in
 * from the throat, pads of -9 to 5 degrees, hooks of up to 1.5 radian with the string on them, limbs
 * that differ by a tenth in stiffness and an inch in length, braced at 6 to 8 1/2 in and drawn to
 * 28 in AMO.
 * @returns not converged or infeasible, with a sentence, where there is no such state; never NaN.
 * @throws ShopError BAD_INPUT naming what is out of order, zero, negative or past the safe draw.
 */
export function solveStaticBow(bow: WholeBow, options: StaticBowOptions): Solved<StaticBow> {
  refuseOddHalf('upper', bow.upper);
  refuseOddHalf('lower', bow.lower);
  refuseOddDraws(options);
  const meshes = meshesOf(bow, options.segments ?? 60);
  const braced = braceBow(bow, meshes, options.braceIn);
  if (braced.status !== 'converged') return braced;
  const drawn = drawCurve(bow, meshes, braced.value, options.drawsIn.map(nockAtAmo));
  if (drawn.status !== 'converged') return drawn;
  const atRest = elasticInLbf(braced.value);
  const draws = drawn.value.map((state) => ({
    drawIn: amoAtNock(state.nockIn),
    forceLbf: forceLbf(state),
    storedInLbf: elasticInLbf(state) - atRest,
    tiltRad: state.tiltRad,
    upper: halfShape(state.upper),
    lower: halfShape(state.lower),
  }));
  return converged(
    { brace: braceOf(braced.value), draws },
    Math.max(braced.residual, drawn.residual),
    braced.iterations + drawn.iterations,
  );
}
