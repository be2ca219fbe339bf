import { expect, test } from 'vitest';
import { ordersInShop, stayOf } from '../../core/schedule/flow.ts';

// J. D. C. Little, "A proof for the queuing formula L = lambda W", Operations Research 9 (1961);
// the numbers from a printed example of a shop that ten people an hour enter.

test('10 an hour staying half an hour: 5 inside', () => {
  expect(ordersInShop({ orders: 10, per: 'hour' }, { time: 0.5, unit: 'hour' })).toBeCloseTo(5, 12);
});

test('20 an hour: 10 inside, or a quarter of an hour each to hold 5', () => {
  const twenty = { orders: 20, per: 'hour' } as const;
  expect(ordersInShop(twenty, { time: 0.5, unit: 'hour' })).toBeCloseTo(10, 12);
  expect(stayOf(5, twenty, 'hour')).toBeCloseTo(0.25, 12);
});

test('2 inside at 10 an hour stay 0.2 h, 12 minutes', () => {
  expect(stayOf(2, { orders: 10, per: 'hour' }, 'hour')).toBeCloseTo(0.2, 12);
  expect(stayOf(2, { orders: 10, per: 'hour' }, 'minute')).toBeCloseTo(12, 12);
});

test('printed wrongly: 10 an hour times 5 minutes is 0.833, not 50', () => {
  const inside = ordersInShop({ orders: 10, per: 'hour' }, { time: 5, unit: 'minute' });
  expect(inside).toBeCloseTo(0.833, 3);
  expect(inside).not.toBeCloseTo(50, 0);
});
