import { expect, test } from 'vitest';
import { about } from '../../../core/shop/today/item.ts';
import { sorted } from '../../../core/shop/today/sort.ts';
import type { TodayGroup, TodayKind } from '../../../shared/contract/today.ts';
import { order } from './rows.ts';

const item = (group: TodayGroup, kind: TodayKind, days: { dueOn?: string; since?: string } = {}) =>
  about(order(), {
    group,
    kind,
    what: `${group} ${kind} ${days.dueOn ?? days.since ?? ''}`,
    ...days,
  });

test('what is due by how bad it is, waiting by how long, stores by what cannot wait, the rest as it comes', () => {
  const expected = [
    item('late', 'claim', { dueOn: '2026-11-20' }),
    item('late', 'promised', { dueOn: '2026-11-18' }),
    item('late', 'promised', { dueOn: '2026-11-20' }),
    item('late', 'shipment', { dueOn: '2026-10-01' }),
    item('today', 'stop-finding', { since: '2026-11-25' }),
    item('today', 'promised', { dueOn: '2026-11-25' }),
    item('today', 'consent', { dueOn: '2026-11-01' }),
    item('waiting', 'hold', { since: '2026-09-01' }),
    item('waiting', 'consent', { since: '2026-11-01' }),
    item('soon', 'task', { dueOn: '2026-11-26' }),
    item('soon', 'promised', { dueOn: '2026-11-27' }),
    item('stores', 'expired-lot', { dueOn: '2026-11-01' }),
    item('stores', 'expired-lot', { dueOn: '2026-11-20' }),
    item('stores', 'time-to-order'),
    item('stores', 'expiring-lot', { dueOn: '2026-11-26' }),
    item('ready', 'ready', { dueOn: '2026-11-27' }),
    item('ready', 'ready'),
  ];
  const mixed = expected.toReversed();
  expect(sorted(mixed).map(({ what }) => what)).toEqual(expected.map(({ what }) => what));
});
