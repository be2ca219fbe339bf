/** What the mechanics need to know of a limb along its length, from the fade (0) to the tip. */
export interface LimbCurve {
  /** Fade to tip along the limb, inches. */
  lengthIn: number;
  /** Places where the curves below may change their law, rising, 0 and the tip included, inches. */
  breaksIn: readonly number[];
  /** Bending stiffness at a distance from the fade, lbf in2. It may fall to zero at the tip. */
  eiAt(fromFadeIn: number): number;
  /** Curvature of the unstrung limb, 1/in; positive bends towards the archer, a recurve is negative. */
  curvatureAt(fromFadeIn: number): number;
}

/**
 * One limb on its half of the riser. Origin at the throat of the grip, x along the bow towards
 * the tip, y towards the archer. Rigid from the throat to the fade.
 */
export interface HalfBow {
  /** Throat to fade along the bow, inches. */
  fadeIn: number;
  /** How far the fade lies towards the archer from the throat, inches; usually negative or zero. */
  fadeOffsetIn: number;
  /** Angle of the limb at the fade to the x axis, radian; positive towards the archer. */
  padAngleRad: number;
  limb: LimbCurve;
}
