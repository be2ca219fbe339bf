import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import { bans, unitOf } from './methods.ts';
import { sizeRefusals } from './refusals.ts';
import { mostUnits, type PlanSetting, trial } from './setting.ts';
import type { TrialResult } from './tiller-share.ts';
import type { LowestWeight, MethodOutcome } from './types.ts';
import { type Amounts, limbWork, noAmounts, type UnitOfWork, workOn } from './work.ts';

/** Most units on one limb that no limit forbids; null when sanding alone breaks one. */
function allowedUnits(setting: PlanSetting, limb: Limb, unit: UnitOfWork): number | null {
  const { bow, wish, options } = setting;
  const { profile } = bow.measured[limb];
  const broken = (amount: number) => {
    const removal = workOn(profile, unit, amount, options);
    const work = limbWork(limb, profile, removal, wish.finishing.meanThou);
    return sizeRefusals(bow, [work], options.limits).length > 0;
  };
  if (broken(0)) return null;
  let [low, high] = [0, mostUnits(setting, profile, unit)];
  if (!(high > 0 && Number.isFinite(high))) return 0;
  if (!broken(high)) return high;
  for (let i = 0; i < 30; i += 1) {
    const middle = (low + high) / 2;
    if (broken(middle)) high = middle;
    else low = middle;
  }
  return low;
}

/** Both limbs as far as they go, the weaker one held back so that the tiller comes to its target. */
function farthest(setting: PlanSetting, unit: UnitOfWork, most: Amounts): TrialResult | null {
  const { wish } = setting;
  const goal = (wish.tillerTargetIn - wish.tillerIn) / wish.effectiveness.mean;
  const full = trial(setting, unit, most);
  if (full === null) return null;
  const heldBack: Limb = full.tillerMoveIn > goal ? 'upper' : 'lower';
  let [low, high] = [0, 1];
  let best = full;
  for (let i = 0; i < 12; i += 1) {
    const part = (low + high) / 2;
    const at = trial(setting, unit, { ...most, [heldBack]: part * most[heldBack] });
    if (at === null) return null;
    best = at;
    const stillTooWeak = heldBack === 'upper' ? at.tillerMoveIn > goal : at.tillerMoveIn < goal;
    if (stillTooWeak) high = part;
    else low = part;
  }
  return best;
}

function reach(setting: PlanSetting, method: PlanMethod): number | null {
  const { bow, wish, options } = setting;
  const weight = ({ weightPart }: TrialResult) =>
    wish.weightLbf * (1 - (1 - weightPart) * wish.effectiveness.mean);
  if (bans(bow, method, options.limits).length > 0) return null;
  const unit = unitOf(method, setting);
  const units = limbs.map((limb) => allowedUnits(setting, limb, unit));
  const [upper, lower] = units;
  if (upper === undefined || upper === null || lower === undefined || lower === null) return null;
  const most: Amounts = method === 'sanding' ? noAmounts : { upper, lower };
  const nothing = most.upper === 0 && most.lower === 0;
  const at = nothing ? setting.atNone : farthest(setting, unit, most);
  return at === null ? null : weight(at);
}

/**
 * The lowest weight after finishing that no limit forbids, and why it goes no lower. lbf.
 * Asked only where no method reaches the target.
 */
export function lowestWeight(
  setting: PlanSetting,
  outcomes: readonly MethodOutcome[],
): LowestWeight {
  const { wish, options } = setting;
  const floorLbf = wish.weightLbf * (1 - options.limits.refuseDropPart);
  let lowest: { weightLbf: number; method: PlanMethod | null } = {
    weightLbf: wish.weightLbf,
    method: null,
  };
  for (const { method } of outcomes) {
    const weightLbf = reach(setting, method);
    if (weightLbf === null) continue;
    const held = Math.max(weightLbf, floorLbf);
    if (lowest.method === null || held < lowest.weightLbf - 1e-9)
      lowest = { weightLbf: held, method };
  }
  const why = outcomes.flatMap(({ method, plan }) => {
    if (plan.status !== 'converged') return [`${method}: ${plan.why}`];
    const { refusals, reachesTarget, afterFinishing } = plan.value;
    if (refusals.length > 0) return refusals.map(({ sentence }) => sentence);
    if (reachesTarget) return [];
    return [`Sanding alone ends at ${decimal(afterFinishing.weightLbf)} lb.`];
  });
  return { ...lowest, why: [...new Set(why)] };
}
