import { expect, test } from 'vitest';
import { uncheckedScales } from '../../../core/shop/today/scales.ts';
import type { ScaleCheckRow } from '../../../core/storage/tables.ts';
import { order } from './rows.ts';

const check = (change: Partial<ScaleCheckRow> = {}): ScaleCheckRow => ({
  id: 'check-1',
  row_version: 1,
  scale_id: 'scale-1',
  checked_at: '2026-11-24T12:00:00.000Z',
  checked_by: 'person-1',
  low_load_lbf: 20,
  low_reading_lbf: 20,
  high_load_lbf: 50,
  high_reading_lbf: 50,
  ...change,
});
const scale = { name: 'bench scale', lastCheck: check() };
const now = (time: string) => `2026-11-25T${time}.000Z`;

test('a scale is checked again after 24 hours while a bow is at the bench', () => {
  expect(uncheckedScales([scale], [order()], now('12:00:00'))).toEqual([]);
  expect(uncheckedScales([scale], [order()], now('12:00:01'))).toMatchObject([
    {
      group: 'today',
      forRoom: 'bench',
      since: '2026-11-24',
      what: expect.stringContaining('bench scale'),
    },
  ]);
});

test('one that was never checked, or reads wrong, is told too', () => {
  const never = { name: 'new', lastCheck: null };
  const wrong = { name: 'bent', lastCheck: check({ high_reading_lbf: 51 }) };
  const told = uncheckedScales([never, wrong], [order()], now('09:00:00'));
  expect(told.map(({ what }) => what)).toEqual([
    'Scale "new": It has never been checked. Hang two known loads on it.',
    'Scale "bent": It reads 1.00 lb off. Over 0.5 lb it is not used.',
  ]);
});

test('with no bow at the bench nobody needs it', () => {
  const elsewhere = [order({ stage: 'cure' }), order({ held: true })];
  expect(uncheckedScales([scale], elsewhere, now('20:00:00'))).toEqual([]);
});
