import type { LimbProfile, UnstrungShape } from '../../core/limb/limb-profile.ts';
import type { MeasuredBow, MeasuredLimb } from '../../core/limb/modelled-bow.ts';
import { psiFromGpa } from '../../core/limb/units.ts';

/** Unidirectional E-glass in epoxy: S. W. Tsai, H. T. Hahn, "Introduction to Composite Materials", 1980. */
export const glassPsi = psiFromGpa(38.6);
/** Bamboo core laminations, common practice. */
export const bambooPsi = psiFromGpa(11);

export interface LimbWishes {
  lengthIn?: number;
  fadeWidthIn?: number;
  tipWidthIn?: number;
  fadeThicknessIn?: number;
  tipThicknessIn?: number;
  glassIn?: number;
  edgeRadiusIn?: number;
  /** Parallel from the fade to here, then tapering straight to the tip, inches. */
  parallelIn?: number;
  /** The glass, or the core, this many times as stiff as the handbooks say. */
  glassFactor?: number;
  coreFactor?: number;
  unstrung?: UnstrungShape;
}

/** A limb with straight tapers, measured at every fourth inch and at the tip. */
export function taperedLimb(wishes: LimbWishes = {}): LimbProfile {
  const lengthIn = wishes.lengthIn ?? 26;
  const taper = (from: number, to: number, s: number) => from + ((to - from) * s) / lengthIn;
  const parallelIn = wishes.parallelIn ?? 0;
  const tapering = (s: number) =>
    (Math.max(0, s - parallelIn) * lengthIn) / (lengthIn - parallelIn);
  const places = Array.from({ length: Math.ceil(lengthIn / 4) }, (_, i) => 4 * i);
  const glassIn = wishes.glassIn ?? 0.04;
  return {
    lengthIn,
    stations: [...places, lengthIn].map((s) => {
      const widthIn = taper(wishes.fadeWidthIn ?? 1.25, wishes.tipWidthIn ?? 0.5, tapering(s));
      return {
        fromFadeIn: s,
        bellyWidthIn: widthIn,
        backWidthIn: widthIn,
        thicknessIn: taper(wishes.fadeThicknessIn ?? 0.44, wishes.tipThicknessIn ?? 0.28, s),
      };
    }),
    layup: {
      bellyGlassIn: glassIn,
      backGlassIn: glassIn,
      glassPsi: glassPsi * (wishes.glassFactor ?? 1),
      corePsi: bambooPsi * (wishes.coreFactor ?? 1),
    },
    edgeRadiusIn: wishes.edgeRadiusIn ?? 0.0625,
    unstrung: wishes.unstrung ?? { reflexIn: 0, recurveIn: 0, recurveFromIn: 0 },
  };
}

/** A glass-laminated longbow of 66 in AMO, about 45 lb at 28 in. */
export function longbow(wishes: LimbWishes & { fadeIn?: number } = {}): MeasuredBow {
  const limb: MeasuredLimb = {
    fadeIn: wishes.fadeIn ?? 7,
    fadeOffsetIn: -0.5,
    padDeg: 0,
    profile: taperedLimb(wishes),
  };
  return { upper: limb, lower: limb, braceIn: 7 };
}
