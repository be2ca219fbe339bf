import { expect, test } from 'vitest';
import { checkUnfinished, notArrived } from '../../../core/shop/today/arrivals.ts';
import { arrival, order } from './rows.ts';

const mailed = (change: Parameters<typeof order>[0] = {}) =>
  order({ stage: 'in-mail', stageSince: '2026-12-20', ...change });

test('a bow in the mail is asked after when two weeks are over, across the new year', () => {
  expect(notArrived(mailed(), '2027-01-02')).toEqual([]);
  expect(notArrived(mailed(), '2027-01-03')).toMatchObject([
    { group: 'today', dueOn: '2027-01-03', forRoom: 'office' },
  ]);
  expect(notArrived(mailed(), '2027-01-04')).toMatchObject([
    { group: 'late', what: expect.stringContaining('In the mail for 15 days') },
  ]);
});

test('on hold, or in another stage, nobody asks', () => {
  expect(notArrived(mailed({ held: true }), '2027-02-01')).toEqual([]);
  expect(notArrived(order({ stage: 'arrived', stageSince: '2026-01-01' }), '2027-02-01')).toEqual(
    [],
  );
});

test('an arrival check is due two days after the box was opened', () => {
  const on = (day: string) => checkUnfinished(arrival(), order({ stage: 'arrived' }), day);
  expect(on('2026-11-24')).toEqual([]);
  expect(on('2026-11-25')).toMatchObject([{ group: 'today', opens: 'arrival' }]);
  expect(on('2026-11-26')).toMatchObject([{ group: 'late', since: '2026-11-23' }]);
});

test('complete, on hold or cancelled, it is not', () => {
  const day = '2026-12-01';
  const complete = arrival({ completed_at: '2026-11-24T10:00:00.000Z' });
  expect(checkUnfinished(complete, order(), day)).toEqual([]);
  expect(checkUnfinished(arrival(), order({ held: true }), day)).toEqual([]);
  expect(checkUnfinished(arrival(), order({ stage: 'cancelled' }), day)).toEqual([]);
});
