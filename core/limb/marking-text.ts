import type { DrawReference } from '../../shared/bows.ts';
import { refuseField } from '../../shared/errors.ts';
import { decimal, inchFraction, weightAtDraw } from '../../shared/measure.ts';
import { weightText } from '../../shared/weight-text.ts';

/** How a weight is rounded on the bow: shop policy, no standard says it. As measured is to 0.1 lb. */
export const markingRoundings = ['nearest-pound', 'nearest-half', 'as-measured'] as const;
export type MarkingRounding = (typeof markingRoundings)[number];

export interface MeasuredWeight {
  weightLbf: number;
  /** Where it was measured, inches, to the reference below. */
  drawIn: number;
  reference: DrawReference;
  /** Nearest pound where the shop says nothing. */
  rounding?: MarkingRounding;
}

/** What the AMO length of a bow has over its master string, inches (AMO FP-3, 2000). */
export const masterStringAllowanceIn = 3;

const stepsPerPound: Record<MarkingRounding, number> = {
  'nearest-pound': 1,
  'nearest-half': 2,
  'as-measured': 10,
};

function refuseOddLength(field: string, what: string, inches: number): void {
  if (!(inches > 0 && Number.isFinite(inches))) refuseField(field, `${what} must be over 0 in.`);
}

/** As read on a rule where it lies on a sixteenth, else to a ten-thousandth: 27.98 never reads as 28. */
function ruleText(inches: number): string {
  return Number.isInteger(inches * 16) ? inchFraction(inches) : decimal(inches, 4);
}

/** In steps of the shop's rounding; halves go up, and a mean's binary dust does not decide. */
function rounded(weightLbf: number, rounding: MarkingRounding): number {
  const steps = stepsPerPound[rounding];
  return Math.round(Number((weightLbf * steps).toFixed(6))) / steps;
}

/**
 * The weight as it is lettered on the bow, with the draw it was measured at: `45# @ 28"`,
 * `41.5# @ 26 1/2"`. Weight in lbf, draw in inches AMO.
 * @throws ShopError BAD_INPUT for a weight that was not measured to the AMO reference, for a
 * weight that rounds to nothing, for a draw of no length or finer than a ten-thousandth
 */
export function markingText(measured: MeasuredWeight): string {
  const { weightLbf, drawIn, reference, rounding = 'nearest-pound' } = measured;
  refuseOddLength('drawIn', 'The draw length', drawIn);
  if (!Number.isFinite(weightLbf) || !(rounded(weightLbf, rounding) > 0)) {
    refuseField('weightLbf', 'The weight to mark must be over 0 lb.');
  }
  if (reference !== 'amo') {
    const what = weightText(weightLbf, drawIn, reference);
    refuseField('reference', `${what} may not be marked: weigh the bow at its AMO draw length.`);
  }
  if (Number(drawIn.toFixed(4)) !== drawIn) {
    refuseField(
      'drawIn',
      `A draw of ${drawIn} in cannot be lettered: weigh at a sixteenth of an inch.`,
    );
  }
  return weightAtDraw(rounded(weightLbf, rounding), drawIn, ruleText(drawIn));
}

/**
 * The mark of the weight at 28 in. A weight measured at any other draw, or to any other
 * reference, is never written as that: 28 in is AMO, 26 1/4 in from the throat (AMO Standards,
 * Field Publication FP-3, 2000).
 * @throws ShopError BAD_INPUT as `markingText`, and for any draw but 28 in
 */
export function markingTextAt28(measured: MeasuredWeight): string {
  const text = markingText(measured);
  if (measured.drawIn !== 28) {
    refuseField('drawIn', `${text} is not the weight at 28": weigh the bow at AMO 28".`);
  }
  return text;
}

/**
 * The bow's length as it is lettered: `AMO 62"`.
 * @param lengthIn the bow's AMO length, inches
 * @throws ShopError BAD_INPUT where it is not over 0
 */
export function amoLengthText(lengthIn: number): string {
  refuseOddLength('lengthIn', 'The AMO length', lengthIn);
  return `AMO ${ruleText(lengthIn)}"`;
}

/**
 * AMO length of a bow, inches, from the master string that braces it at its proper height: the
 * master's own length under its measuring load, plus 3 in. It is not derived from a string that a
 * customer sent: only a master is made and measured to the standard.
 * Source: AMO Standards, Field Publication FP-3, 2000, conventional bow length.
 * @throws ShopError BAD_INPUT where the length is not over 0
 */
export function amoLengthFromMasterString(masterIn: number): number {
  refuseOddLength('masterIn', 'The master string', masterIn);
  return masterIn + masterStringAllowanceIn;
}

/**
 * Length of the master string, inches, of a bow of an AMO length: 3 in less. Source as above; it
 * says what master to take, not how long a customer's string is.
 * @throws ShopError BAD_INPUT where the bow is not longer than 3 in
 */
export function masterStringFor(amoLengthIn: number): number {
  refuseOddLength('amoLengthIn', 'The AMO length', amoLengthIn);
  if (!(amoLengthIn > masterStringAllowanceIn)) {
    refuseField(
      'amoLengthIn',
      'The AMO length must be over 3 in: the master string is 3 in shorter.',
    );
  }
  return amoLengthIn - masterStringAllowanceIn;
}
