import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { PlanWishInput } from '../../../shared/plan-input.ts';
import type { PlanGap } from '../../../shared/plan-record.ts';
import { tillerRange } from '../../../shared/tiller-text.ts';
import type { LearnedFigure, Sanding } from '../../../shared/weight-plan.ts';
import { routeOf } from '../orders/order-json.ts';
import type { StartRecords } from './records.ts';
import { usualSlopes, weighingSpreadOf } from './weighing-spread.ts';

export interface Figures {
  allowances: Record<Sanding, LearnedFigure>;
  effectiveness: LearnedFigure;
}

/** Present weight where nobody weighed the bow, lbf; a usual bow. */
const usualWeightLbf = 50;
/** A what-if without a target looks a tenth lower. */
const usualTargetPart = 0.9;
const unweighedSdLbf = 2;

/** Split fingers want the upper limb the weaker; three under, both alike (common practice). */
const usualTillerIn = { split: 1 / 8, 'three-under': 0, unknown: 1 / 16 } as const;

const atHalf = (lbf: number) => Math.round(2 * lbf) / 2;

function weightOf(records: StartRecords, gaps: PlanGap[]) {
  const { reading, drawIn, resolutionLbf, bow } = records;
  if (reading === null || records.weightLbf === null) {
    const marked = bow.marked_weight_lbf;
    const from = marked === null ? 'a usual weight' : 'the weight marked on it';
    gaps.push({
      field: 'wish.weightLbf',
      sentence: `Not weighed in AMO at ${decimal(drawIn, 4)}": ${from} is taken.`,
      fix: 'weighings',
    });
    return { weightLbf: marked ?? usualWeightLbf, weightSdLbf: unweighedSdLbf };
  }
  const { weightLbf } = records;
  const { totalLbf } = weighingSpreadOf(reading, drawIn, resolutionLbf, usualSlopes(weightLbf));
  return {
    weightLbf: Number(weightLbf.toFixed(3)),
    weightSdLbf: Number(totalLbf.toFixed(3)),
  };
}

function targetOf({ order }: StartRecords, weightLbf: number, gaps: PlanGap[]): number {
  const target = order?.target_weight_lbf ?? null;
  if (target !== null) return target;
  const taken = Math.max(1, atHalf(usualTargetPart * weightLbf));
  if (order !== null) {
    gaps.push({
      field: 'wish.targetLbf',
      sentence: `No target weight on the order: ${decimal(taken)} lb taken to begin with.`,
      fix: 'order',
    });
  }
  return taken;
}

function tillerTargetOf({ order, shootingStyle }: StartRecords, gaps: PlanGap[]): number {
  const text = order?.tiller_target ?? '';
  const asked = tillerRange(text);
  if (asked !== null) return (asked.fromIn + asked.toIn) / 2;
  const taken = usualTillerIn[shootingStyle];
  const why = text.trim() === '' ? 'Tiller wanted not said' : `"${text}" names no tiller in inches`;
  const style = shootingStyle === 'unknown' ? 'nobody knows how it is shot' : shootingStyle;
  const sentence = `${why}: ${inchFraction(taken, 64)} in taken as usual (${style}).`;
  gaps.push({ field: 'wish.tillerTargetIn', sentence: sentence.slice(0, 300), fix: 'order' });
  return taken;
}

function tillerNowOf({ tillerIn }: StartRecords, gaps: PlanGap[]): number {
  if (tillerIn !== null) return tillerIn;
  gaps.push({
    field: 'wish.tillerIn',
    sentence: 'Tiller now not read: taken as even.',
    fix: 'weighings',
  });
  return 0;
}

/** A bow that comes to strip & sand is stripped; one that does not is sanded only. */
function sandingOf({ order }: StartRecords): Sanding {
  const strips = order === null || routeOf(order).includes('strip-sand');
  return strips ? 'full strip' : 'final sanding only';
}

/** What is wished of the bow, from its records and the shop's own figures. */
export function startWish(
  records: StartRecords,
  policy: BenchPolicy,
  { allowances, effectiveness }: Figures,
): { wish: PlanWishInput; gaps: PlanGap[] } {
  const gaps: PlanGap[] = [];
  const weight = weightOf(records, gaps);
  const sanding = sandingOf(records);
  const { mean, sd } = allowances[sanding];
  const wish: PlanWishInput = {
    ...weight,
    drawIn: records.drawIn,
    targetLbf: targetOf(records, weight.weightLbf, gaps),
    tillerIn: tillerNowOf(records, gaps),
    tillerTargetIn: tillerTargetOf(records, gaps),
    sanding,
    allowanceMeanThou: mean,
    allowanceSdThou: sd,
    reserveLbf: policy.reserveLbf,
    effectivenessMean: effectiveness.mean,
    effectivenessSd: effectiveness.sd,
  };
  return { wish, gaps };
}
