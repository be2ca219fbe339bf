import { converged, type Solved } from '../solved.ts';
import { type PlanBow, type PlanWish, refuseOddBow, refuseOddWish } from './bow.ts';
import { totalDrop } from './drop.ts';
import { defaultLimits, refuseOddLimits } from './limits.ts';
import { lowestWeight } from './lowest.ts';
import { defaultDensities } from './mass.ts';
import { planMethod } from './method.ts';
import { methodsAsked } from './methods.ts';
import { planSetting } from './setting.ts';
import type { MethodOutcome, PlanOptions, ReductionPlan } from './types.ts';
import { narrowedWithoutHinge, type WithoutHinge } from './without-hinge.ts';
import { defaultCutShape, refuseOddShape } from './work.ts';

export const defaultPlanOptions: PlanOptions = {
  limits: defaultLimits,
  cutShape: defaultCutShape,
  face: 'both',
  densities: defaultDensities,
  methods: null,
  unknownSectionSd: 0.25,
};

/** Common practice: half a pound stays on for the last strokes. */
export const defaultReserveLbf = 0.5;

/** A bow of unknown section is forecast with the wider spread at least. */
function widened(bow: PlanBow, wish: PlanWish, unknownSectionSd: number): PlanWish {
  if (bow.section === 'measured') return wish;
  const { mean, sd } = wish.effectiveness;
  return { ...wish, effectiveness: { mean, sd: Math.max(sd, unknownSectionSd) } };
}

/** @throws ShopError BAD_INPUT, see `planReduction` */
function checkedMethods(bow: PlanBow, wish: PlanWish, options: PlanOptions) {
  refuseOddBow(bow);
  refuseOddWish(bow, wish);
  refuseOddLimits(options.limits);
  refuseOddShape(options.cutShape, bow.measured);
  return methodsAsked(bow, options.methods);
}

/**
 * The ways to bring a bow down to its target, laid side by side: sanding alone, then narrowing,
 * thinning both faces, half of each, or scraping the belly of an all-wood bow. Each way but sanding
 * is solved so that the bow ends at target and reserve after finishing, shared between the limbs so
 * that the tiller comes to its target. Inches, lbf, thousandths where named.
 *
 * Limits, allowances and the shape of the cut are common practice, all of them settings. A way
 * that breaks a limit is shown with its figures and the limit that refuses it.
 * @returns not converged or infeasible with a sentence where the bow itself has no modelled state;
 * a single way without an answer says so in its own outcome
 * @throws ShopError BAD_INPUT, one sentence naming what to put right: a target above the present
 * weight, a draw past the maximum safe draw, sizes zero, negative or out of order, thinning asked
 * for alone on a facing that forbids it, the back of an all-wood bow to be thinned
 */
export function planReduction(
  bow: PlanBow,
  wish: PlanWish,
  given: Partial<PlanOptions> = {},
): Solved<ReductionPlan> {
  const options = { ...defaultPlanOptions, ...given };
  const asked = checkedMethods(bow, wish, options);
  const setting = planSetting(bow, widened(bow, wish, options.unknownSectionSd), options);
  if (setting.status !== 'converged') return setting;
  const drop = totalDrop(wish, options.limits);
  const methods: MethodOutcome[] = asked.map((method) => ({
    method,
    plan: planMethod(setting.value, method, drop),
  }));
  const first = methods.find(
    ({ plan }) =>
      plan.status === 'converged' && plan.value.reachesTarget && plan.value.refusals.length === 0,
  );
  const recommended = first?.method ?? null;
  const lowest = recommended === null ? lowestWeight(setting.value, methods) : null;
  return converged({ drop, methods, recommended, lowest }, setting.residual, setting.iterations);
}

/**
 * The narrowing of `planReduction` with the full cut ending elsewhere along the limb, so that no
 * place rises in strain by more than a twentieth; null where no such shape reaches the target
 * inside the limits. To be asked where narrowing is chosen and makes a hinge.
 * @throws ShopError BAD_INPUT as `planReduction`
 */
export function planWithoutHinge(
  bow: PlanBow,
  wish: PlanWish,
  given: Partial<PlanOptions> = {},
): Solved<WithoutHinge | null> {
  const options = { ...defaultPlanOptions, ...given };
  checkedMethods(bow, wish, { ...options, methods: ['narrowing'] });
  const setting = planSetting(bow, widened(bow, wish, options.unknownSectionSd), options);
  if (setting.status !== 'converged') return setting;
  const found = narrowedWithoutHinge(setting.value, totalDrop(wish, options.limits));
  return converged(found, setting.residual, setting.iterations);
}
