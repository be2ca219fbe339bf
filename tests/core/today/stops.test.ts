import { expect, test } from 'vitest';
import type { OpenStop } from '../../../core/shop/findings/open-stops.ts';
import { undecidedStops } from '../../../core/shop/today/stops.ts';
import { order } from './rows.ts';

const stop = (id: string, place: string, foundAt: string): OpenStop => ({
  id,
  place,
  foundAt,
  orderId: 'order-1',
  bowIds: ['bow-1', 'bow-1'],
});
const stops = [
  stop('b', 'lower tip', '2026-11-24T10:00:00.000Z'),
  stop('a', 'upper fade', '2026-11-23T10:00:00.000Z'),
];

test('an open stop finding asks for a decision, and says not to draw', () => {
  expect(undecidedStops(stops, order())).toMatchObject([
    {
      kind: 'stop-finding',
      group: 'today',
      since: '2026-11-23',
      what: 'Do not string or draw it. Stop finding, upper fade and 1 more: decide, repair it or send it home.',
      opens: 'findings',
    },
  ]);
});

test('once it is decided, or the bow has left, it does not', () => {
  expect(undecidedStops(stops, order({ held: true }))).toEqual([]);
  expect(undecidedStops(stops, order({ goingHome: true }))).toEqual([]);
  expect(undecidedStops(stops, order({ stage: 'shipped' }))).toEqual([]);
  expect(undecidedStops([], order())).toEqual([]);
});
