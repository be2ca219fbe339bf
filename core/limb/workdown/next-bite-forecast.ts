import { type BowRemoval, eightTenths } from '../predict-removal.ts';
import type { BiteMethod, Candidate, Tracking } from './next-bite-candidate.ts';
import { normalChanceUnder } from './next-bite-chance.ts';
import type { BowResponse } from './next-bite-response.ts';
import type { WorkdownState } from './workdown.ts';

/** Rules of thumb of the shop (common practice); each is a setting. */
export interface BiteRules {
  /** Most of what is left that the first bite and later ones take. */
  firstPart: number;
  laterPart: number;
  /** Most that the chance of ending below the target may be while something is still to come. */
  chanceUnder: number;
  /** Most that the chance of ending under by more than the tolerance may be once nothing is. */
  lastChanceUnder: number;
  /** Kept above the target while something is still to come, lbf. */
  reserveLbf: number;
  /** A bow within this of its target is there, lbf; more than this under is an undershoot. */
  toleranceLbf: number;
  /** Tiller may stand off its target by this, inches. */
  tillerToleranceIn: number;
}

export const biteRules: BiteRules = {
  firstPart: 0.4,
  laterPart: 0.6,
  chanceUnder: 0.01,
  lastChanceUnder: 0.003,
  reserveLbf: 0.5,
  toleranceLbf: 0.5,
  tillerToleranceIn: 1 / 16,
};

export interface NextBiteOptions {
  /** Of the bow as it was last measured, from `bowResponse`. */
  response: BowResponse;
  state: WorkdownState;
  targetLbf: number;
  /** Bites of this job already taken. */
  bitesTaken: number;
  method: BiteMethod;
  /**
   * What later sanding takes off each face of both limbs, thousandths, and how sure that is (one
   * standard deviation); null when nothing comes after this method.
   */
  sandingThou: { mean: number; sd: number } | null;
  /** Upper minus lower at the fades, inches, now and as it should be. */
  tiller: { nowIn: number; targetIn: number };
  tracking?: Tracking;
  /** 'tiller' spends as few pounds as it can: for cuts far out, say. */
  wanted?: 'weight and tiller' | 'tiller';
  /** Spread of one more weighing, lbf; with it the answer may be to weigh again before cutting. */
  weighingSdLbf?: number;
  /** The sentence of the limit that a removal would break, or null: a plain predicate of the shop. */
  refusedBecause?: (removal: BowRemoval) => string | null;
  rules?: Partial<BiteRules>;
}

export interface Forecast {
  weightLbf: number;
  /** Eight in ten such bites end between these, lbf. */
  bandLbf: readonly [number, number];
  sdLbf: number;
  /** The same weight less the sanding that is still to come. */
  endLbf: number;
  /** Chance that the bow ends below the floor: its target, or that less the tolerance at the last. */
  chanceUnder: number;
  tillerIn: number;
}

/** What the sanding takes, as part of the weight by the model, and its spread. */
function toCome({ response, sandingThou }: NextBiteOptions): { drop: number; sd: number } {
  if (sandingThou === null) return { drop: 0, sd: 0 };
  const perThou = response.upper.perThouBothFaces.drop + response.lower.perThouBothFaces.drop;
  return {
    drop: 1 - Math.exp(-perThou * sandingThou.mean),
    // One hand sands all four faces alike, so their spreads do not average out.
    sd: perThou * sandingThou.sd,
  };
}

/** Weight after modelled drops, with its spread from state, hand and sanding, lbf. */
function spreadAfter(state: WorkdownState, drop: number, extraSd: number) {
  const { weightLbf, effectiveness, weightVarLbf2, effectivenessVar, covarianceLbf } = state;
  const byWeight = 1 - effectiveness * drop;
  const byEffectiveness = -weightLbf * drop;
  const variance =
    byWeight ** 2 * weightVarLbf2 +
    2 * byWeight * byEffectiveness * covarianceLbf +
    byEffectiveness ** 2 * effectivenessVar +
    (weightLbf * effectiveness * extraSd) ** 2 +
    state.scaleSdLbf ** 2;
  return { weightLbf: weightLbf * byWeight, sdLbf: Math.sqrt(Math.max(0, variance)) };
}

/** Two drops one after the other as one. */
const together = (first: number, second: number) => 1 - (1 - first) * (1 - second);

/** Weight, end and tiller after a bite, or as the bow stands without one. */
export function forecastOf(
  options: NextBiteOptions,
  rules: BiteRules,
  bite: Candidate | null,
): Forecast {
  const { state, targetLbf, sandingThou, tiller } = options;
  const sanding = toCome(options);
  const [drop, missSd] = [bite?.modelledDrop ?? 0, bite?.missSd ?? 0];
  const after = spreadAfter(state, drop, missSd);
  const end = spreadAfter(state, together(drop, sanding.drop), Math.hypot(missSd, sanding.sd));
  const floorLbf = sandingThou === null ? targetLbf - rules.toleranceLbf : targetLbf;
  const above = end.weightLbf - floorLbf;
  return {
    weightLbf: after.weightLbf,
    bandLbf: [
      after.weightLbf - eightTenths * after.sdLbf,
      after.weightLbf + eightTenths * after.sdLbf,
    ],
    sdLbf: after.sdLbf,
    endLbf: end.weightLbf,
    chanceUnder: end.sdLbf > 0 ? normalChanceUnder(-above / end.sdLbf) : Number(above < 0),
    tillerIn: tiller.nowIn + (bite?.tillerChangeIn ?? 0),
  };
}
