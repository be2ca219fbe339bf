import { expect, test } from 'vitest';
import { openIncident } from '../../../core/shop/today/incidents.ts';
import { incident, order } from './rows.ts';

const day = '2026-11-25';
const of = (change: Parameters<typeof incident>[0], on = day) =>
  openIncident(incident(change), order({ stage: 'shipped' }), on);
const groups = (change: Parameters<typeof incident>[0], on = day) =>
  of(change, on).map(({ kind, group }) => `${kind} ${group}`);

test('the owner is told the day it is found', () => {
  const found = { owner_told_on: null, found_at: '2026-11-25T15:00:00.000Z' };
  expect(groups(found)).toEqual(['incident today']);
  expect(groups(found, '2026-11-26')).toEqual(['incident late']);
  expect(of(found)[0]?.what).toBe('Tell the customer. Damaged in transit: lower tip broken off');
});

test('a claim is to be filed in its last two weeks, and is late when they are over', () => {
  const until = (claim_until: string) => ({ claim_until });
  expect(groups(until('2026-12-10'))).toEqual(['incident waiting']);
  expect(groups(until('2026-12-09'))).toEqual(['claim today']);
  expect(groups(until(day))).toEqual(['claim today']);
  expect(groups(until('2026-11-24'))).toEqual(['claim late']);
  expect(of(until('2026-12-01'))[0]).toMatchObject({ dueOn: '2026-12-01', opens: 'incidents' });
});

test('both are told side by side', () => {
  expect(groups({ owner_told_on: null, claim_until: '2026-12-01' })).toEqual([
    'incident late',
    'claim today',
  ]);
});

test('filed, it waits to be settled, since the filing', () => {
  const filed = { claim_until: '2026-11-20', claim_filed_on: '2026-11-19', claim_number: 'C 9' };
  expect(of(filed)).toMatchObject([
    {
      group: 'waiting',
      since: '2026-11-19',
      what: 'Claim C 9 with Private carrier A is filed and not settled.',
    },
  ]);
});

test('settled, it is over', () => {
  const settled_at = '2026-11-24T10:00:00.000Z';
  expect(groups({ settled_at, owner_told_on: null, claim_until: day })).toEqual([]);
});
