import { reckon } from '../../../core/limb-room/reckon.ts';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import type { MethodAnswer, Reckoned } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import { longbowInput } from '../../support/plan-input.ts';

const rules = { limits: usualBenchPolicy.limits, stripThou: 1.4 };

/** What the core really answers. */
export function answered(
  input: PlanInput = longbowInput,
  detail: 'full' | 'sliding' = 'full',
): Reckoned {
  const answer = reckon({ input, detail }, rules);
  if (answer.outcome !== 'reckoned') throw new Error(answer.sentence);
  return answer;
}

export function planOf(answer: Reckoned, method: PlanMethod): MethodAnswer {
  const outcome = answer.methods.find((one) => one.method === method);
  if (outcome?.outcome !== 'planned') throw new Error(`no ${method} in the answer`);
  return outcome.plan;
}
