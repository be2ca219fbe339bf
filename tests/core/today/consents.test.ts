import { expect, test } from 'vitest';
import { type Unanswered, unanswered } from '../../../core/shop/today/consents.ts';
import { inZone } from './in-zone.ts';
import { order } from './rows.ts';

const ladder = [3, 10, 21];
const asked = (change: Partial<Unanswered> = {}): Unanswered => ({
  kind: 'marking-approval',
  askedAt: '2026-11-10T15:00:00.000Z',
  state: 'waiting',
  ...change,
});
const on = (day: string, of = [asked()], which = order()) => unanswered(of, which, day, ladder);

test('an unanswered consent waits until the first reminder day, and is then due', () => {
  expect(on('2026-11-10')).toMatchObject([{ group: 'waiting', since: '2026-11-10', dueOn: null }]);
  expect(on('2026-11-12')).toMatchObject([{ group: 'waiting' }]);
  expect(on('2026-11-13')).toMatchObject([{ group: 'today', dueOn: '2026-11-13' }]);
  expect(on('2026-11-19')).toMatchObject([{ group: 'today', dueOn: '2026-11-13' }]);
  expect(on('2026-11-20')).toMatchObject([{ group: 'today', dueOn: '2026-11-20' }]);
  expect(on('2027-01-20')).toMatchObject([{ group: 'today', dueOn: '2026-12-01' }]);
});

test('what one customer was asked is one line, since the first asking', () => {
  const three = [
    asked({ kind: 'price-and-scope', askedAt: '2026-11-11T15:00:00.000Z' }),
    asked({ kind: 'alteration-acknowledgement' }),
    asked(),
  ];
  expect(on('2026-11-12', three)).toMatchObject([
    {
      what: 'Price and scope, alteration acknowledgement and marking approval: asked, no answer yet.',
      since: '2026-11-10',
      opens: 'consents',
    },
  ]);
});

test('a text that no longer fits is to be asked again, beside what still waits', () => {
  const items = on('2026-11-12', [
    asked({ state: 'outdated' }),
    asked({ kind: 'price-and-scope' }),
  ]);
  expect(items.map(({ group, opens }) => [group, opens])).toEqual([
    ['today', 'consents:marking-approval'],
    ['waiting', 'consents:price-and-scope'],
  ]);
});

test('on hold, the hold does the reminding', () => {
  expect(on('2026-12-20', [asked()], order({ held: true }))).toMatchObject([
    { group: 'waiting', dueOn: null },
  ]);
});

test('nothing waits of an order that is closed, nor where nothing was asked', () => {
  expect(on('2026-12-20', [asked()], order({ stage: 'shipped' }))).toEqual([]);
  expect(on('2026-12-20', [])).toEqual([]);
});

test('days are counted from the day in the shop, across the end of summer time', () => {
  inZone('America/New_York');
  // Half past nine in the evening of 29 October; in UTC it is the 30th.
  const late = [asked({ askedAt: '2026-10-30T01:30:00.000Z' })];
  expect(on('2026-10-31', late)).toMatchObject([{ group: 'waiting', since: '2026-10-29' }]);
  expect(on('2026-11-01', late)).toMatchObject([{ group: 'today', dueOn: '2026-11-01' }]);
});
