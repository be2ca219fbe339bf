import type { PlanMethod } from '../../../shared/weight-plan.ts';
import { failed, type Solved } from '../solved.ts';
import { modelledPartFor } from './forecast.ts';
import { bans, unitOf } from './methods.ts';
import { weightWithinLbf } from './notes.ts';
import type { Refusal } from './refusals.ts';
import { methodPlan } from './report.ts';
import { mostUnits, type PlanSetting, trial } from './setting.ts';
import { shareOut, type TillerShare } from './tiller-share.ts';
import type { MethodPlan, TotalDrop } from './types.ts';
import { noAmounts } from './work.ts';

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

/** One way worked out on a bow whose states are solved. */
export function planMethod(
  setting: PlanSetting,
  method: PlanMethod,
  drop: TotalDrop,
): Solved<MethodPlan> {
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
