import { afterEach, beforeEach, describe, expect, it, test, vi } from 'vitest';
import { taskErrors } from '../../../renderer/screens/orders/tasks/task-fields.ts';
import { daysFrom, daysList } from '../../../renderer/screens/settings/days-list.ts';
import { everything, fits, hides } from '../../../renderer/screens/today/filter.ts';
import { hrefOf, keyOf } from '../../../renderer/screens/today/place.ts';
import { forText, laterText, whenText } from '../../../renderer/screens/today/words.ts';
import { itemWith } from './items.ts';

beforeEach(() => {
  // Late in the evening of a local Wednesday: the UTC day may already be the next one.
  vi.useFakeTimers({ now: new Date(2026, 10, 25, 23, 30), toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('when', () => {
  it.each([
    ['late', { dueOn: '2026-11-22' }, '3 days late'],
    ['today', { dueOn: '2026-11-25' }, ''],
    ['today', { since: '2026-11-22' }, '3 days'],
    ['today', { dueOn: '2026-12-04', since: '2026-11-01' }, 'due 4 Dec'],
    ['today', { dueOn: '2026-11-20', since: '2026-11-10' }, '15 days'],
    ['waiting', { since: '2026-11-25' }, 'since today'],
    ['waiting', { since: '2026-11-24', dueOn: '2026-11-27' }, '1 day, remind Fri'],
    ['soon', { dueOn: '2026-11-26' }, 'due tomorrow'],
    ['ready', { dueOn: null, since: '2026-11-01' }, ''],
    ['ready', { dueOn: '2026-12-12' }, 'due 12 Dec'],
    ['stores', { kind: 'expired-lot', dueOn: '2026-11-24' }, 'expired yesterday'],
    ['stores', { kind: 'expiring-lot', dueOn: '2026-11-25' }, 'use by today'],
    ['stores', { kind: 'time-to-order', dueOn: null }, ''],
  ] as const)('%s, %j reads "%s"', (group, days, text) => {
    expect(whenText(itemWith({ group, ...days }))).toBe(text);
  });

  it('counts calendar days over the end of summer time and of the year', () => {
    expect(forText('2026-10-20')).toBe('36 days');
    vi.setSystemTime(new Date(2027, 0, 2, 0, 10));
    expect(forText('2026-12-31')).toBe('2 days');
  });

  it('says from when on a task far ahead will show', () => {
    expect(laterText('2026-12-02')).toBeNull();
    expect(laterText('2026-12-03')).toBe('The task is kept. It shows here from 26 Nov.');
    expect(laterText('2027-01-20')).toBe('The task is kept. It shows here from 13 Jan 2027.');
  });
});

describe('filter', () => {
  it('shows a room, and the tasks of one person', () => {
    const mine = itemWith({ kind: 'task', forPersonId: 'person-2', forRoom: 'bench' });
    expect(fits(mine, everything)).toBe(true);
    expect(fits(mine, { room: 'bench', person: 'person-2' })).toBe(true);
    expect(fits(mine, { room: 'office', person: 'all' })).toBe(false);
    expect(fits(mine, { room: 'all', person: 'person-1' })).toBe(false);
    expect(fits(itemWith(), { room: 'all', person: 'person-2' })).toBe(false);
    expect([hides(everything), hides({ room: 'bench', person: 'all' })]).toEqual([false, true]);
  });
});

describe('where an item leads', () => {
  it.each([
    [{ opens: null }, '/orders/order-1'],
    [{ opens: 'consents:undershoot' }, '/orders/order-1?open=consents:undershoot'],
    [{ opens: 'hold' }, '/orders/order-1?open=hold'],
    [{ opens: 'arrival' }, '/orders/order-1/unpacking'],
    [{ kind: 'scale', orderId: null }, '/settings?tab=scales'],
    [{ kind: 'task', orderId: null }, null],
    [{ kind: 'expired-lot', orderId: null, consumableId: 'can-1' }, '/stores/can-1'],
  ] as const)('%j: %s', (change, href) => {
    expect(hrefOf(itemWith(change))).toBe(href);
  });

  it('tells two days of one lot apart', () => {
    const one = itemWith({ kind: 'expiring-lot', consumableId: 'can-1', dueOn: '2026-12-01' });
    expect(keyOf(one)).not.toBe(keyOf({ ...one, dueOn: '2026-12-02' }));
  });

  it('tells two items of one order apart', () => {
    const one = itemWith({ kind: 'task', taskId: 'task-1', what: 'Call' });
    expect(keyOf(one)).not.toBe(keyOf({ ...one, taskId: 'task-2' }));
  });
});

test('a task needs words and a day', () => {
  expect(taskErrors({ what: ' ', dueOn: '', forPersonId: null })).toEqual({
    what: 'Say what is to be done.',
    dueOn: 'Give a day.',
  });
  expect(taskErrors({ what: 'Call', dueOn: '2026-11-25', forPersonId: null })).toEqual({});
});

test('the reminder days are read as people write them', () => {
  expect(daysFrom('3, 10,21')).toEqual([3, 10, 21]);
  expect(daysFrom('3 10; 21')).toEqual([3, 10, 21]);
  expect(daysFrom('')).toEqual([]);
  expect(daysFrom('3, ten')).toEqual([3, Number.NaN]);
  expect(daysFrom('3.5')).toEqual([Number.NaN]);
  expect(daysList([3, 10, Number.NaN])).toBe('3, 10');
});
