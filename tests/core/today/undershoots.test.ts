import { expect, test } from 'vitest';
import { unaskedUndershoot } from '../../../core/shop/today/undershoots.ts';
import { order, undershoot } from './rows.ts';

test('an offer that nobody put to the customer is to be asked', () => {
  expect(unaskedUndershoot(undershoot(), null, order())).toMatchObject([
    {
      group: 'today',
      what: 'Came out at 43.5# @ 28", the target was 45# @ 28". The offer is written: ask the customer.',
      opens: 'undershoot',
    },
  ]);
});

test('asked, struck out or closed, it is not', () => {
  expect(unaskedUndershoot(undershoot(), '2026-11-22T16:00:00.000Z', order())).toEqual([]);
  const struck = undershoot({ struck_reason: 'weighed again' });
  expect(unaskedUndershoot(struck, null, order())).toEqual([]);
  expect(unaskedUndershoot(undershoot(), null, order({ stage: 'shipped' }))).toEqual([]);
});

test('an answer about an older offer is none about this one', () => {
  expect(unaskedUndershoot(undershoot(), '2026-11-21T16:00:00.000Z', order())).toHaveLength(1);
});
