import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { calliperSdIn, executionSd, type NextBite } from '../../limb/index.ts';
import { inputOf, methodOf } from '../plans/stored.ts';
import type { Workdown } from './workdown-of.ts';

type BowRemoval = Extract<NextBite, { stop: null }>['removal'];

/** Three standard deviations of two sides cut to a line and of two readings of a calliper, inches. */
const cutMarginIn = 3 * Math.hypot(Math.SQRT2 * executionSd.cutIn, Math.SQRT2 * calliperSdIn);
/** The same of one thickness read with a calliper (common practice), inches. */
const thicknessMarginIn = 3 * 0.003;

interface Place {
  limb: Limb;
  fromFadeIn: number;
}

const placeText = ({ limb, fromFadeIn }: Place) =>
  `${decimal(fromFadeIn, 1)} in from the fade of the ${limb} limb`;

/**
 * The sentence of the first limit of the shop that a bite could break, hand and calliper at their
 * worst (three standard deviations); null where it keeps them all. Limits count from the widths of
 * the plan and the glass as made.
 */
export function limitsOf(
  work: Workdown,
  { limits }: BenchPolicy,
  toCome: { mean: number; sd: number } | null,
): (removal: BowRemoval) => string | null {
  const { bow } = inputOf(work.plan);
  const planned = methodOf(work.plan);

  const thicknessIn = (limb: Limb, place: number) => {
    const at = planned[limb].stations.find((one) => Math.abs(one.fromFadeIn - place) < 1e-6);
    return (at?.presentThicknessIn ?? 0) + thicknessMarginIn;
  };

  const leastWidth = (place: Place, wasIn: number): { leastIn: number; why: string } => {
    const { limb, fromFadeIn } = place;
    const { lengthIn } = bow[limb];
    const side = limits.leastSideStiffness[bow.kind];
    const along =
      fromFadeIn >= limits.ratioFromFadeIn && fromFadeIn <= lengthIn - limits.ratioShortOfNockIn;
    const ratio = limits.leastWidthToThickness[bow.kind];
    const least = [
      {
        leastIn: Math.cbrt(side) * wasIn,
        why: `${Math.round(100 * side)} % of its side stiffness`,
      },
      {
        leastIn: limits.leastWidthIn[bow.kind],
        why: `the ${inchFraction(limits.leastWidthIn[bow.kind], 64)} in of a ${bow.kind}`,
      },
      {
        leastIn: along ? ratio * thicknessIn(limb, fromFadeIn) : 0,
        why: `${decimal(ratio, 1)} times its thickness`,
      },
    ];
    return least.reduce((most, one) => (one.leastIn > most.leastIn ? one : most));
  };

  const widthTrouble = (removal: BowRemoval, limb: Limb): string | null => {
    for (const [i, { fromFadeIn, leftIn, rightIn }] of removal[limb].cuts.entries()) {
      const [now, was] = [work.response[limb].stations[i], work.planResponse[limb].stations[i]];
      if (now === undefined || was === undefined || !(leftIn + rightIn > 0)) continue;
      const leftInAll = now.widthIn - leftIn - rightIn;
      const { leastIn, why } = leastWidth({ limb, fromFadeIn }, was.widthIn);
      if (leftInAll - cutMarginIn >= leastIn) continue;
      return `Width: ${decimal(leftInAll, 3)} in would be left ${placeText({ limb, fromFadeIn })}; with what a hand may miss by that is too near ${why} (${decimal(leastIn, 3)} in).`;
    }
    return null;
  };

  const glassTrouble = (removal: BowRemoval, limb: Limb): string | null => {
    const still = toCome?.mean ?? 0;
    const marginThou = 3 * Math.hypot(toCome?.sd ?? 0, 2 * executionSd.thinThou);
    for (const face of ['belly', 'back'] as const) {
      const { glassNowIn, glassMadeIn } = bow[face];
      const off = removal[limb][face === 'belly' ? 'bellyThou' : 'backThou'];
      if (glassNowIn === 0 || off === 0) continue;
      const leftThou = 1000 * glassNowIn - work.thinnedThou[limb][face] - off - still;
      const madeIn = Math.max(glassMadeIn ?? glassNowIn, glassNowIn);
      const leastIn = Math.max(limits.leastGlassIn, limits.leastGlassPart * madeIn);
      if ((leftThou - marginThou) / 1000 >= leastIn) continue;
      return `Glass: ${decimal(leftThou / 1000, 3)} in would be left on the ${face} of the ${limb} limb; with what a hand may miss by that is too near the ${decimal(leastIn, 3)} in that stay on.`;
    }
    return null;
  };

  return (removal) => {
    for (const limb of limbs) {
      const trouble = widthTrouble(removal, limb) ?? glassTrouble(removal, limb);
      if (trouble !== null) return trouble;
    }
    return null;
  };
}
