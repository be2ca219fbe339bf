/**
 * Chance that a standard normal value lies under z. Accurate to 7.5e-8.
 *
 * Source: M. Abramowitz, I. A. Stegun, "Handbook of Mathematical Functions", 1964, 26.2.17.
 */
export function normalChanceUnder(z: number): number {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(z));
  const series =
    t *
    (0.319_381_53 +
      t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  const beyond = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z < 0 ? beyond : 1 - beyond;
}
