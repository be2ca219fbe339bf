import { expect, test } from 'vitest';
import { ladderSteps } from '../../../renderer/screens/orders/holds/ladder.ts';
import type { HoldDetail } from '../../../shared/contract/holds.ts';

const base: HoldDetail = {
  id: 'hold-1',
  kind: 'customer',
  reason: 'no answer',
  since: '2026-03-02T12:00:00.000Z',
  remindOn: '2026-03-12',
  storageFeeOn: '2026-04-01',
  abandonedOn: '2026-05-31',
  releasedAt: null,
  rowVersion: 2,
  ladder: ['2026-03-05', '2026-03-12', '2026-03-23'],
  reminders: [
    {
      id: 'reminder-1',
      sentAt: '2026-03-05T12:00:00.000Z',
      how: 'by e-mail',
      note: 'asked again',
      personName: 'Otto Reed',
    },
  ],
};
const told = (hold: HoldDetail) => ladderSteps(hold).map(({ kind, on }) => `${kind} ${on}`);

test('one list by day: sent, next, the rungs after it, fee and unclaimed', () => {
  expect(told(base)).toEqual([
    'sent 2026-03-05',
    'next 2026-03-12',
    'later 2026-03-23',
    'storage-fee 2026-04-01',
    'unclaimed 2026-05-31',
  ]);
  expect(ladderSteps(base)[0]?.words).toBe('by e-mail: asked again');
});

test('a rung that was passed over does not come back, and after the last none is left', () => {
  expect(told({ ...base, remindOn: '2026-03-23', reminders: [] })).toEqual([
    'next 2026-03-23',
    'storage-fee 2026-04-01',
    'unclaimed 2026-05-31',
  ]);
  expect(told({ ...base, remindOn: null, reminders: [] })).toEqual([
    'storage-fee 2026-04-01',
    'unclaimed 2026-05-31',
  ]);
});

test('a fee brought forward stands in its place; a released hold keeps only what was sent', () => {
  expect(told({ ...base, storageFeeOn: '2026-03-12', abandonedOn: null })).toEqual([
    'sent 2026-03-05',
    'next 2026-03-12',
    'storage-fee 2026-03-12',
    'later 2026-03-23',
  ]);
  expect(told({ ...base, releasedAt: '2026-03-06T12:00:00.000Z' })).toEqual(['sent 2026-03-05']);
});
