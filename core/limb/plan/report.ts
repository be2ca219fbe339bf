import { type Limb, limbs } from '../../../shared/bows.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import type { BowState } from '../bow.ts';
import type { LimbProfile } from '../limb-profile.ts';
import type { MeasuredBow } from '../modelled-bow.ts';
import { type BowRemoval, bowAfter } from '../predict-removal.ts';
import { converged, type Solved } from '../solved.ts';
import { forecastOf, tillerAfter } from './forecast.ts';
import { limbPlan } from './limb.ts';
import { tipWeightedMassLb } from './mass.ts';
import { type ModelState, modelState } from './model.ts';
import { notesOf, weightWithinLbf } from './notes.ts';
import { cutStations, narrowestOf, type Refusal, sizeRefusals, weakestOf } from './refusals.ts';
import { checkingSegments, type PlanSetting, workOf } from './setting.ts';
import { hingesOf, limbStrain, peakOf, strainAlong, strainPlaces } from './strain.ts';
import type { MethodPlan, StrainPlan, TillerPlan } from './types.ts';
import { type Amounts, limbWork, type UnitOfWork, withSandingOf } from './work.ts';

/** A tiller this near its target is on it, inches. */
const tillerWithinIn = 1 / 64;

/** Surface strain along both limbs of a drawn bow. */
function strainsOf(
  state: ModelState,
  profiles: Record<Limb, LimbProfile>,
  places: Record<Limb, readonly number[]>,
) {
  const { bow, meshes, drawn } = state;
  const one = (limb: Limb, half: BowState['upper'], leanRad: number) =>
    limbStrain(
      limb,
      profiles[limb],
      { half: bow[limb], mesh: meshes[limb], state: half, leanRad },
      places[limb],
    );
  return [
    ...one('upper', drawn.upper, drawn.tiltRad),
    ...one('lower', drawn.lower, -drawn.tiltRad),
  ];
}

function strainPlan(
  { bow, fine }: PlanSetting,
  after: ModelState,
  finished: Record<Limb, LimbProfile>,
): StrainPlan {
  const places = { upper: strainPlaces(finished.upper), lower: strainPlaces(finished.lower) };
  const present = { upper: bow.measured.upper.profile, lower: bow.measured.lower.profile };
  const before = strainsOf(fine, present, places);
  const then = strainsOf(after, finished, places);
  return {
    peakBefore: peakOf(before),
    peakAfter: peakOf(then),
    hinges: hingesOf(before, then),
    along: strainAlong(before, then),
  };
}

function tipMassOf({ bow, options }: PlanSetting, finished: Record<Limb, LimbProfile>) {
  const sum = (profileOf: (limb: Limb) => LimbProfile) =>
    limbs.reduce((mass, limb) => mass + tipWeightedMassLb(profileOf(limb), options.densities), 0);
  const beforeLb = sum((limb) => bow.measured[limb].profile);
  const afterLb = sum((limb) => finished[limb]);
  return { beforeLb, afterLb, changePart: afterLb / beforeLb - 1 };
}

/** The bow after the work, and after finishing, on the finer mesh. */
function statesOf(
  { bow, wish, fine }: PlanSetting,
  worked: MeasuredBow,
  finished: MeasuredBow,
): Solved<{ worked: ModelState; finished: ModelState }> {
  const model = { drawIn: wish.drawIn, segments: checkingSegments };
  const untouched = worked === bow.measured;
  const first = untouched ? converged(fine, 0, 0) : modelState(worked, model, fine);
  if (first.status !== 'converged') return first;
  const second = modelState(finished, model, first.value);
  if (second.status !== 'converged') return second;
  return converged(
    { worked: first.value, finished: second.value },
    Math.max(first.residual, second.residual),
    first.iterations + second.iterations,
  );
}

function tillerPlan(
  { wish, fine }: PlanSetting,
  worked: ModelState,
  finished: ModelState,
): TillerPlan {
  const after = ({ tillerIn }: ModelState) => tillerAfter(wish, tillerIn - fine.tillerIn);
  const afterIn = after(finished);
  return {
    nowIn: wish.tillerIn,
    targetIn: wish.tillerTargetIn,
    afterWorkIn: after(worked),
    afterIn,
    reached: Math.abs(afterIn - wish.tillerTargetIn) <= tillerWithinIn,
  };
}

/** Sizes that the limits look at, and those that they refuse. */
function sizesPlan({ bow, wish, options }: PlanSetting, removal: BowRemoval) {
  const works = limbs.map((limb) =>
    limbWork(limb, bow.measured[limb].profile, removal[limb], wish.finishing.meanThou),
  );
  const cuts = cutStations(works, options.limits);
  return {
    narrowest: narrowestOf(cuts),
    weakestSide: weakestOf(cuts),
    refusals: sizeRefusals(bow, works, options.limits),
  };
}

/**
 * A method with its amounts worked out, on the finer mesh.
 * @returns not converged or infeasible where the worked bow has no drawn shape
 */
export function methodPlan(
  setting: PlanSetting,
  method: PlanMethod,
  work: { unit: UnitOfWork; amounts: Amounts },
  refusals: readonly Refusal[],
): Solved<MethodPlan> {
  const { bow, wish, fine } = setting;
  const removal = workOf(setting, work.unit, work.amounts);
  const finishedBow = bowAfter(bow.measured, withSandingOf(removal, wish.finishing.meanThou));
  const { upper, lower } = work.amounts;
  const workedBow = upper + lower === 0 ? bow.measured : bowAfter(bow.measured, removal);
  const solved = statesOf(setting, workedBow, finishedBow);
  if (solved.status !== 'converged') return solved;
  const { worked, finished } = solved.value;
  const forecast = forecastOf(wish, {
    work: 1 - worked.weightLbf / fine.weightLbf,
    finished: 1 - finished.weightLbf / fine.weightLbf,
  });
  const profiles = { upper: finishedBow.upper.profile, lower: finishedBow.lower.profile };
  const sizes = sizesPlan(setting, removal);
  const parts = { setting, ...work, removal };
  const plan = {
    method,
    upper: limbPlan('upper', parts),
    lower: limbPlan('lower', parts),
    ...forecast,
    tiller: tillerPlan(setting, worked, finished),
    ...sizes,
    strain: strainPlan(setting, finished, profiles),
    tipMass: tipMassOf(setting, profiles),
    reachesTarget:
      forecast.afterFinishing.weightLbf <= wish.targetLbf + wish.reserveLbf + weightWithinLbf,
    refusals: [...refusals, ...sizes.refusals],
  };
  return converged({ ...plan, notes: notesOf(setting, plan) }, solved.residual, solved.iterations);
}
