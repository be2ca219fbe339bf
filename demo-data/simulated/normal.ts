/**
 * One standard normal number from even ones in [0, 1). Source: G. E. P. Box, M. E. Muller, "A note
 * on the generation of random normal deviates", Ann. Math. Stat. 29 (1958).
 */
export function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
