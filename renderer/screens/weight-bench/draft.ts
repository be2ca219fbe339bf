import type { Limb } from '../../../shared/bows.ts';
import {
  type PlanInput,
  type PlanLimbInput,
  type PlanStationInput,
  planInput,
} from '../../../shared/plan-input.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';
import type { Sanding } from '../../../shared/weight-plan.ts';
import { fieldErrors } from '../../parts/field-errors.ts';

/** Changes of an input that a person edits. A figure that is no number yet is NaN. */

export const withWish = (input: PlanInput, change: Partial<PlanInput['wish']>): PlanInput => ({
  ...input,
  wish: { ...input.wish, ...change },
});

export const withBow = (input: PlanInput, change: Partial<PlanInput['bow']>): PlanInput => ({
  ...input,
  bow: { ...input.bow, ...change },
});

export const withChoices = (
  input: PlanInput,
  change: Partial<PlanInput['choices']>,
): PlanInput => ({ ...input, choices: { ...input.choices, ...change } });

export const withShape = (
  input: PlanInput,
  change: Partial<PlanInput['choices']['cutShape']>,
): PlanInput => withChoices(input, { cutShape: { ...input.choices.cutShape, ...change } });

export const withLimb = (input: PlanInput, limb: Limb, change: Partial<PlanLimbInput>): PlanInput =>
  withBow(input, { [limb]: { ...input.bow[limb], ...change } });

export const withStation = (
  input: PlanInput,
  { limb, index }: { limb: Limb; index: number },
  change: Partial<PlanStationInput>,
): PlanInput =>
  withLimb(input, limb, {
    stations: input.bow[limb].stations.map((one, i) => (i === index ? { ...one, ...change } : one)),
  });

/** The kind of sanding with what it is known to take. */
export function withSanding(
  input: PlanInput,
  sanding: Sanding,
  allowances: PlanStart['allowances'],
): PlanInput {
  const { mean, sd } = allowances[sanding];
  return withWish(input, { sanding, allowanceMeanThou: mean, allowanceSdThou: sd });
}

/** What is wrong, by field path (`wish.targetLbf`). Empty when it can be reckoned. */
export const draftErrors = (input: PlanInput): Record<string, string> =>
  fieldErrors(planInput, input);

/** Everything of a start that counts; the order's version rises with every change of the order. */
const recordsIn = ({ input, about, geometry, reading, gaps }: PlanStart) =>
  JSON.stringify([input, about.bowId, about.limbSetId, geometry, reading?.id ?? null, gaps]);

/** Whether the records say the same as when planning began from them. */
export const isSameStart = (a: PlanStart, b: PlanStart): boolean => recordsIn(a) === recordsIn(b);
