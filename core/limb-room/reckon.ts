import { decimal } from '../../shared/measure.ts';
import type {
  MethodOutcomeAnswer,
  Reckoned,
  ReckonInput,
  Reckoning,
} from '../../shared/plan-answer.ts';
import {
  bowAfter,
  type MethodPlan,
  type PlanBow,
  type PlanLimits,
  planReduction,
  planWithoutHinge,
  type ReductionPlan,
  withSandingOf,
} from '../limb/index.ts';
import { forceDrawOf } from './force-draw.ts';
import { planBowOf, planOptionsOf, planWishOf } from './from-input.ts';
import { methodAnswerOf } from './method-answer.ts';
import { sandingOf } from './sanding.ts';

/** What the shop says to every plan. */
export interface ReckonRules {
  limits: PlanLimits;
  /** Off each face by a full strip in this shop, thousandths. */
  stripThou: number;
}

type Extras = Pick<Reckoned, 'withoutHinge' | 'sanding' | 'dropPerThou' | 'forceDraw' | 'warnings'>;

const noExtras: Extras = {
  withoutHinge: null,
  sanding: null,
  dropPerThou: null,
  forceDraw: null,
  warnings: [],
};

export function recommendedPlan({ methods, recommended }: ReductionPlan): MethodPlan | null {
  const { plan } = methods.find(({ method }) => method === recommended) ?? {};
  return plan?.status === 'converged' ? plan.value : null;
}

function withoutHingeOf(
  { input }: ReckonInput,
  bow: PlanBow,
  rules: ReckonRules,
  chosen: MethodPlan | null,
): Reckoned['withoutHinge'] {
  if (chosen?.method !== 'narrowing' || chosen.strain.hinges.length === 0) return null;
  const options = planOptionsOf(input, rules.limits);
  const { status, value } = planWithoutHinge(bow, planWishOf(input), options);
  if (status !== 'converged' || value === null) return null;
  const [to, from] = [value.cutShape.carriedPart, input.choices.cutShape.carriedPart];
  const percent = (part: number) => `${decimal(100 * part, 0)} %`;
  const sentence = `With the full cut ending at ${percent(to)} of the limb instead of ${percent(from)} no place rises in strain by more than 5 %.`;
  return { cutShape: value.cutShape, sentence, plan: methodAnswerOf(bow, value.plan, true) };
}

function finishedBow({ input }: ReckonInput, bow: PlanBow, plan: MethodPlan | null) {
  if (plan === null) return null;
  const removal = { upper: plan.upper.removal, lower: plan.lower.removal };
  const all = withSandingOf(removal, input.wish.allowanceMeanThou);
  return { bow: bowAfter(bow.measured, all), weightLbf: plan.afterFinishing.weightLbf };
}

function extrasOf(
  asked: ReckonInput,
  bow: PlanBow,
  rules: ReckonRules,
  plan: ReductionPlan,
): Extras {
  const { input } = asked;
  const chosen = recommendedPlan(plan);
  const sanding = sandingOf(input, bow.measured, rules.stripThou);
  const forceDraw = forceDrawOf(input, bow.measured, finishedBow(asked, bow, chosen));
  const warnings: string[] = [];
  if (sanding !== null && sanding.sanding.fits !== input.wish.sanding) {
    if (input.wish.sanding === 'full strip') warnings.push(sanding.sanding.sentence);
  }
  if (bow.maxSafeDrawIn === null) {
    warnings.push('Nobody knows how far this bow may be drawn: ask its maker before it is drawn.');
  }
  return {
    withoutHinge: withoutHingeOf(asked, bow, rules, chosen),
    sanding: sanding?.sanding ?? null,
    dropPerThou: sanding?.dropPerThou ?? null,
    forceDraw,
    warnings,
  };
}

/**
 * All ways to the target with what speaks for and against each. Pure.
 * @throws ShopError BAD_INPUT, one sentence, for what `planReduction` refuses
 */
export function reckon(asked: ReckonInput, rules: ReckonRules): Reckoning {
  const { input, detail } = asked;
  const bow = planBowOf(input);
  const solved = planReduction(bow, planWishOf(input), planOptionsOf(input, rules.limits));
  if (solved.status !== 'converged') return { outcome: 'no-answer', sentence: solved.why };
  const plan = solved.value;
  const full = detail === 'full';
  const methods = plan.methods.map(
    ({ method, plan: one }): MethodOutcomeAnswer =>
      one.status === 'converged'
        ? { outcome: 'planned', method, plan: methodAnswerOf(bow, one.value, full) }
        : { outcome: 'no-answer', method, sentence: one.why },
  );
  const { drop, recommended, lowest } = plan;
  const extras = full ? extrasOf(asked, bow, rules, plan) : noExtras;
  return { outcome: 'reckoned', drop, methods, recommended, lowest, ...extras };
}
