import { refuseField } from '../../../shared/errors.ts';
import type { BowRemoval } from '../predict-removal.ts';
import type { LimbBite } from './next-bite-candidate.ts';
import { type Choice, choicesOf, type NoChoice, noChoiceOf } from './next-bite-choices.ts';
import {
  type BiteRules,
  biteRules,
  type Forecast,
  forecastOf,
  type NextBiteOptions,
} from './next-bite-forecast.ts';
import { recordWeighing, weightSdLbf } from './workdown.ts';

export interface Bite {
  stop: null;
  upper: LimbBite;
  lower: LimbBite;
  removal: BowRemoval;
  /** Part of its weight, before the effectiveness; record the one of the widths as re-measured. */
  modelledDrop: number;
  /** What the hand may miss by, lbf, one standard deviation; of use where nothing is re-measured. */
  missSdLbf: number;
  forecast: Forecast;
}

export type NextBite =
  | Bite
  /** `because`: the rule that leaves out the smallest bite; null where nothing is left for one. */
  | { stop: 'sand only'; forecast: Forecast; because: NoChoice | null }
  | { stop: 'at target'; forecast: Forecast }
  /** The weight is not known well enough for the smallest step, and one more weighing would do. */
  | { stop: 'weigh again'; forecast: Forecast }
  /** A decision for the customer. */
  | { stop: 'undershot'; byLbf: number; forecast: Forecast }
  /** Every bite that would fit breaks a limit; the sentence is that of the best one. */
  | { stop: 'limit'; why: string; forecast: Forecast };

function refuseOdd({ targetLbf, bitesTaken, sandingThou, tiller }: NextBiteOptions): void {
  if (!(targetLbf > 0)) refuseField('targetLbf', 'The target must be more than 0 lb.');
  if (!(Number.isInteger(bitesTaken) && bitesTaken >= 0)) {
    refuseField('bitesTaken', 'Count the bites from 0.');
  }
  if (sandingThou !== null && !(sandingThou.mean >= 0 && sandingThou.sd >= 0)) {
    refuseField('sandingThou', 'The sanding allowance cannot be negative.');
  }
  if (!(Number.isFinite(tiller.nowIn) && Number.isFinite(tiller.targetIn))) {
    refuseField('tiller', 'Give the tiller now and as it should be.');
  }
}

/** One more weighing is worth it where it takes a tenth off the spread of the weight. */
const worthPart = 0.9;

function weighingWouldDo(options: NextBiteOptions, rules: BiteRules, leftLbf: number): boolean {
  const { state, weighingSdLbf } = options;
  if (weighingSdLbf === undefined) return false;
  const { weightLbf } = state;
  const known = recordWeighing(state, { weightLbf, sdLbf: weighingSdLbf }).state;
  if (weightSdLbf(known) > worthPart * weightSdLbf(state)) return false;
  const { refusedBecause = () => null } = options;
  return choicesOf({ ...options, state: known }, rules, leftLbf).some(
    ({ bite }) => refusedBecause(bite.removal) === null,
  );
}

function biteOf({ bite, forecast }: Choice, { state }: NextBiteOptions): Bite {
  const { upper, lower, removal, modelledDrop, missSd } = bite;
  const missSdLbf = state.weightLbf * state.effectiveness * missSd;
  return { stop: null, upper, lower, removal, modelledDrop, missSdLbf, forecast };
}

/**
 * The next bite off a bow, in whole steps for each limb, or why there is none. A bite takes at
 * most its part of what is left above the target, the sanding still to come and the reserve; the
 * chance of ending below the target stays within the rule; tiller moves towards its target. Where
 * the part is less than one step, one step is allowed if it leaves the end above the target. Once
 * nothing is to come, the bow may end within the tolerance of its target and no reserve is kept.
 *
 * Source of the parts, the chances and the steps: common practice, as settings.
 * @throws ShopError BAD_INPUT for a target of 0 or less, a negative allowance or no tiller
 */
export function nextBite(options: NextBiteOptions): NextBite {
  refuseOdd(options);
  const rules = { ...biteRules, ...options.rules };
  const { targetLbf, sandingThou, refusedBecause = () => null } = options;
  const forecast = forecastOf(options, rules, null);
  const last = sandingThou === null;
  const underLbf = targetLbf - forecast.endLbf;
  if (underLbf > rules.toleranceLbf) return { stop: 'undershot', byLbf: underLbf, forecast };
  const stop = (because: NoChoice | null): NextBite =>
    last ? { stop: 'at target', forecast } : { stop: 'sand only', forecast, because };
  const leftLbf = -underLbf - (last ? 0 : rules.reserveLbf);
  if (!(leftLbf > 0)) return stop(null);
  let why: string | null = null;
  for (const choice of choicesOf(options, rules, leftLbf)) {
    const refused = refusedBecause(choice.bite.removal);
    if (refused === null) return biteOf(choice, options);
    why ??= refused;
  }
  if (why !== null) return { stop: 'limit', why, forecast };
  if (weighingWouldDo(options, rules, leftLbf)) return { stop: 'weigh again', forecast };
  return stop(noChoiceOf(options, rules));
}
