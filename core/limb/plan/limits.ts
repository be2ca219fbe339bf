import { type BenchPolicy, usualBenchPolicy } from '../../../shared/bench-policy.ts';
import { ShopError } from '../../../shared/errors.ts';

/** How far a reduction may go. */
export type PlanLimits = BenchPolicy['limits'];

/** What the shop begins with: common practice, none of it from print, every figure a setting. */
export const defaultLimits: PlanLimits = usualBenchPolicy.limits;

/** @throws ShopError BAD_INPUT naming the setting that is not a number over zero */
export function refuseOddLimits(limits: PlanLimits): void {
  for (const [name, value] of Object.entries(limits)) {
    const figures: unknown[] = typeof value === 'number' ? [value] : Object.values(value);
    if (figures.every((one) => typeof one === 'number' && Number.isFinite(one) && one >= 0)) {
      continue;
    }
    const sentence = `The limit "${name}" must be a number, 0 or more.`;
    throw new ShopError('BAD_INPUT', sentence, { [name]: sentence });
  }
}
