import { refuseField } from '../../../shared/errors.ts';

/**
 * What is known of a bow while its weight is worked down: its weight, and how effective removals
 * are on it compared with the model, with the covariance of the two.
 */
export interface WorkdownState {
  /** As the shop's scale shows it at the nominal draw and brace, lbf. */
  weightLbf: number;
  /** Real drop over modelled drop; 1 where the model is right. */
  effectiveness: number;
  weightVarLbf2: number;
  effectivenessVar: number;
  /** Covariance of weight and effectiveness, lbf. */
  covarianceLbf: number;
  /** One standard deviation of what the scale itself is off by: no repeat makes it smaller, lbf. */
  scaleSdLbf: number;
}

/** Effectiveness of removals before the bow has shown its own (common practice). */
export const unknownEffectiveness = { mean: 1, sd: 0.25 } as const;
/** The same where widths were measured bare with a calliper (common practice). */
export const measuredBareEffectiveness = { mean: 1, sd: 0.12 } as const;

export interface WorkdownStart {
  weightLbf: number;
  /** One standard deviation of the first weighing, the scale's own error left out, lbf. */
  weightSdLbf: number;
  effectiveness: { mean: number; sd: number };
  scaleSdLbf?: number;
}

/** A state after a weighing, and how far the reading lay from the forecast. */
export interface Weighed {
  state: WorkdownState;
  /** Reading minus forecast in standard errors of that difference. */
  innovation: number;
}

const notNegative = (value: number) => value >= 0 && Number.isFinite(value);

function refuseOddWeight(weightLbf: number): void {
  if (!(weightLbf > 0 && Number.isFinite(weightLbf))) {
    refuseField('weightLbf', 'The weight must be more than 0 lb.');
  }
}

/**
 * State after the first weighing of a job.
 * @throws ShopError BAD_INPUT for a weight or effectiveness of 0 or less or a negative spread
 */
export function startWorkdown(start: WorkdownStart): WorkdownState {
  const { weightLbf, weightSdLbf, effectiveness, scaleSdLbf = 0 } = start;
  refuseOddWeight(weightLbf);
  if (!notNegative(weightSdLbf)) {
    refuseField('weightSdLbf', 'The spread of the weight cannot be negative.');
  }
  if (!notNegative(scaleSdLbf)) {
    refuseField('scaleSdLbf', 'The spread of the scale cannot be negative.');
  }
  const { mean, sd } = effectiveness;
  if (!(mean > 0 && Number.isFinite(mean) && notNegative(sd))) {
    refuseField(
      'effectiveness',
      'The effectiveness must be more than 0 and its spread not negative.',
    );
  }
  return {
    weightLbf,
    effectiveness: mean,
    weightVarLbf2: weightSdLbf ** 2,
    effectivenessVar: sd ** 2,
    covarianceLbf: 0,
    scaleSdLbf,
  };
}

/**
 * State after something was taken off: w' = w (1 - e d), its covariance carried by the slopes of
 * that rule (1 - e d) and (-w d).
 * @param modelledDrop part of its weight that the model takes off for the widths as re-measured
 *   after the cut, not as intended: between 0 and 1
 * @param removalSdLbf what cutting and measuring leave unknown of this removal, one standard
 *   deviation in pounds; see `removalSdLbf`
 * @throws ShopError BAD_INPUT for a drop outside 0 to 1 or a negative spread
 */
export function recordRemoval(
  state: WorkdownState,
  modelledDrop: number,
  removalSdLbf = 0,
): WorkdownState {
  if (!(modelledDrop >= 0 && modelledDrop < 1)) {
    refuseField('modelledDrop', 'A removal takes between nothing and all of the weight.');
  }
  if (!notNegative(removalSdLbf)) {
    refuseField('removalSdLbf', 'The spread of a removal cannot be negative.');
  }
  const { weightLbf, effectiveness, weightVarLbf2, effectivenessVar, covarianceLbf } = state;
  const byWeight = 1 - effectiveness * modelledDrop;
  const byEffectiveness = -weightLbf * modelledDrop;
  if (!(byWeight > 0)) refuseField('modelledDrop', 'Nothing would be left of the weight.');
  const carried =
    byWeight ** 2 * weightVarLbf2 +
    2 * byWeight * byEffectiveness * covarianceLbf +
    byEffectiveness ** 2 * effectivenessVar;
  return {
    ...state,
    weightLbf: weightLbf * byWeight,
    // Rounding alone could take a form that is never negative below zero.
    weightVarLbf2: Math.max(0, carried) + removalSdLbf ** 2,
    covarianceLbf: byWeight * covarianceLbf + byEffectiveness * effectivenessVar,
  };
}

/**
 * State after a weighing, by the Kalman update of weight and effectiveness. The covariance is
 * updated in Joseph's form, (1 - K H) P (1 - K H)' + K R K', which rounding cannot make negative.
 *
 * Source: R. E. Kalman, "A new approach to linear filtering and prediction problems", J. Basic
 * Eng. 82 (1960).
 * @param reading.sdLbf one standard deviation, the scale's own error left out; more than 0
 * @throws ShopError BAD_INPUT for a weight or spread of 0 or less
 */
export function recordWeighing(
  state: WorkdownState,
  reading: { weightLbf: number; sdLbf: number },
): Weighed {
  refuseOddWeight(reading.weightLbf);
  const { sdLbf } = reading;
  if (!(sdLbf > 0 && Number.isFinite(sdLbf))) {
    refuseField('sdLbf', 'A weighing is never exact: give its spread.');
  }
  const { weightVarLbf2: p, effectivenessVar: q, covarianceLbf: c } = state;
  const readingVar = sdLbf ** 2;
  const forecastVar = p + readingVar;
  const [gain, gainOnEffectiveness] = [p / forecastVar, c / forecastVar];
  const miss = reading.weightLbf - state.weightLbf;
  const keep = 1 - gain;
  return {
    state: {
      ...state,
      weightLbf: state.weightLbf + gain * miss,
      effectiveness: state.effectiveness + gainOnEffectiveness * miss,
      weightVarLbf2: keep ** 2 * p + gain ** 2 * readingVar,
      covarianceLbf: keep * (c - gainOnEffectiveness * p) + gain * gainOnEffectiveness * readingVar,
      effectivenessVar: Math.max(
        0,
        q - 2 * gainOnEffectiveness * c + gainOnEffectiveness ** 2 * forecastVar,
      ),
    },
    innovation: miss / Math.sqrt(forecastVar),
  };
}

/** One standard deviation of the true weight, the scale's own error included, lbf. */
export function weightSdLbf({ weightVarLbf2, scaleSdLbf }: WorkdownState): number {
  return Math.hypot(Math.sqrt(weightVarLbf2), scaleSdLbf);
}
