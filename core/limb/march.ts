import type { HalfBow } from './curve.ts';
import { gaussNodes, type Mesh } from './mesh.ts';

/** The straight stretch of string that pulls on the limb: its tension and where it runs. */
export interface StringPull {
  /** Tension, lbf. */
  tensionLbf: number;
  /** Angle of the half string to the x axis, radian; positive when it runs down to the tip. */
  angleRad: number;
  /** Where it meets the line through the throat, inches from the throat towards the archer. */
  nockIn: number;
}

/** Where the marching ended: at the tip, or where the string leaves the limb. */
export interface LimbEnd {
  xIn: number;
  yIn: number;
  thetaRad: number;
  /** Distance from the fade along the limb, inches. */
  fromFadeIn: number;
  /** The string lies on the limb beyond this point. */
  inContact: boolean;
  /** Elastic energy of the limb, in lbf. */
  energyInLbf: number;
}

/** Told of every node on the way: distance from the fade, place, angle and bending moment (in lbf). */
export type Watch = (
  fromFadeIn: number,
  xIn: number,
  yIn: number,
  thetaRad: number,
  momentInLbf: number,
) => void;

const [c1, c2] = gaussNodes;
// Two-stage Gauss collocation, order 4. Source: E. Hairer, C. Lubich, G. Wanner, "Geometric
// Numerical Integration", 2nd ed. 2006, table II.1.1.
const a12 = 0.25 - Math.sqrt(3) / 6;
const a21 = 0.25 + Math.sqrt(3) / 6;

/** The limb's state while marching; written over at every step, so that a solve allocates nothing. */
class March {
  x: number;
  y: number;
  theta: number;
  energy = 0;
  readonly #tension: number;
  readonly #sin: number;
  readonly #cos: number;
  readonly #nock: number;

  constructor(bow: HalfBow, pull: StringPull) {
    this.x = bow.fadeIn;
    this.y = bow.fadeOffsetIn;
    this.theta = bow.padAngleRad;
    this.#tension = pull.tensionLbf;
    this.#sin = Math.sin(pull.angleRad);
    this.#cos = Math.cos(pull.angleRad);
    this.#nock = pull.nockIn;
  }

  /** Tension times the lever arm of a point to the line of the string, in lbf. */
  moment(x: number, y: number): number {
    return this.#tension * ((this.#nock - y) * this.#cos - x * this.#sin);
  }

  /**
   * One step over a stretch of limb with compliance w and curvature k at its two Gauss points.
   * The bending moment depends on the angle only through the place, two integrations away, so
   * two sweeps leave an error of the fifth order, as small as the rule's own.
   */
  step(h: number, w1: number, w2: number, k1: number, k2: number): void {
    const { x, y, theta } = this;
    let m1 = this.moment(x, y);
    let m2 = m1;
    let cos1 = 0;
    let cos2 = 0;
    let sin1 = 0;
    let sin2 = 0;
    for (let sweep = 0; sweep < 2; sweep += 1) {
      const q1 = k1 + m1 * w1;
      const q2 = k2 + m2 * w2;
      const t1 = theta + h * (0.25 * q1 + a12 * q2);
      const t2 = theta + h * (a21 * q1 + 0.25 * q2);
      cos1 = Math.cos(t1);
      sin1 = Math.sin(t1);
      cos2 = Math.cos(t2);
      sin2 = Math.sin(t2);
      m1 = this.moment(x + h * (0.25 * cos1 + a12 * cos2), y + h * (0.25 * sin1 + a12 * sin2));
      m2 = this.moment(x + h * (a21 * cos1 + 0.25 * cos2), y + h * (a21 * sin1 + 0.25 * sin2));
    }
    this.x = x + (h / 2) * (cos1 + cos2);
    this.y = y + (h / 2) * (sin1 + sin2);
    this.theta = theta + (h / 2) * (k1 + m1 * w1 + k2 + m2 * w2);
    this.energy += (h / 4) * (m1 * m1 * w1 + m2 * m2 * w2);
  }

