/** Standard normal deviate of a two-sided 95 % interval. */
const z95 = 1.959964;

/**
 * Interval that holds the true part of a count with 95 % confidence, as parts of one. Honest at
 * small counts, where the plain interval runs past 0 or 1.
 *
 * E. B. Wilson, "Probable inference, the law of succession, and statistical inference", Journal of
 * the American Statistical Association 22 (1927); formula from memory.
 * @returns null where nothing was counted
 */
export function wilsonInterval(hits: number, of: number): [low: number, high: number] | null {
  if (of <= 0) return null;
  const part = hits / of;
  const square = z95 ** 2;
  const middle = (part + square / (2 * of)) / (1 + square / of);
  const half =
    (z95 * Math.sqrt((part * (1 - part)) / of + square / (4 * of * of))) / (1 + square / of);
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
