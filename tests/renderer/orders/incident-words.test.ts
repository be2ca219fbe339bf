import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { fieldsOf, requestOf } from '../../../renderer/screens/orders/incidents/incident-fields.ts';
import { claimLine, stillOpen } from '../../../renderer/screens/orders/incidents/incident-words.ts';
import type { Incident } from '../../../shared/contract/incidents.ts';

beforeEach(() => {
  vi.useFakeTimers({ now: new Date(2026, 2, 10, 9, 0), toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const incident: Incident = {
  id: 'incident-1',
  rowVersion: 1,
  kind: 'damaged-in-transit',
  happenedOn: '2026-03-01',
  what: 'box crushed at one end',
  findingId: 'finding-1',
  foundAt: '2026-03-02T12:00:00.000Z',
  foundBy: 'Ben Marsh',
  claimWith: 'Private carrier A',
  claimUntil: '2026-03-30',
  claimFiledOn: null,
  claimNumber: '',
  ownerToldOn: null,
  ownerToldHow: '',
  remedy: '',
  settledAt: null,
  settledHow: '',
};

test.each([
  ['2026-03-30', null, 'file it until 30 Mar, 20 days left'],
  ['2026-03-17', 'attention', 'file it until 17 Mar, 7 days left'],
  ['2026-03-11', 'attention', 'file it until 11 Mar, 1 day left'],
  ['2026-03-10', 'attention', 'file it until 10 Mar, today'],
  ['2026-03-09', 'attention', 'the last day was 9 Mar'],
] as const)('a claim until %s', (claimUntil, mark, words) => {
  expect(claimLine({ ...incident, claimUntil })).toEqual({
    mark,
    text: `Claim with Private carrier A: ${words}`,
  });
});

test('a filed claim is done whatever its last day was; without a claim there is no line', () => {
  expect(
    claimLine({
      ...incident,
      claimUntil: '2026-03-01',
      claimFiledOn: '2026-02-28',
      claimNumber: '77-1',
    }),
  ).toEqual({
    mark: 'done',
    text: 'Claim filed with Private carrier A on 28 Feb, number 77-1',
  });
  expect(claimLine({ ...incident, claimWith: '', claimUntil: null })).toBeNull();
});

test('what a settlement waits for', () => {
  expect(stillOpen(incident, false)).toEqual([
    'The customer has not been told.',
    'No remedy is agreed.',
  ]);
  expect(stillOpen(incident, true)).toEqual(['No remedy is agreed.']);
  expect(stillOpen({ ...incident, ownerToldOn: '2026-03-02', remedy: 'paid' }, false)).toEqual([]);
});

test('an emptied day is sent as none; everything else goes as it stands', () => {
  const fields = { ...fieldsOf(incident), claimUntil: '', remedy: 'a new overlay' };
  expect(requestOf(incident, fields)).toEqual({
    id: 'incident-1',
    rowVersion: 1,
    what: 'box crushed at one end',
    ownerToldOn: null,
    ownerToldHow: '',
    remedy: 'a new overlay',
    claimWith: 'Private carrier A',
    claimUntil: null,
    claimFiledOn: null,
    claimNumber: '',
  });
});
