import { ShopError } from '../../shared/errors.ts';
import type { MethodAnswer } from '../../shared/plan-answer.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import type { PlanMethod } from '../../shared/weight-plan.ts';
import {
  type BowResponse,
  bowResponse,
  type MeasuredBow,
  type MethodPlan,
  modelledWeight,
  planReduction,
  type ReductionPlan,
} from '../limb/index.ts';
import { forceDrawOf } from './force-draw.ts';
import { planBowOf, planOptionsOf, planWishOf } from './from-input.ts';
import { methodAnswerOf } from './method-answer.ts';
import type { ReckonRules } from './reckon.ts';
import { dropPerThouOf } from './sanding.ts';

/** All that the bench goes by, once a plan is accepted. */
export interface Frozen {
  drop: ReductionPlan['drop'];
  plan: MethodAnswer;
  response: BowResponse;
  /** Part of the weight that a thousandth off both faces of both limbs takes. */
  dropPerThou: number;
  /** lb per inch of draw, and per inch of brace height, at the draw. */
  slopeLbfPerIn: number;
  braceLbfPerIn: number;
}

const unsolved = (why: string) => new ShopError('CONFLICT', why, { method: why });

/** Places of a limb that the work is cut and measured at: its stations, those on the fade left out. */
function placesOf({ stations }: MethodPlan['upper']): number[] {
  return stations.map(({ fromFadeIn }) => fromFadeIn).filter((place) => place > 0);
}

/** What an inch of brace height does to the modelled weight, as part of it. */
function perBraceIn(bow: MeasuredBow, drawIn: number): number {
  const stepIn = 0.25;
  const now = modelledWeight(bow, drawIn);
  const raised = modelledWeight({ ...bow, braceIn: bow.braceIn + stepIn }, drawIn);
  if (now.status !== 'converged' || raised.status !== 'converged') return 0;
  return (raised.value / now.value - 1) / stepIn;
}

/**
 * Reckons one method again and works out what is kept with it.
 * @throws ShopError BAD_INPUT as `planReduction`; CONFLICT where the model has no answer
 */
export function freeze(input: PlanInput, method: PlanMethod, rules: ReckonRules): Frozen {
  const bow = planBowOf(input);
  const { drawIn, weightLbf } = input.wish;
  const options = { ...planOptionsOf(input, rules.limits), methods: [method] };
  const solved = planReduction(bow, planWishOf(input), options);
  if (solved.status !== 'converged') throw unsolved(solved.why);
  const outcome = solved.value.methods[0]?.plan;
  if (outcome?.status !== 'converged') throw unsolved(outcome?.why ?? 'This way has no answer.');
  const placesIn = { upper: placesOf(outcome.value.upper), lower: placesOf(outcome.value.lower) };
  const response = bowResponse(bow.measured, { drawIn, placesIn, face: input.choices.face });
  if (response.status !== 'converged') throw unsolved(response.why);
  const curve = forceDrawOf(input, bow.measured, null);
  if (curve === null) throw unsolved('The model has no force-draw curve for this bow.');
  return {
    drop: solved.value.drop,
    plan: methodAnswerOf(bow, outcome.value, true),
    response: response.value,
    dropPerThou: dropPerThouOf(response.value),
    slopeLbfPerIn: curve.slopeLbfPerIn,
    braceLbfPerIn: perBraceIn(bow.measured, drawIn) * weightLbf,
  };
}
