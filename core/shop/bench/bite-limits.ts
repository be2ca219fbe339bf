import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import { type Limb, limbs } from '../../../shared/bows.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import type { MethodAnswer } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import { calliperSdIn, executionSd, type NextBite } from '../../limb/index.ts';
import { inputOf, methodOf } from '../plans/stored.ts';
import type { Workdown } from './workdown-of.ts';

type BowRemoval = Extract<NextBite, { stop: null }>['removal'];

/** What limits are held against. */
interface Held {
  work: Workdown;
  bow: PlanInput['bow'];
  planned: MethodAnswer;
  limits: BenchPolicy['limits'];
  /** Sanding that is still to come, thousandths a face. */
  toCome: { mean: number; sd: number };
}

/** Three standard deviations of two sides cut to a line and of two readings of a calliper, inches. */
const cutMarginIn = 3 * Math.hypot(Math.SQRT2 * executionSd.cutIn, Math.SQRT2 * calliperSdIn);
/** The same of one thickness read with a calliper (common practice), inches. */
const thicknessMarginIn = 3 * 0.003;
/** Bites of thinning that a job has at the most, each with its own miss. */
const thinningBites = 4;

function thicknessAt({ planned }: Held, limb: Limb, fromFadeIn: number): number {
  const { stations } = planned[limb];
  const at = stations.find((one) => Math.abs(one.fromFadeIn - fromFadeIn) < 1e-6);
  return (at?.presentThicknessIn ?? 0) + thicknessMarginIn;
}

/** Least width that may be left at a place, inches, by the limit that asks most. */
function leastWidth(held: Held, limb: Limb, fromFadeIn: number, wasIn: number) {
  const { bow, limits } = held;
  const { kind } = bow;
  const [side, ratio] = [limits.leastSideStiffness[kind], limits.leastWidthToThickness[kind]];
  const outerIn = bow[limb].lengthIn - limits.ratioShortOfNockIn;
  const isAlong = fromFadeIn >= limits.ratioFromFadeIn && fromFadeIn <= outerIn;
  const least = [
    { leastIn: Math.cbrt(side) * wasIn, why: `${Math.round(100 * side)} % of its side stiffness` },
    {
      leastIn: limits.leastWidthIn[kind],
      why: `the ${inchFraction(limits.leastWidthIn[kind], 64)} in of a ${kind}`,
    },
    {
      leastIn: isAlong ? ratio * thicknessAt(held, limb, fromFadeIn) : 0,
      why: `${decimal(ratio, 1)} times its thickness`,
    },
  ];
  return least.reduce((most, one) => (one.leastIn > most.leastIn ? one : most));
}

function widthTrouble(held: Held, removal: BowRemoval, limb: Limb): string | null {
  const { response, planResponse } = held.work;
  for (const [i, { fromFadeIn, leftIn, rightIn }] of removal[limb].cuts.entries()) {
    const [now, was] = [response[limb].stations[i], planResponse[limb].stations[i]];
    if (now === undefined || was === undefined || !(leftIn + rightIn > 0)) continue;
    const stays = now.widthIn - leftIn - rightIn;
    const { leastIn, why } = leastWidth(held, limb, fromFadeIn, was.widthIn);
    if (stays - cutMarginIn >= leastIn) continue;
    const place = `${decimal(fromFadeIn, 1)} in from the fade of the ${limb} limb`;
    return `Width: ${decimal(stays, 3)} in would be left ${place}; with what a hand may miss by that is too near ${why} (${decimal(leastIn, 3)} in).`;
  }
  return null;
}

function glassTrouble(held: Held, removal: BowRemoval, limb: Limb): string | null {
  const { work, bow, limits, toCome } = held;
  const marginThou = 3 * Math.hypot(toCome.sd, Math.sqrt(thinningBites) * executionSd.thinThou);
  for (const face of ['belly', 'back'] as const) {
    const { glassNowIn, glassMadeIn } = bow[face];
    const off = removal[limb][face === 'belly' ? 'bellyThou' : 'backThou'];
    if (glassNowIn === 0 || off === 0) continue;
    const stays = 1000 * glassNowIn - work.thinnedThou[limb][face] - off - toCome.mean;
    const madeIn = Math.max(glassMadeIn ?? glassNowIn, glassNowIn);
    const leastIn = Math.max(limits.leastGlassIn, limits.leastGlassPart * madeIn);
    if ((stays - marginThou) / 1000 >= leastIn) continue;
    return `Glass: ${decimal(stays / 1000, 3)} in would be left on the ${face} of the ${limb} limb; with what a hand may miss by that is too near the ${decimal(leastIn, 3)} in that stay on.`;
  }
  return null;
}

/**
 * The sentence of the first limit of the shop that a bite could break, hand and calliper at their
 * worst (three standard deviations); null where it keeps them all. Limits count from the widths of
 * the plan and the glass as made.
 */
export function limitsOf(
  work: Workdown,
  { limits }: BenchPolicy,
  toCome: Held['toCome'] | null,
): (removal: BowRemoval) => string | null {
  const { bow } = inputOf(work.plan);
  const planned = methodOf(work.plan);
  const held = { work, bow, planned, limits, toCome: toCome ?? { mean: 0, sd: 0 } };
  return (removal) => {
    for (const limb of limbs) {
      const trouble = widthTrouble(held, removal, limb) ?? glassTrouble(held, removal, limb);
      if (trouble !== null) return trouble;
    }
    return null;
  };
}
