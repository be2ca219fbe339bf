import { expect, test } from 'vitest';
import { openHold } from '../../../core/shop/today/holds.ts';
import { inZone } from './in-zone.ts';
import { hold, order } from './rows.ts';

const day = '2026-11-25';
const groups = (change: Parameters<typeof hold>[0]) =>
  openHold(hold(change), order({ held: true }), day).map(({ kind, group }) => `${kind} ${group}`);

test('a hold waits, with for whom and since when, until its reminder', () => {
  expect(groups({})).toEqual(['hold waiting']);
  expect(groups({ remind_on: '2026-11-26' })).toEqual(['hold waiting']);
  expect(groups({ remind_on: day })).toEqual(['hold today']);
  expect(groups({ remind_on: '2026-11-24' })).toEqual(['hold late']);
  expect(openHold(hold(), order(), day)[0]).toMatchObject({
    what: 'Waiting for the customer: which tiller she wants',
    since: '2026-11-10',
    forRoom: 'office',
    opens: 'hold',
  });
  expect(openHold(hold({ kind: 'material', remind_on: day }), order(), day)[0]?.what).toBe(
    'Ask where the material is: which tiller she wants',
  );
});

test('a fee is announced in the week before, and told with the hold afterwards', () => {
  expect(groups({ storage_fee_on: '2026-12-03' })).toEqual(['hold waiting']);
  expect(groups({ storage_fee_on: '2026-12-02' })).toEqual(['hold waiting', 'storage-fee soon']);
  expect(groups({ storage_fee_on: day })).toEqual(['hold waiting', 'storage-fee today']);
  expect(groups({ storage_fee_on: '2026-11-24' })).toEqual(['hold waiting']);
  const [item] = openHold(hold({ storage_fee_on: '2026-11-24' }), order(), day);
  expect(item?.what).toContain('The storage fee counts since 2026-11-24.');
});

test('an unclaimed bow asks for a decision until somebody takes it, and the law is named', () => {
  expect(groups({ abandoned_on: '2026-12-01' })).toEqual(['hold waiting', 'unclaimed soon']);
  expect(groups({ abandoned_on: '2026-10-01' })).toEqual(['hold waiting', 'unclaimed late']);
  const [, item] = openHold(hold({ abandoned_on: day }), order(), day);
  expect(item?.what).toContain('local law');
});

test('released, or of an order that is closed, it says nothing', () => {
  expect(groups({ released_at: '2026-11-20T10:00:00.000Z', remind_on: day })).toEqual([]);
  expect(openHold(hold({ remind_on: day }), order({ stage: 'cancelled' }), day)).toEqual([]);
});

test('since is the day on the wall of the shop', () => {
  inZone('America/Los_Angeles');
  const evening = hold({ since: '2026-11-11T05:30:00.000Z' });
  expect(openHold(evening, order(), day)[0]?.since).toBe('2026-11-10');
});