  /** Back to an earlier state. */
  rewind(x: number, y: number, theta: number, energy: number): void {
    this.x = x;
    this.y = y;
    this.theta = theta;
    this.energy = energy;
  }

  end(fromFadeIn: number, inContact: boolean): LimbEnd {
    return {
      xIn: this.x,
      yIn: this.y,
      thetaRad: this.theta,
      fromFadeIn,
      inContact,
      energyInLbf: this.energy,
    };
  }
}

/**
 * Marches one limb from the fade outwards under a given string pull: x' = cos theta,
 * y' = sin theta, theta' = kappa0 + M / EI. Stops where the limb turns from lying before the
 * string's direction to lying behind it: there the string is tangent to the limb, and beyond it
 * the limb carries no moment and keeps its unstrung curvature.
 */
export function march(bow: HalfBow, mesh: Mesh, pull: StringPull, watch?: Watch): LimbEnd {
  const state = new March(bow, pull);
  const { compliance, curvature, stepIn, startIn, count } = mesh;
  watch?.(0, state.x, state.y, state.theta, state.moment(state.x, state.y));
  for (let i = 0; i < count; i += 1) {
    const { x, y, theta, energy } = state;
    const h = stepIn[i] ?? 0;
    const s = startIn[i] ?? 0;
    state.step(
      h,
      compliance[2 * i] ?? 0,
      compliance[2 * i + 1] ?? 0,
      curvature[2 * i] ?? 0,
      curvature[2 * i + 1] ?? 0,
    );
    if (theta + pull.angleRad > 0 && state.theta + pull.angleRad < 0) {
      const overshoot = state.theta + pull.angleRad;
      const to = (length: number) => {
        state.rewind(x, y, theta, energy);
        partialStep(bow, state, s, length);
        return state.theta + pull.angleRad;
      };
      const length = tangentPoint(to, h, theta + pull.angleRad, overshoot);
      to(length);
      watch?.(s + length, state.x, state.y, state.theta, 0);
      return state.end(s + length, true);
    }
    watch?.(s + h, state.x, state.y, state.theta, state.moment(state.x, state.y));
  }
  return state.end(bow.limb.lengthIn, false);
}

/** A step of any length, with the curves read afresh at its own nodes. */
function partialStep({ limb }: HalfBow, state: March, s: number, h: number): void {
  state.step(
    h,
    1 / limb.eiAt(s + c1 * h),
    1 / limb.eiAt(s + c2 * h),
    limb.curvatureAt(s + c1 * h),
    limb.curvatureAt(s + c2 * h),
  );
}

/**
 * Length of step at which the limb is tangent to the string, by the Illinois rule (a regula falsi
 * that does not creep). Force and string length do not change to first order with that point.
 */
function tangentPoint(
  angleAfter: (length: number) => number,
  segmentIn: number,
  atStart: number,
  atEnd: number,
): number {
  let [low, high, fLow, fHigh] = [0, segmentIn, atStart, atEnd];
  let length = segmentIn;
  for (let i = 0; i < 40 && high - low > 1e-11 * segmentIn; i += 1) {
    length = high - (fHigh * (high - low)) / (fHigh - fLow);
    const f = angleAfter(length);
    if (Math.abs(f) < 1e-13) break;
    if (f > 0) {
      [low, fLow, fHigh] = [length, f, fHigh / 2];
    } else {
      [high, fHigh, fLow] = [length, f, fLow / 2];
    }
  }
  return length;
}

/** Square distance of the limb's end from the line of the string, inches; zero when it lies on it. */
export function leverIn(end: LimbEnd, pull: StringPull): number {
  return (pull.nockIn - end.yIn) * Math.cos(pull.angleRad) - end.xIn * Math.sin(pull.angleRad);
}

/** Half string from the nock to the tip, the stretch that lies on the limb included, inches. */
export function halfStringIn(bow: HalfBow, end: LimbEnd, pull: StringPull): number {
  const free = Math.hypot(end.xIn, end.yIn - pull.nockIn);
  return free + bow.limb.lengthIn - end.fromFadeIn;
}
