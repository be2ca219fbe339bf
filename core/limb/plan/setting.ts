import type { LimbProfile } from '../limb-profile.ts';
import { sizesOf } from '../limb-profile.ts';
import { type BowRemoval, bowAfter } from '../predict-removal.ts';
import { converged, failed, type Solved } from '../solved.ts';
import type { PlanBow, PlanWish } from './bow.ts';
import { type ModelState, modelState } from './model.ts';
import type { TrialResult } from './tiller-share.ts';
import type { PlanOptions } from './types.ts';
import {
  type Amounts,
  type CutShape,
  noAmounts,
  type UnitOfWork,
  withSandingOf,
  workOn,
} from './work.ts';

/** Enough for ratios inside the solve; the result is checked on the finer one. */
export const solvingSegments = 30;
export const checkingSegments = 60;

/** All that the methods of one plan share: the bow as it is, modelled coarse and fine. */
export interface PlanSetting {
  bow: PlanBow;
  wish: PlanWish;
  options: PlanOptions;
  coarse: ModelState;
  fine: ModelState;
  /** After finishing alone, over the bow as it is. */
  atNone: TrialResult;
}

const noWork: UnitOfWork = { sideIn: 0, bellyThou: 0, backThou: 0 };

export type Common = Omit<PlanSetting, 'atNone'>;

/** The work that so many units are, finishing not included. */
export function workOf({ bow, options }: Common, unit: UnitOfWork, amounts: Amounts): BowRemoval {
  const { upper, lower } = bow.measured;
  return {
    upper: workOn(upper.profile, unit, amounts.upper, options),
    lower: workOn(lower.profile, unit, amounts.lower, options),
  };
}

/** Weight and tiller after work and finishing, on the coarse mesh; null where there is no answer. */
export function trial(common: Common, unit: UnitOfWork, amounts: Amounts): TrialResult | null {
  const { bow, wish, coarse } = common;
  const removal = withSandingOf(workOf(common, unit, amounts), wish.finishing.meanThou);
  const after = modelState(
    bowAfter(bow.measured, removal),
    { drawIn: wish.drawIn, segments: solvingSegments },
    coarse,
  );
  if (after.status !== 'converged') return null;
  return {
    weightPart: after.value.weightLbf / coarse.weightLbf,
    tillerMoveIn: after.value.tillerIn - coarse.tillerIn,
  };
}

/** @returns not converged or infeasible where the bow as it is, or sanded, has no modelled state */
export function planSetting(
  bow: PlanBow,
  wish: PlanWish,
  options: PlanOptions,
): Solved<PlanSetting> {
  const { drawIn } = wish;
  const coarse = modelState(bow.measured, { drawIn, segments: solvingSegments });
  if (coarse.status !== 'converged') return coarse;
  const fineOptions = { drawIn, segments: checkingSegments };
  const fine = modelState(bow.measured, fineOptions, coarse.value);
  if (fine.status !== 'converged') return fine;
  const common = { bow, wish, options, coarse: coarse.value, fine: fine.value };
  const atNone = trial(common, noWork, noAmounts);
  if (atNone === null) {
    const why = 'The bow as it would be after sanding has no drawn shape.';
    return failed('not-converged', why, coarse.residual, coarse.iterations);
  }
  return converged({ ...common, atNone }, coarse.residual, coarse.iterations);
}

/** Part of a width or thickness that the search never goes below; far under any limit. */
const leastPart = 0.4;
/** Part of the glass of a face that the search never goes below. */
const leastGlassPart = 0.2;
/** A section stays larger than its two edge radii by this factor. */
const overEdges = 1.1;

/** Full cut on each side that leaves something at every place, inches. */
function mostSideIn(profile: LimbProfile, shape: CutShape): number {
  const { lengthIn, edgeRadiusIn } = profile;
  const sizes = sizesOf(profile);
  const carriedIn = Math.max(shape.carriedPart * lengthIn, shape.fullFromIn + 1);
  const endIn = lengthIn - shape.endsShortIn;
  let most = Number.POSITIVE_INFINITY;
  for (let s = shape.fromIn; s < endIn; s += 0.5) {
    const part = s <= carriedIn ? 1 : Math.min(1, (1.5 * (endIn - s)) / (endIn - carriedIn));
    const { bellyWidthIn, backWidthIn } = sizes(s);
    const width = Math.min(bellyWidthIn, backWidthIn);
    const leave = Math.max(leastPart * width, 2 * overEdges * edgeRadiusIn);
    most = Math.min(most, Math.max(0, (width - leave) / 2 / part));
  }
  return most;
}

/** Thousandths that a face can lose before the search has gone far too far. */
function mostFaceThou(profile: LimbProfile, face: 'bellyGlassIn' | 'backGlassIn', sanding: number) {
  const glass = profile.layup[face];
  if (glass > 0) return Math.max(0, 1000 * glass * (1 - leastGlassPart) - sanding);
  const thinnest = Math.min(...profile.stations.map((station) => station.thicknessIn));
  const leave = Math.max(leastPart * thinnest, 2 * overEdges * profile.edgeRadiusIn);
  return Math.max(0, (1000 * (thinnest - leave)) / 2 - sanding);
}

/** Most units that a limb has material for. */
export function mostUnits(
  { wish, options }: Common,
  profile: LimbProfile,
  unit: UnitOfWork,
): number {
  const sanding = wish.finishing.meanThou;
  const by = (there: number, perUnit: number) =>
    perUnit > 0 ? there / perUnit : Number.POSITIVE_INFINITY;
  return Math.min(
    by(mostSideIn(profile, options.cutShape), unit.sideIn),
    by(mostFaceThou(profile, 'bellyGlassIn', sanding), unit.bellyThou),
    by(mostFaceThou(profile, 'backGlassIn', sanding), unit.backThou),
  );
}
