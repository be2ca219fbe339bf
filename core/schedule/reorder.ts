import { refuseBelowZero, refuseUnlessAboveZero } from '../finish/refuse.ts';

/**
 * z: standard deviations of safety for a chance, in percent, of running out before the delivery.
 * Normal distribution, two decimals, as the textbooks' tables print it (5 percent is 1.645 there,
 * taken up).
 */
export const safetyZ = { 10: 1.28, 5: 1.65, 3: 1.88, 1: 2.33 } as const;

export type RunOutPercent = keyof typeof safetyZ;

/** Use of a consumable and the wait for it, both by the same period, a week or a day. */
export interface UseAndWait {
  /** Mean use per period, in the consumable's unit. */
  use: number;
  /** Standard deviation of the use in one period, same unit; 0 where steady. */
  useSpread: number;
  /** Mean wait for a delivery, in periods. */
  wait: number;
  /** Standard deviation of the wait, in periods; 0 where reliable. */
  waitSpread: number;
}

function refuseOdd({ use, useSpread, wait, waitSpread }: UseAndWait): void {
  refuseUnlessAboveZero('use', use, 'The use');
  refuseBelowZero('useSpread', useSpread, 'The spread of the use');
  refuseUnlessAboveZero('wait', wait, 'The wait for a delivery');
  refuseBelowZero('waitSpread', waitSpread, 'The spread of the wait');
}

/**
 * Safety stock, in the consumable's unit: z sqrt(wait x useSpread^2 + use^2 x waitSpread^2), with
 * use and wait independent. With one of the spreads 0 it is the textbooks' simpler form:
 * J. Heizer, B. Render, "Operations Management", ch. 12; W. J. Stevenson, "Operations
 * Management", ch. 12. The form for both at once is from memory.
 * @param z see {@link safetyZ}.
 * @throws ShopError BAD_INPUT naming the value that is out of bounds.
 */
export function safetyStock(flow: UseAndWait, z: number): number {
  refuseOdd(flow);
  refuseBelowZero('z', z, 'The safety factor');
  const { use, useSpread, wait, waitSpread } = flow;
  return z * Math.sqrt(wait * useSpread ** 2 + use ** 2 * waitSpread ** 2);
}

/**
 * Stock at which to order, in the consumable's unit: use over the wait plus the safety stock.
 * @throws ShopError BAD_INPUT as {@link safetyStock}.
 */
export function reorderPoint(flow: UseAndWait, z: number): number {
  return flow.use * flow.wait + safetyStock(flow, z);
}

/**
 * Whether it is time to order: on hand in date and on order together at the reorder point or under.
 */
export function timeToOrder(onHand: number, onOrder: number, reorderAt: number): boolean {
  return onHand + onOrder <= reorderAt;
}
