/** Numbers in [0, 1) that are the same for the same seed, so that the demo shop is the same everywhere. */
export type Seeded = () => number;

/** Source: mulberry32, a 32-bit generator in the public domain (from memory). */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export function between(random: Seeded, low: number, high: number): number {
  return low + (high - low) * random();
}

/** A seed from words, so that each picture has its own. */
export function seedOf(words: string): number {
  let hash = 2_166_136_261;
  for (const letter of words) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 16_777_619);
  return hash >>> 0;
}
