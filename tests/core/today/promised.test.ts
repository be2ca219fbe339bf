import { expect, test } from 'vitest';
import { promised } from '../../../core/shop/today/promised.ts';
import { order } from './rows.ts';

const day = '2026-11-25';
const groupOf = (promisedOn: string | null) => promised(order({ promisedOn }), day)[0]?.group;

test('a promise is late, for today, or for the next seven days', () => {
  expect(groupOf('2026-11-24')).toBe('late');
  expect(groupOf('2026-11-25')).toBe('today');
  expect(groupOf('2026-11-26')).toBe('soon');
  expect(groupOf('2026-12-02')).toBe('soon');
  expect(groupOf('2026-12-03')).toBeUndefined();
  expect(groupOf(null)).toBeUndefined();
});

test('it says where the bow stands, in the room that has it', () => {
  expect(promised(order({ promisedOn: day, stage: 'cure' }), day)).toMatchObject([
    { forRoom: 'finish room', what: 'Promised; it stands in "Cure".', dueOn: day },
  ]);
});

test('on hold, the customer is to be told', () => {
  const [item] = promised(order({ promisedOn: day, held: true }), day);
  expect(item?.what).toContain('tell the customer');
});

test.each(['shipped', 'collected', 'cancelled'] as const)('nothing is late once %s', (stage) => {
  expect(promised(order({ promisedOn: '2026-01-01', stage }), day)).toEqual([]);
});
