import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { ReckonRules } from '../../limb-room/reckon.ts';

/** What the shop says to every plan; a full strip takes what the input has it take. */
export function rulesOf({ limits, allowances }: BenchPolicy, { wish }: PlanInput): ReckonRules {
  const strips = wish.sanding === 'full strip';
  return {
    limits,
    stripThou: strips ? wish.allowanceMeanThou : allowances['full strip'].meanThou,
  };
}
