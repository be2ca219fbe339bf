import { decimal } from '../../shared/measure.ts';
import type { Reckoned } from '../../shared/plan-answer.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import { type BowResponse, bowResponse, type MeasuredBow, sandingThatFits } from '../limb/index.ts';

/** Part of the weight that a thousandth off both faces of both limbs takes. */
export function dropPerThouOf({ upper, lower }: BowResponse): number {
  return upper.perThouBothFaces.drop + lower.perThouBothFaces.drop;
}

/** Two places a limb: enough where only the faces are asked for. */
function facesResponse(bow: MeasuredBow, drawIn: number): BowResponse | null {
  const two = (lengthIn: number) => [0.2 * lengthIn, 0.6 * lengthIn];
  const placesIn = {
    upper: two(bow.upper.profile.lengthIn),
    lower: two(bow.lower.profile.lengthIn),
  };
  const solved = bowResponse(bow, { drawIn, placesIn });
  return solved.status === 'converged' ? solved.value : null;
}

function sentenceOf(fits: string, leftLbf: number, tillerLbf: number, reserveLbf: number): string {
  const left =
    leftLbf >= 0
      ? `A full strip leaves ${decimal(leftLbf)} lb above the target`
      : `A full strip alone goes ${decimal(-leftLbf)} lb under the target`;
  const needs = `tiller needs ${decimal(tillerLbf)} lb and the reserve ${decimal(reserveLbf)} lb`;
  return fits === 'full strip'
    ? `${left}; ${needs}: there is room for it.`
    : `${left}; ${needs}: sand the finish only, or agree another target.`;
}

/**
 * Which sanding leaves room for the rest, and what a thousandth takes. To be told before any
 * weight work: what a strip takes cannot be held to the half thousandth.
 * @param stripThou what a full strip takes off each face in this shop, thousandths
 */
export function sandingOf(
  input: PlanInput,
  bow: MeasuredBow,
  stripThou: number,
): { sanding: NonNullable<Reckoned['sanding']>; dropPerThou: number } | null {
  const { wish } = input;
  const response = facesResponse(bow, wish.drawIn);
  if (response === null) return null;
  const { sanding, leftLbf, tillerLbf } = sandingThatFits({
    response,
    weightLbf: wish.weightLbf,
    targetLbf: wish.targetLbf,
    tiller: { nowIn: wish.tillerIn, targetIn: wish.tillerTargetIn },
    reserveLbf: wish.reserveLbf,
    stripThou,
  });
  const sentence = sentenceOf(sanding, leftLbf, tillerLbf, wish.reserveLbf);
  return {
    sanding: { fits: sanding, leftLbf, tillerLbf, sentence },
    dropPerThou: dropPerThouOf(response),
  };
}
