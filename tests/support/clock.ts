/** A clock that tests move by hand. Every reading is a millisecond later, so that order is kept. */
export class TestClock {
  #at: number;

  constructor(start = '2026-03-02T09:00:00.000Z') {
    this.#at = Date.parse(start);
  }

  now = (): string => {
    this.#at += 1;
    return new Date(this.#at).toISOString();
  };

  advance(milliseconds: number): void {
    this.#at += milliseconds;
  }
}

export const hour = 60 * 60 * 1000;
export const dayMs = 24 * hour;
