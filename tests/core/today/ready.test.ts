import { expect, test } from 'vitest';
import { readyToGoOn } from '../../../core/shop/today/ready.ts';
import type { Stage } from '../../../shared/stages.ts';
import { openAt } from '../gates/gate-cases.ts';
import { order } from './rows.ts';

const ready = (stage: Stage, next: Stage | null, change: Parameters<typeof order>[0] = {}) =>
  readyToGoOn(order({ stage, ...change }), next, openAt(next ?? 'shipped'));

test.each([
  ['in-mail', 'arrived'],
  ['arrived', 'agreed'],
  ['agreed', 'weight-work'],
  ['strip-sand', 'finish'],
  ['cure', 'final-check'],
  ['final-check', 'packed'],
  ['packed', 'shipped'],
] as const)('from %s, an open gate to %s is told', (stage, next) => {
  expect(ready(stage, next)).toMatchObject([{ kind: 'ready', group: 'ready', orderId: 'order-1' }]);
});

test.each([
  ['requested', 'in-mail'],
  ['weight-work', 'strip-sand'],
  ['finish', 'cure'],
] as const)('from %s, the gate to %s asks for nothing new: open, it is no news', (stage, next) => {
  expect(ready(stage, next)).toEqual([]);
});

test('on hold, at the end of its way or with something missing, an order is not ready', () => {
  expect(ready('agreed', 'weight-work', { held: true })).toEqual([]);
  expect(ready('shipped', null)).toEqual([]);
  const facts = { ...openAt('weight-work'), openStops: 1 };
  expect(readyToGoOn(order({ stage: 'agreed' }), 'weight-work', facts)).toEqual([]);
});

test('it is told with its promise, and in the room that has the bow', () => {
  expect(ready('cure', 'final-check', { promisedOn: '2026-12-01' })).toMatchObject([
    { dueOn: '2026-12-01', forRoom: 'finish room', what: 'Nothing is missing for "Final check".' },
  ]);
});
