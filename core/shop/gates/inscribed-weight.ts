const weightAtDraw = /(\d+(?:\.\d+)?)\s*(?:#|lbs?)\s*@\s*(\d+(?:\.\d+)?)/gi;

export interface MeasuredWeight {
  /** Draw length, inches AMO. */
  drawIn: number;
  forceLbf: number;
}

/** Rounding a measured weight to the nearest pound for the marking is shop policy. */
const roundingLbf = 0.5;

/**
 * Why a weight in these lines may not be written on the bow, or null. Only the latest weighing
 * at that very AMO draw counts: a weight at another draw or reference is not a marking.
 */
export function inscribedWeightTrouble(
  inscription: string,
  measured: readonly MeasuredWeight[],
): string | null {
  for (const [text, force, draw] of inscription.matchAll(weightAtDraw)) {
    const latest = measured.filter((weight) => weight.drawIn === Number(draw)).at(-1);
    if (latest === undefined)
      return `"${text}" is to be written, but nothing was weighed at ${draw}" AMO.`;
    if (Math.abs(latest.forceLbf - Number(force)) > roundingLbf + 1e-9) {
      return `"${text}" is to be written, but the last weighing at ${draw}" AMO was ${latest.forceLbf.toFixed(1)} lb.`;
    }
  }
  return null;
}
