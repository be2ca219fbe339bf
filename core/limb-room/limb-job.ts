import type { ReckonInput, Reckoning } from '../../shared/plan-answer.ts';
import type { PlanInput } from '../../shared/plan-input.ts';
import type { PlanMethod } from '../../shared/weight-plan.ts';
import { type Frozen, freeze } from './freeze.ts';
import { type ReckonRules, reckon } from './reckon.ts';

/** What the limb room works out, and what it answers, by kind. */
export interface LimbJobs {
  reckon: { asked: ReckonInput; rules: ReckonRules };
  freeze: { input: PlanInput; method: PlanMethod; rules: ReckonRules };
}
export interface LimbAnswers {
  reckon: Reckoning;
  freeze: Frozen;
}

export type LimbJobKind = keyof LimbJobs;
export interface LimbJob<Kind extends LimbJobKind = LimbJobKind> {
  kind: Kind;
  what: LimbJobs[Kind];
}

const workers: { [Kind in LimbJobKind]: (what: LimbJobs[Kind]) => LimbAnswers[Kind] } = {
  reckon: ({ asked, rules }) => reckon(asked, rules),
  freeze: ({ input, method, rules }) => freeze(input, method, rules),
};

/** @throws ShopError for what the mechanics refuses */
export function doLimbJob<Kind extends LimbJobKind>({
  kind,
  what,
}: LimbJob<Kind>): LimbAnswers[Kind] {
  return workers[kind](what);
}
