import { refuseField } from '../../shared/errors.ts';
import { type MeasuredBow, type MeasuredLimb, modelledWeight } from './modelled-bow.ts';
import { applyRemoval, type LimbRemoval } from './removal.ts';
import { converged, type Solved } from './solved.ts';

export interface BowRemoval {
  upper: LimbRemoval;
  lower: LimbRemoval;
}

export interface PredictionOptions {
  /** AMO draw the weight belongs to, inches. */
  drawIn: number;
  /** Weight of the bow now, measured at that draw, and how far it may be off (one standard deviation). */
  weightLbf: number;
  weightSdLbf: number;
  /**
   * How effective removals are on this bow compared with the model, and how sure that is (one
   * standard deviation): 1 +- 0.25, or +- 0.12 where widths were measured bare with a calliper
   * (common practice of the shop, learned from its jobs).
   */
  effectiveness: { mean: number; sd: number };
}

export interface Prediction {
  weightLbf: number;
  dropLbf: number;
  /** Drop over the weight before, as the model gives it, before the effectiveness. */
  modelledDrop: number;
  /** Eight in ten such bows end between these, lbf. */
  bandLbf: readonly [number, number];
  sdLbf: number;
}

/** Standard deviations to each side of the middle eight tenths of a normal spread. */
export const eightTenths = 1.281_551_6;

function after(limb: MeasuredLimb, removal: LimbRemoval): MeasuredLimb {
  return { ...limb, profile: applyRemoval(limb.profile, removal) };
}

/** The measured bow with something taken off its limbs; a bow with one limb for both keeps that. */
export function bowAfter(bow: MeasuredBow, removal: BowRemoval): MeasuredBow {
  const upper = after(bow.upper, removal.upper);
  const even = bow.upper === bow.lower && removal.upper === removal.lower;
  return { ...bow, upper, lower: even ? upper : after(bow.lower, removal.lower) };
}

function refuseOddOptions({ weightLbf, weightSdLbf, effectiveness }: PredictionOptions): void {
  if (!(weightLbf > 0)) refuseField('weightLbf', 'The present weight must be more than 0 lb.');
  if (!(weightSdLbf >= 0))
    refuseField('weightSdLbf', 'The spread of the weight cannot be negative.');
  if (!(effectiveness.mean > 0 && effectiveness.sd >= 0)) {
    refuseField(
      'effectiveness',
      'The effectiveness must be more than 0 and its spread not negative.',
    );
  }
}

/**
 * Draw weight after a removal. The model says what part of its weight the bow loses; the weight
 * measured on this bow sets the pounds, and what earlier removals on it did corrects the part.
 * @throws ShopError BAD_INPUT naming what is out of order, zero, negative or more than there is
 */
export function predictRemoval(
  bow: MeasuredBow,
  removal: BowRemoval,
  options: PredictionOptions,
): Solved<Prediction> {
  refuseOddOptions(options);
  const { drawIn, weightLbf, weightSdLbf, effectiveness } = options;
  const before = modelledWeight(bow, drawIn);
  if (before.status !== 'converged') return before;
  const left = modelledWeight(bowAfter(bow, removal), drawIn);
  if (left.status !== 'converged') return left;
  const modelledDrop = 1 - left.value / before.value;
  const dropLbf = weightLbf * modelledDrop * effectiveness.mean;
  const sdLbf = Math.hypot(
    weightSdLbf * (1 - modelledDrop * effectiveness.mean),
    weightLbf * modelledDrop * effectiveness.sd,
  );
  const after = weightLbf - dropLbf;
  return converged(
    {
      weightLbf: after,
      dropLbf,
      modelledDrop,
      bandLbf: [after - eightTenths * sdLbf, after + eightTenths * sdLbf],
      sdLbf,
    },
    Math.max(before.residual, left.residual),
    before.iterations + left.iterations,
  );
}
