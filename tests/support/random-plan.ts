import type { LimbProfile, UnstrungShape } from '../../core/limb/limb-profile.ts';
import type { MeasuredLimb } from '../../core/limb/modelled-bow.ts';
import { type BowKind, fullStrip, type PlanBow, type PlanWish } from '../../core/limb/plan/bow.ts';
import { bambooPsi, glassPsi, longbow } from './sample-limbs.ts';

export const plainWish: PlanWish = {
  weightLbf: 52,
  weightSdLbf: 0.2,
  drawIn: 28,
  targetLbf: 45,
  tillerIn: 3 / 16,
  tillerTargetIn: 1 / 16,
  finishing: fullStrip,
  reserveLbf: 0.5,
  effectiveness: { mean: 1, sd: 0.12 },
};

export function plainBow(change: Partial<PlanBow> = {}): PlanBow {
  return {
    measured: longbow(),
    kind: 'longbow',
    construction: 'glass-laminated',
    bellyFacing: 'E-glass',
    backFacing: 'E-glass',
    made: { bellyGlassIn: 0.04, backGlassIn: 0.04 },
    maxSafeDrawIn: 30,
    section: 'measured',
    ...change,
  };
}

interface Sizes {
  lengthIn: readonly [number, number];
  fadeWidthIn: readonly [number, number];
  tipWidthIn: readonly [number, number];
  fadeThicknessIn: readonly [number, number];
  tipThicknessIn: readonly [number, number];
}

/** Invented, but each within what such bows have. */
const sizesOf: Record<BowKind, Sizes> = {
  longbow: {
    lengthIn: [25, 28],
    fadeWidthIn: [1.15, 1.35],
    tipWidthIn: [0.45, 0.6],
    fadeThicknessIn: [0.42, 0.48],
    tipThicknessIn: [0.26, 0.31],
  },
  hybrid: {
    lengthIn: [22, 25],
    fadeWidthIn: [1.3, 1.5],
    tipWidthIn: [0.5, 0.65],
    fadeThicknessIn: [0.36, 0.42],
    tipThicknessIn: [0.22, 0.26],
  },
  recurve: {
    lengthIn: [19, 22],
    fadeWidthIn: [1.6, 1.85],
    tipWidthIn: [0.6, 0.8],
    fadeThicknessIn: [0.28, 0.34],
    tipThicknessIn: [0.18, 0.22],
  },
};

/** A bow of a kind, its limbs a little unlike, with the work that is wanted of it. */
export function randomPlan(random: () => number, kind: BowKind): { bow: PlanBow; wish: PlanWish } {
  const between = ([low, high]: readonly [number, number]) => low + (high - low) * random();
  const sizes = sizesOf[kind];
  const lengthIn = between(sizes.lengthIn);
  const fadeWidth = between(sizes.fadeWidthIn);
  const tipWidth = between(sizes.tipWidthIn);
  const fadeThick = between(sizes.fadeThicknessIn);
  const tipThick = between(sizes.tipThicknessIn);
  const glassIn = between([0.038, 0.05]);
  const trap = random() < 0.3 ? between([0, 0.06]) : 0;
  const unstrung: UnstrungShape = {
    reflexIn: kind === 'longbow' ? between([-1, 1]) : between([0, 1.5]),
    recurveIn: kind === 'recurve' ? between([0.8, 2.6]) : 0,
    recurveFromIn: kind === 'recurve' ? 0.65 * lengthIn : 0,
  };
  const profile = (thicker: number): LimbProfile => {
    const places = [0, 3, 6, 10, 14, 18, 22].filter((at) => at < lengthIn - 1);
    return {
      lengthIn,
      stations: [...places, lengthIn].map((s) => {
        const part = s / lengthIn;
        const widthIn = fadeWidth + (tipWidth - fadeWidth) * part;
        return {
          fromFadeIn: s,
          bellyWidthIn: widthIn,
          backWidthIn: widthIn - trap,
          thicknessIn: thicker * (fadeThick + (tipThick - fadeThick) * part),
        };
      }),
      layup: { bellyGlassIn: glassIn, backGlassIn: glassIn, glassPsi, corePsi: bambooPsi },
      edgeRadiusIn: between([0.03, 0.06]),
      unstrung,
    };
  };
  const fadeIn = between([6, 8]);
  const fadeOffsetIn = between([-1, 0]);
  const limb = (thicker: number): MeasuredLimb => ({
    fadeIn,
    fadeOffsetIn,
    padDeg: kind === 'longbow' ? 0 : -4,
    profile: profile(thicker),
  });
  const weightLbf = between([40, 70]);
  const tillerTargetIn = random() < 0.5 ? 1 / 16 : 3 / 16;
  const most = Math.min(10, 0.2 * weightLbf);
  return {
    bow: plainBow({
      measured: { upper: limb(1), lower: limb(between([0.99, 1.01])), braceIn: between([7, 8]) },
      kind,
      made: { bellyGlassIn: glassIn, backGlassIn: glassIn },
    }),
    wish: {
      ...plainWish,
      weightLbf,
      targetLbf: weightLbf - between([2, most]),
      tillerTargetIn,
      tillerIn: tillerTargetIn + between([-3 / 16, 3 / 16]),
      effectiveness: { mean: between([0.85, 1.15]), sd: 0.12 },
    },
  };
}

/** The same bow held upside down. */
export function mirrored(bow: PlanBow, wish: PlanWish): { bow: PlanBow; wish: PlanWish } {
  const { upper, lower, braceIn } = bow.measured;
  return {
    bow: { ...bow, measured: { upper: lower, lower: upper, braceIn } },
    wish: { ...wish, tillerIn: -wish.tillerIn, tillerTargetIn: -wish.tillerTargetIn },
  };
}
