import { ShopError } from '../../../shared/errors.ts';
import { type BowResponse, type LimbResponse, withWidths } from './next-bite-response.ts';
import { type RemovalPlace, remeasuredSdIn } from './spread.ts';

/** Widths after a cut, at the places of the response, inches; null where nothing was cut. */
export interface WidthsAfter {
  upper: readonly (number | null)[];
  lower: readonly (number | null)[];
}

export interface Remeasured {
  /** Part of the weight that the model takes off for these widths: for `recordRemoval`. */
  modelledDrop: number;
  /** What the calliper leaves unknown: for `removalSdLbf`. */
  places: RemovalPlace[];
  /** The response with the widths as they are now. */
  response: BowResponse;
}

/** One standard deviation of a calliper on a bare limb, inches (common practice). */
export const calliperSdIn = 0.005;
/** A width seems to grow by no more than so many deviations of two readings. */
const chanceSds = 4;

function limbAfter(limb: LimbResponse, widthsIn: WidthsAfter['upper'], sdIn: number) {
  let logDrop = 0;
  const places: RemovalPlace[] = [];
  const now = limb.stations.map(({ fromFadeIn, widthIn, perIn }, i) => {
    const after = widthsIn[i] ?? null;
    if (after === null) return widthIn;
    if (!(after > 0 && after <= widthIn + chanceSds * sdIn)) {
      const sentence = `Measure the width ${fromFadeIn.toFixed(1)} in from the fade again.`;
      throw new ShopError('BAD_INPUT', sentence, { widthsIn: sentence });
    }
    // Stiffness goes with the width, so the slope belongs to its logarithm.
    logDrop += perIn.drop * widthIn * Math.log(widthIn / after);
    places.push({ dropPerIn: perIn.drop, sdIn });
    return after;
  });
  return { logDrop, places, now };
}

/**
 * What a cut did by the model, from the widths measured after it: the hand misses the line, so the
 * widths that were meant do not count.
 * @param response of the bow as it was measured before the cut
 * @throws ShopError BAD_INPUT naming a place whose width is nothing or has grown
 */
export function remeasured(
  response: BowResponse,
  widthsIn: WidthsAfter,
  readingSdIn = calliperSdIn,
): Remeasured {
  const sdIn = remeasuredSdIn(readingSdIn);
  const upper = limbAfter(response.upper, widthsIn.upper, sdIn);
  const lower = limbAfter(response.lower, widthsIn.lower, sdIn);
  return {
    modelledDrop: Math.max(0, 1 - Math.exp(-upper.logDrop - lower.logDrop)),
    places: [...upper.places, ...lower.places],
    response: withWidths(response, { upper: upper.now, lower: lower.now }),
  };
}
