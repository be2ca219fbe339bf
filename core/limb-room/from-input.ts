import type { Limb } from '../../shared/bows.ts';
import type { PlanFaceInput, PlanInput } from '../../shared/plan-input.ts';
import {
  type MeasuredLimb,
  type PlanBow,
  type PlanLimits,
  type PlanOptions,
  type PlanWish,
  psiFromGpa,
} from '../limb/index.ts';

/** Glass on one face alone is no laminate to the plan, which then asks nothing of the other face. */
function constructionOf({ bow }: PlanInput): PlanBow['construction'] {
  const both = bow.back.glassNowIn > 0 && bow.belly.glassNowIn > 0;
  return bow.construction === 'glass-laminated' && !both ? 'other' : bow.construction;
}

function measuredLimb({ bow }: PlanInput, limb: Limb): MeasuredLimb {
  const { fadeIn, fadeOffsetIn, padDeg, lengthIn, stations } = bow[limb];
  return {
    fadeIn,
    fadeOffsetIn,
    padDeg,
    profile: {
      lengthIn,
      stations,
      layup: {
        bellyGlassIn: bow.belly.glassNowIn,
        backGlassIn: bow.back.glassNowIn,
        glassPsi: psiFromGpa(bow.glassGpa),
        corePsi: psiFromGpa(bow.coreGpa),
      },
      edgeRadiusIn: bow.edgeRadiusIn,
      unstrung: {
        reflexIn: bow.reflexIn,
        recurveIn: bow.recurveIn,
        recurveFromIn: bow.recurveFromPart * lengthIn,
      },
    },
  };
}

const madeOf = ({ glassMadeIn, glassNowIn }: PlanFaceInput) => glassMadeIn ?? glassNowIn;

/** The bow of an input as the plan takes it. */
export function planBowOf(input: PlanInput): PlanBow {
  const { bow } = input;
  const known = bow.back.glassMadeIn !== null || bow.belly.glassMadeIn !== null;
  return {
    measured: {
      upper: measuredLimb(input, 'upper'),
      lower: measuredLimb(input, 'lower'),
      braceIn: bow.braceIn,
    },
    kind: bow.kind,
    construction: constructionOf(input),
    bellyFacing: bow.belly.facing,
    backFacing: bow.back.facing,
    made: known ? { bellyGlassIn: madeOf(bow.belly), backGlassIn: madeOf(bow.back) } : null,
    maxSafeDrawIn: bow.maxSafeDrawIn,
    section: bow.section,
    overFinish: bow.surface === 'over-finish',
  };
}

export function planWishOf({ wish }: PlanInput): PlanWish {
  return {
    weightLbf: wish.weightLbf,
    weightSdLbf: wish.weightSdLbf,
    drawIn: wish.drawIn,
    targetLbf: wish.targetLbf,
    tillerIn: wish.tillerIn,
    tillerTargetIn: wish.tillerTargetIn,
    finishing: { meanThou: wish.allowanceMeanThou, sdThou: wish.allowanceSdThou },
    reserveLbf: wish.reserveLbf,
    effectiveness: { mean: wish.effectivenessMean, sd: wish.effectivenessSd },
  };
}

export function planOptionsOf({ choices }: PlanInput, limits: PlanLimits): Partial<PlanOptions> {
  const { cutShape, face, methods } = choices;
  return { limits, cutShape, face, methods };
}
