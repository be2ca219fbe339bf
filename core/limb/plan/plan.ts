import { converged, failed, type Solved } from '../solved.ts';
import { type PlanBow, type PlanWish, refuseOddBow, refuseOddWish } from './bow.ts';
import { totalDrop } from './drop.ts';
import { modelledPartFor } from './forecast.ts';
import { defaultLimits, refuseOddLimits } from './limits.ts';
import { lowestWeight } from './lowest.ts';
import { defaultDensities } from './mass.ts';
import { bans, methodsAsked, unitOf } from './methods.ts';
import { weightWithinLbf } from './notes.ts';
import type { Refusal } from './refusals.ts';
import { methodPlan } from './report.ts';
import { mostUnits, type PlanSetting, planSetting, trial } from './setting.ts';
import { shareOut, type TillerShare } from './tiller-share.ts';
import type { MethodOutcome, MethodPlan, PlanOptions, ReductionPlan, TotalDrop } from './types.ts';
import { defaultCutShape, noAmounts, type PlanMethod, refuseOddShape } from './work.ts';

export const defaultPlanOptions: PlanOptions = {
  limits: defaultLimits,
  cutShape: defaultCutShape,
  densities: defaultDensities,
  methods: null,
  unknownSectionSd: 0.25,
};

/** Common practice: half a pound stays on for the last strokes. */
export const defaultReserveLbf = 0.5;

const outOfMaterial: Refusal = {
  limit: 'material',
  sentence: 'Material: the limbs have not enough of it to reach the target this way.',
};
const nothingToTake: Refusal = {
  limit: 'nothing-to-take',
  sentence: 'Nothing to take: sanding alone brings the bow to its target.',
};

interface Share extends TillerShare {
  refusals: Refusal[];
}

/** Amounts that bring the bow, finished, to target and reserve and its tiller to where it belongs. */
function shareOf(setting: PlanSetting, method: PlanMethod, unit: ReturnType<typeof unitOf>) {
  const { bow, wish, atNone } = setting;
  const none: Share = { amounts: noAmounts, outcome: 'weight-only', refusals: [] };
  if (method === 'sanding') return none;
  const goal = {
    weightPart: modelledPartFor(wish, wish.targetLbf + wish.reserveLbf),
    tillerMoveIn: (wish.tillerTargetIn - wish.tillerIn) / wish.effectiveness.mean,
  };
  if (atNone.weightPart <= goal.weightPart) return { ...none, refusals: [nothingToTake] };
  const most = {
    upper: mostUnits(setting, bow.measured.upper.profile, unit),
    lower: mostUnits(setting, bow.measured.lower.profile, unit),
  };
  if (!(most.upper > 0 && most.lower > 0)) return { ...none, refusals: [outOfMaterial] };
  const share = shareOut({ atNone, most, trial: (amounts) => trial(setting, unit, amounts) }, goal);
  if (share === null) return null;
  return { ...share, refusals: share.outcome === 'out-of-material' ? [outOfMaterial] : [] };
}

function planMethod(setting: PlanSetting, method: PlanMethod, drop: TotalDrop): Solved<MethodPlan> {
  const unit = unitOf(method, setting);
  const share = shareOf(setting, method, unit);
  if (share === null) {
    const why = 'No amount was found that brings weight and tiller to their targets together.';
    return failed('not-converged', why, 0, 0);
  }
  const refusals = [...bans(setting.bow, method, setting.options.limits), ...share.refusals];
  if (drop.level === 'refused' && drop.sentence !== null) {
    refusals.push({ limit: 'total-drop', sentence: drop.sentence });
  }
  const plan = methodPlan(setting, method, { unit, amounts: share.amounts }, refusals);
  if (plan.status !== 'converged') return plan;
  const worked = share.amounts.upper + share.amounts.lower > 0;
  const missLbf = Math.abs(plan.value.afterWork.weightLbf - plan.value.aimLbf);
  if (worked && share.outcome !== 'out-of-material' && !(missLbf <= weightWithinLbf)) {
    const why = 'The finer mesh does not bear out the amounts found.';
    return failed('not-converged', why, missLbf, plan.iterations);
  }
  return plan;
}

/** A bow of unknown section is forecast with the wider spread at least. */
function widened(bow: PlanBow, wish: PlanWish, unknownSectionSd: number): PlanWish {
  if (bow.section === 'measured') return wish;
  const { mean, sd } = wish.effectiveness;
  return { ...wish, effectiveness: { mean, sd: Math.max(sd, unknownSectionSd) } };
}

/**
 * The ways to bring a bow down to its target, laid side by side: sanding alone, then narrowing,
 * thinning both faces, half of each, or scraping the belly of an all-wood bow. Each way but sanding
 * is solved so that the bow ends at target and reserve after finishing, shared between the limbs so
 * that the tiller comes to its target. Inches, lbf, thousandths where named.
 *
 * Limits, allowances and the shape of the cut are common practice, all of them settings. A way
 * that breaks a limit is shown with its figures and the limit that refuses it.
 * @returns not converged or infeasible with a sentence where the bow itself has no modelled state;
 * a single way without an answer says so in its own outcome
 * @throws ShopError BAD_INPUT, one sentence naming what to put right: a target above the present
 * weight, a draw past the maximum safe draw, sizes zero, negative or out of order, thinning asked
 * for alone on a facing that forbids it, the back of an all-wood bow to be thinned
 */
export function planReduction(
  bow: PlanBow,
  wish: PlanWish,
  given: Partial<PlanOptions> = {},
): Solved<ReductionPlan> {
  const options = { ...defaultPlanOptions, ...given };
  refuseOddBow(bow);
  refuseOddWish(bow, wish);
  refuseOddLimits(options.limits);
  refuseOddShape(options.cutShape, bow.measured);
  const asked = methodsAsked(bow, options.methods);
  const setting = planSetting(bow, widened(bow, wish, options.unknownSectionSd), options);
  if (setting.status !== 'converged') return setting;
  const drop = totalDrop(wish, options.limits);
  const methods: MethodOutcome[] = asked.map((method) => ({
    method,
    plan: planMethod(setting.value, method, drop),
  }));
  const first = methods.find(
    ({ plan }) =>
      plan.status === 'converged' && plan.value.reachesTarget && plan.value.refusals.length === 0,
  );
  const recommended = first?.method ?? null;
  const lowest = recommended === null ? lowestWeight(setting.value, methods) : null;
  return converged({ drop, methods, recommended, lowest }, setting.residual, setting.iterations);
}
