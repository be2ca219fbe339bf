import type { WeightStory } from '../../../../shared/contract/order-card.ts';
import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import { decimal, inchFraction } from '../../../../shared/measure.ts';
import type { PlanSummary } from '../../../../shared/plan-record.ts';
import { planMethodLabels } from '../../../../shared/weight-plan.ts';
import type { StripFacts } from '../../../../shared/weight-strip.ts';
import { momentText } from '../../../parts/days.ts';

/** The newest plan that was not struck out; they come newest first. */
export function standingPlan(plans: readonly PlanSummary[]): PlanSummary | null {
  return plans.find(({ struckReason }) => struckReason === null) ?? null;
}

/** How the section stands while it is folded. */
export function planState({ plans }: Pick<OrderDetail, 'plans'>): string {
  const plan = standingPlan(plans);
  if (plan === null) return plans.length === 0 ? 'none accepted yet' : 'struck out, none accepted';
  const method = planMethodLabels[plan.method].toLowerCase();
  const stop = `stop at ${decimal(plan.stopAtLbf)} lb @ ${decimal(plan.drawIn, 4)}"`;
  return plan.fits.ok ? `${method}, ${stop}` : `${method}, no longer fits`;
}

export function planFacts(plan: PlanSummary): (readonly [string, string])[] {
  const [low, high] = plan.bandLbf;
  const at = `@ ${decimal(plan.drawIn, 4)}"`;
  const tiller = inchFraction(plan.tillerTargetIn, 64);
  return [
    ['Plan', `${plan.version}, ${planMethodLabels[plan.method].toLowerCase()}`],
    ['From and to', `${decimal(plan.weightLbf)} lb to ${decimal(plan.targetLbf)} lb ${at}`],
    ['Stop at', `${plan.stopAtLbf.toFixed(1)} lb ${at}`],
    [
      'Forecast',
      `${plan.forecastLbf.toFixed(1)} lb ${at} when finished, 80 % between ${low.toFixed(1)} and ${high.toFixed(1)}`,
    ],
    ['Tiller wanted', tiller === '0' ? 'even' : `${tiller}"`],
    ['Sanding', plan.sanding],
    ['Accepted', `${momentText(plan.acceptedAt)}, ${plan.personName}`],
    ['Big drop because', plan.confirmedBecause],
  ];
}

/** The order's weights with what the plan adds to them. */
export function stripOf(plan: PlanSummary, weights: WeightStory): StripFacts {
  const isSameDraw = weights.drawIn === null || weights.drawIn === plan.drawIn;
  const [low, high] = plan.bandLbf;
  return {
    arrivalLbf: isSameDraw ? weights.arrivalLbf : null,
    nowLbf: isSameDraw ? weights.nowLbf : null,
    targetLbf: plan.targetLbf,
    stopBandLbf: [plan.stopAtLbf - plan.reserveLbf, plan.stopAtLbf],
    forecastLbf: [low, plan.forecastLbf, high],
  };
}
