import { refuseUnlessAboveZero } from '../finish/refuse.ts';

export interface OrderCosts {
  /** Use in a year, in the consumable's unit. */
  yearlyUse: number;
  /** Cost of placing and receiving one order, in any currency. */
  perOrder: number;
  /** Cost of keeping one unit for a year, same currency. */
  keepingPerUnit: number;
}

function refuseOdd({ yearlyUse, perOrder, keepingPerUnit }: OrderCosts): void {
  refuseUnlessAboveZero('yearlyUse', yearlyUse, 'The use in a year');
  refuseUnlessAboveZero('perOrder', perOrder, 'The cost of an order');
  refuseUnlessAboveZero('keepingPerUnit', keepingPerUnit, 'The cost of keeping one');
}

/**
 * Cheapest amount to order at a time, in the consumable's unit, unrounded: sqrt(2 D S / H).
 * F. W. Harris (1913), as in J. Heizer, B. Render, "Operations Management", ch. 12. What expires
 * sets a lower limit of its own.
 * @throws ShopError BAD_INPUT where a value is not above 0.
 */
export function orderQuantity(costs: OrderCosts): number {
  refuseOdd(costs);
  return Math.sqrt((2 * costs.yearlyUse * costs.perOrder) / costs.keepingPerUnit);
}

/**
 * Ordering and keeping for a year at a given order quantity, in the costs' currency, without the
 * goods themselves.
 * @throws ShopError BAD_INPUT where a value is not above 0.
 */
export function yearlyCost(costs: OrderCosts, quantity: number): number {
  refuseOdd(costs);
  refuseUnlessAboveZero('quantity', quantity, 'The order quantity');
  return (costs.yearlyUse / quantity) * costs.perOrder + (quantity / 2) * costs.keepingPerUnit;
}
