import type { Lot } from '../../schedule/issue.ts';

function weeksUntil(day: string, today: string): number {
  const days = (Date.parse(`${day}T00:00:00Z`) - Date.parse(`${today}T00:00:00Z`)) / 86_400_000;
  // The last day itself is still good.
  return (days + 1) / 7;
}

/**
 * How many weeks the lots last at a steady use, each until it is empty or its last day is over:
 * a full shelf that expires tomorrow lasts a day.
 * @param lots in the order they are used.
 * @param use in a week, above 0, in the lots' unit.
 * @param today the shop's day, `YYYY-MM-DD`.
 */
export function coverageWeeks(lots: readonly Lot[], use: number, today: string): number {
  return lots.reduce((weeks, { onHand, expiresOn }) => {
    const empty = weeks + Math.max(0, onHand) / use;
    return expiresOn === null
      ? empty
      : Math.max(weeks, Math.min(empty, weeksUntil(expiresOn, today)));
  }, 0);
}
