export interface RestartBudget {
  /** Takes one restart. False where the minute has had its share. */
  take(): boolean;
  /** A person asked to try again: count afresh. */
  refill(): void;
}

export interface RestartBudgetOptions {
  restarts: number;
  /** Length of the sliding window, ms. */
  within: number;
  /** Milliseconds from any fixed start, never going back. */
  now: () => number;
}

/** Allows so many restarts in any stretch of the given length. */
export function restartBudget({ restarts, within, now }: RestartBudgetOptions): RestartBudget {
  let taken: number[] = [];
  return {
    take() {
      const at = now();
      taken = taken.filter((earlier) => at - earlier < within);
      if (taken.length >= restarts) return false;
      taken.push(at);
      return true;
    },
    refill() {
      taken = [];
    },
  };
}
