import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ordersInShop, stayOf, type TimeUnit } from '../../../core/schedule/flow.ts';
import { orderQuantity, yearlyCost } from '../../../core/schedule/order-quantity.ts';
import { reorderPoint, safetyStock, timeToOrder } from '../../../core/schedule/reorder.ts';

const flow = { use: 10, useSpread: 2, wait: 4, waitSpread: 1 };
const above0 = fc.double({ min: 0.01, max: 1000, noNaN: true });

describe('reorder point', () => {
  test('steady use and a reliable wait need no safety', () => {
    expect(reorderPoint({ ...flow, useSpread: 0, waitSpread: 0 }, 1.65)).toBe(40);
  });

  test('both spreads together: sqrt(4 x 2^2 + 10^2 x 1^2)', () => {
    expect(safetyStock(flow, 1)).toBeCloseTo(Math.sqrt(116), 12);
  });

  test('at the point it is time, and what is on order counts', () => {
    expect(timeToOrder(40, 0, 40)).toBe(true);
    expect(timeToOrder(40.1, 0, 40)).toBe(false);
    expect(timeToOrder(10, 31, 40)).toBe(false);
  });

  test.each([
    [{ use: 0 }, 'The use must be more than 0.'],
    [{ useSpread: -1 }, 'The spread of the use cannot be less than 0.'],
    [{ wait: Number.NaN }, 'The wait for a delivery must be more than 0.'],
    [{ waitSpread: -1 }, 'The spread of the wait cannot be less than 0.'],
  ])('%o is refused', (change, sentence) => {
    expect(() => reorderPoint({ ...flow, ...change }, 1.65)).toThrow(sentence);
  });
});

test('no other quantity costs less over a year', () => {
  fc.assert(
    fc.property(above0, above0, above0, above0, (yearlyUse, perOrder, keepingPerUnit, other) => {
      const costs = { yearlyUse, perOrder, keepingPerUnit };
      const best = yearlyCost(costs, orderQuantity(costs));
      expect(best).toBeLessThanOrEqual(yearlyCost(costs, other) * (1 + 1e-9));
    }),
  );
});

test('orders in the shop and their stay undo each other, in any units', () => {
  const unit = fc.constantFrom<TimeUnit>('minute', 'hour', 'day', 'week');
  fc.assert(
    fc.property(above0, unit, above0, unit, (orders, per, time, stayUnit) => {
      const inside = ordersInShop({ orders, per }, { time, unit: stayUnit });
      expect(stayOf(inside, { orders, per }, stayUnit) / time).toBeCloseTo(1, 9);
    }),
  );
});

test('three bows a week that stay four weeks: twelve in the shop', () => {
  expect(ordersInShop({ orders: 3, per: 'week' }, { time: 28, unit: 'day' })).toBeCloseTo(12, 12);
});

test.each([
  [() => ordersInShop({ orders: 0, per: 'week' }, { time: 1, unit: 'day' }), 'Orders finished'],
  [
    () => ordersInShop({ orders: 1, per: 'week' }, { time: 0, unit: 'day' }),
    'The time in the shop',
  ],
  [() => stayOf(-1, { orders: 1, per: 'week' }, 'day'), 'Orders in the shop'],
  [() => orderQuantity({ yearlyUse: 1, perOrder: 0, keepingPerUnit: 1 }), 'The cost of an order'],
])('%s: not above 0 is refused', (call, what) => {
  expect(call).toThrow(`${what} must be more than 0.`);
});
