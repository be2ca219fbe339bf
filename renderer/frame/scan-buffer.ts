/** A hand types slower than this between two keys; a keyboard-wedge scanner is faster. */
const scannerGapMs = 50;
const shortestScan = 4;

/** Tells a scanner's burst of keys, ended by Enter, from keys pressed by hand. */
export class ScanBuffer {
  readonly #shortest: number;
  #keys = '';
  #last = 0;

  /** @param shortest a burst of fewer characters is taken for chance */
  constructor(shortest = shortestScan) {
    this.#shortest = shortest;
  }

  /**
   * Takes one key at a time in milliseconds. Answers the scanned text on the Enter that ends it,
   * otherwise null.
   */
  press(key: string, atMs: number): string | null {
    const quick = atMs - this.#last < scannerGapMs;
    this.#last = atMs;
    if (key === 'Enter') {
      const scanned = quick && this.#keys.length >= this.#shortest ? this.#keys : null;
      this.#keys = '';
      return scanned;
    }
    // Shift and its like come between the characters of a burst and belong to none.
    if (key.length === 1) this.#keys = quick ? this.#keys + key : key;
    return null;
  }
}
