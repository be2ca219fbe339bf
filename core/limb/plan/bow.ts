import type { z } from 'zod';
import { usualBenchPolicy } from '../../../shared/bench-policy.ts';
import type { bowKind, construction, facing } from '../../../shared/bows.ts';
import { refuseField } from '../../../shared/errors.ts';
import { amoAtNock } from '../draw-length.ts';
import { refuseOddProfile } from '../limb-profile.ts';
import type { MeasuredBow, MeasuredLimb } from '../modelled-bow.ts';

export type BowKind = z.infer<typeof bowKind>;
export type Construction = z.infer<typeof construction>;
export type Facing = z.infer<typeof facing>;

/** A bow as the plan needs to know it. */
export interface PlanBow {
  /** Sizes as they are now, glass included in the layup. */
  measured: MeasuredBow;
  kind: BowKind;
  construction: Construction;
  bellyFacing: Facing;
  backFacing: Facing;
  /** Glass when the bow was made, inches; null where nobody knows: what it has now then counts. */
  made: { bellyGlassIn: number; backGlassIn: number } | null;
  /** AMO, inches; null where nobody knows. */
  maxSafeDrawIn: number | null;
  /** Sizes were measured bare, or they are guessed in part and the forecast has a wider band. */
  section: 'measured' | 'unknown';
  /** Thickness counts old finish in: nothing is thinned until the limbs are bare. */
  overFinish?: boolean;
}

/** What finishing will still take off each face, thousandths of an inch. */
export interface FinishingAllowance {
  meanThou: number;
  /** One standard deviation. */
  sdThou: number;
}

/** Common practice; the shop's closed jobs replace them. */
export const fullStrip: FinishingAllowance = usualBenchPolicy.allowances['full strip'];
export const finalSandingOnly: FinishingAllowance =
  usualBenchPolicy.allowances['final sanding only'];

export interface PlanWish {
  /** Present weight at the draw, and how far it may be off (one standard deviation). */
  weightLbf: number;
  weightSdLbf: number;
  /** AMO, inches. */
  drawIn: number;
  targetLbf: number;
  /** Upper minus lower string distance at the fades, inches; positive: the upper limb is weaker. */
  tillerIn: number;
  tillerTargetIn: number;
  finishing: FinishingAllowance;
  /** Kept above the target after finishing, lbf: 0.5 by default (common practice). */
  reserveLbf: number;
  /** How effective removals are on this bow against the model; see `PredictionOptions`. */
  effectiveness: { mean: number; sd: number };
}

const positive = (value: number) => Number.isFinite(value) && value > 0;
const notNegative = (value: number) => Number.isFinite(value) && value >= 0;

/** Shorter limbs have no room for a cut that blends out at both ends, inches. */
const shortestLimbIn = 8;

function refuseOddLimb(name: string, limb: MeasuredLimb): void {
  refuseOddProfile(limb.profile);
  if (!(limb.profile.lengthIn >= shortestLimbIn)) {
    refuseField(name, `The ${name} limb must be ${shortestLimbIn} in long or more.`);
  }
  if (!notNegative(limb.fadeIn))
    refuseField(name, `The ${name} fade cannot lie before the throat.`);
  if (!(Number.isFinite(limb.fadeOffsetIn) && Number.isFinite(limb.padDeg))) {
    refuseField(name, `Say how the fade of the ${name} limb lies, in inches and degrees.`);
  }
}

/**
 * @throws ShopError BAD_INPUT, one sentence, for sizes zero, negative or out of order, a construction
 * that its layup contradicts, or a brace height out of range
 */
export function refuseOddBow({ measured, construction, made }: PlanBow): void {
  if (!(measured.braceIn > 0 && measured.braceIn < 20)) {
    refuseField('braceIn', 'The brace height must lie between 0 and 20 in.');
  }
  for (const name of ['upper', 'lower'] as const) {
    refuseOddLimb(name, measured[name]);
    const { layup } = measured[name].profile;
    if (construction === 'all-wood' && layup.bellyGlassIn + layup.backGlassIn > 0) {
      refuseField('construction', `An all-wood bow has no glass: correct the ${name} limb.`);
    }
    if (construction === 'glass-laminated' && !(layup.bellyGlassIn > 0 && layup.backGlassIn > 0)) {
      refuseField('construction', `Say how thick the glass on both faces of the ${name} limb is.`);
    }
  }
  if (made !== null && !(notNegative(made.bellyGlassIn) && notNegative(made.backGlassIn))) {
    refuseField('made', 'Glass when made cannot be thinner than nothing.');
  }
}

function refuseOddFinishing({ finishing, reserveLbf, effectiveness }: PlanWish): void {
  if (!(notNegative(finishing.meanThou) && notNegative(finishing.sdThou))) {
    refuseField('finishing', 'What finishing takes off a face cannot be negative.');
  }
  if (finishing.meanThou === 0 && finishing.sdThou > 0) {
    refuseField(
      'finishing',
      'Say how much finishing takes off a face before saying how sure that is.',
    );
  }
  if (!notNegative(reserveLbf)) refuseField('reserveLbf', 'The reserve cannot be negative.');
  if (!(positive(effectiveness.mean) && notNegative(effectiveness.sd))) {
    refuseField(
      'effectiveness',
      'The effectiveness must be more than 0 and its spread not negative.',
    );
  }
}

/**
 * @throws ShopError BAD_INPUT, one sentence, for a target above the present weight, a draw past the
 * bow's maximum safe draw or before its brace height, and figures that are no numbers or negative
 */
export function refuseOddWish(bow: PlanBow, wish: PlanWish): void {
  const { weightLbf, targetLbf, drawIn } = wish;
  if (!positive(weightLbf)) refuseField('weightLbf', 'The present weight must be more than 0 lb.');
  if (!notNegative(wish.weightSdLbf)) {
    refuseField('weightSdLbf', 'The spread of the weight cannot be negative.');
  }
  if (!positive(targetLbf)) refuseField('targetLbf', 'The target must be more than 0 lb.');
  if (targetLbf > weightLbf) {
    refuseField(
      'targetLbf',
      `The target of ${targetLbf} lb is above the present ${weightLbf} lb: weight is not put back.`,
    );
  }
  const braceAt = amoAtNock(bow.measured.braceIn);
  if (!(Number.isFinite(drawIn) && drawIn > braceAt)) {
    refuseField('drawIn', `The draw must be past the brace height, ${braceAt} in AMO.`);
  }
  if (bow.maxSafeDrawIn !== null && drawIn > bow.maxSafeDrawIn) {
    refuseField(
      'drawIn',
      `A draw of ${drawIn} in is past the bow's maximum safe draw of ${bow.maxSafeDrawIn} in.`,
    );
  }
  if (!(Number.isFinite(wish.tillerIn) && Number.isFinite(wish.tillerTargetIn))) {
    refuseField('tillerIn', 'Give the tiller now and the tiller wanted, in inches.');
  }
  refuseOddFinishing(wish);
}
