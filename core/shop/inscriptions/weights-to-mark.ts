import type { MarkingRoundLbf } from '../../../shared/inscription.ts';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { markingText } from '../../limb/index.ts';
import { dayOf } from '../day.ts';
import type { StoredReading } from '../readings/stored.ts';
import { type SessionWeight, sessionWeights } from '../readings/weights.ts';

export interface WeightToMark {
  /** As it is lettered: `45# @ 28"`. */
  text: string;
  /** What was measured, unrounded, and when. */
  exact: string;
}

/**
 * Weights that may be lettered: of each AMO draw the latest weighing that stands and was taken
 * after the last bite. A weight at any other reference is no marking, and none is carried over to
 * another draw.
 */
export function weightsToMark(
  readings: readonly StoredReading[],
  biteAt: string | null,
  roundLbf: MarkingRoundLbf,
): WeightToMark[] {
  const byDraw = new Map<number, { weight: SessionWeight; at: string }>();
  for (const reading of readings) {
    const stands = reading.struck_reason === null && reading.draw_reference === 'amo';
    if (!stands || (biteAt !== null && reading.weighed_at <= biteAt)) continue;
    for (const weight of sessionWeights(reading.pulls, 'amo')) {
      byDraw.set(weight.drawIn, { weight, at: reading.weighed_at });
    }
  }
  const rounding = roundLbf === 0.5 ? 'nearest-half' : 'nearest-pound';
  return (
    [...byDraw.values()]
      .toSorted((a, b) => b.weight.drawIn - a.weight.drawIn)
      .slice(0, 20)
      // A draw finer than a ten-thousandth cannot be lettered, whatever was weighed at it.
      .filter(({ weight }) => Number(weight.drawIn.toFixed(4)) === weight.drawIn)
      .filter(({ weight }) => weight.forceLbf >= roundLbf)
      .map(({ weight, at }) => ({
        text: markingText({
          weightLbf: weight.forceLbf,
          drawIn: weight.drawIn,
          reference: 'amo',
          rounding,
        }),
        exact: `measured ${decimal(weight.forceLbf, 2)} lb at AMO ${inchFraction(weight.drawIn)}" on ${dayOf(at)}`,
      }))
  );
}
