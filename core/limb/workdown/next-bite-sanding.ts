import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Sanding } from '../../../shared/weight-plan.ts';
import { biteRules } from './next-bite-forecast.ts';
import type { BowResponse } from './next-bite-response.ts';

const { allowances } = usualBenchPolicy;

/** Off each face by the sanding after the weight work, thousandths (common practice). */
export const sandingAllowances: Record<Sanding, { mean: number; sd: number }> = {
  'full strip': { mean: allowances['full strip'].meanThou, sd: allowances['full strip'].sdThou },
  'final sanding only': {
    mean: allowances['final sanding only'].meanThou,
    sd: allowances['final sanding only'].sdThou,
  },
};

export interface SandingQuestion {
  response: BowResponse;
  weightLbf: number;
  targetLbf: number;
  /** Upper minus lower at the fades, inches, now and as it should be. */
  tiller: { nowIn: number; targetIn: number };
  reserveLbf?: number;
  /** What a full strip takes off each face in this shop, thousandths; common practice by default. */
  stripThou?: number;
}

export interface SandingAnswer {
  /** The most that fits. */
  sanding: Sanding;
  /** What a full strip leaves above the target, lbf; negative: it alone goes under. */
  leftLbf: number;
  /** What it takes to bring tiller in by thinning the stronger limb, lbf. */
  tillerLbf: number;
}

/**
 * Whether a small reduction leaves room for a full strip. What a strip takes cannot be held to the
 * half thousandth, so where it would leave less than tiller and the reserve need, the bow gets the
 * final sanding only, or the customer another target: no care at the bench makes up for it.
 * @throws ShopError BAD_INPUT for a weight or target of 0 or less
 */
export function sandingThatFits(question: SandingQuestion): SandingAnswer {
  const { response, weightLbf, targetLbf, tiller, reserveLbf = biteRules.reserveLbf } = question;
  const { stripThou = sandingAllowances['full strip'].mean } = question;
  if (!(weightLbf > 0 && targetLbf > 0)) {
    const sentence = 'The weight and the target must be more than 0 lb.';
    throw new ShopError('BAD_INPUT', sentence, { targetLbf: sentence });
  }
  const [upper, lower] = [response.upper.perThouBothFaces, response.lower.perThouBothFaces];
  const leftLbf = weightLbf * Math.exp(-(upper.drop + lower.drop) * stripThou) - targetLbf;
  // Upper minus lower is too large where the lower limb is the stronger one.
  const { drop, tillerIn } = tiller.nowIn > tiller.targetIn ? lower : upper;
  const offIn = Math.abs(tiller.nowIn - tiller.targetIn);
  const tillerLbf = Math.abs((offIn * drop * weightLbf) / tillerIn);
  const fits = leftLbf - tillerLbf > reserveLbf;
  return { sanding: fits ? 'full strip' : 'final sanding only', leftLbf, tillerLbf };
}
