import { addDays } from '../day.ts';
import type { StockedLot } from './stocked-lot.ts';

/** A lot expires soon when it has so many days left; time to use it or to order another. */
export const soonDays = 28;

export type ExpiringStock = StockedLot & { expiresOn: string };

/** Lots with something left of them that have expired by this day or soon will, `YYYY-MM-DD`. */
export function expiringLots(lots: readonly StockedLot[], today: string): ExpiringStock[] {
  const soon = addDays(today, soonDays);
  return lots.filter(
    (lot): lot is ExpiringStock =>
      lot.onHand > 0 && lot.expiresOn !== null && lot.expiresOn <= soon,
  );
}
