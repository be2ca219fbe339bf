import { describe, expect, test } from 'vitest';
import {
  checkErrors,
  checksFrom,
  standing,
  ticked,
} from '../../../renderer/screens/orders/final-check/check-fields.ts';
import type { FinalCheckRow } from '../../../shared/contract/final-check.ts';

const row = (
  item: FinalCheckRow['item'],
  safety: boolean,
  outcome: 'ok' | 'not-ok' | null = null,
  outdated = false,
): FinalCheckRow => ({
  item,
  label: item,
  hint: '',
  safety,
  outdated,
  entry:
    outcome === null
      ? null
      : {
          id: item,
          rowVersion: 1,
          item,
          outcome,
          doneOn: '2026-03-02',
          personName: 'Ben Marsh',
          note: '',
          overrideReason: null,
          recordedAt: '2026-03-02T09:00:00.000Z',
          struckReason: null,
        },
});
const rows = [row('check-flexed', true), row('check-nocks', true), row('check-finish', false)];

describe('what was ticked', () => {
  test('goes out in the order of the list, and nothing else does', () => {
    const fields = { 'check-finish': ticked('ok'), 'check-flexed': ticked('ok') };
    expect(checksFrom(fields, rows)).toEqual([
      { item: 'check-flexed', outcome: 'ok', note: '', finding: null },
      { item: 'check-finish', outcome: 'ok', note: '', finding: null },
    ]);
    expect(checkErrors(fields, rows)).toEqual({});
  });

  test('not in order needs words; a safety item also a choice, and a finding its place', () => {
    const fields = {
      'check-nocks': ticked('not-ok'),
      'check-finish': { ...ticked('not-ok'), note: 'run at the fade' },
    };
    expect(checkErrors(fields, rows)).toEqual({
      'check-nocks note': 'Say what is not in order.',
      'check-nocks finding': 'Choose one.',
    });
    const placed = { ...ticked('not-ok'), note: 'crack', finding: 'stop', place: ' ' } as const;
    expect(checkErrors({ 'check-nocks': placed }, rows)).toEqual({
      'check-nocks place': 'Say where on the bow.',
    });
  });

  test('a finding goes with its check; none goes where it was declined', () => {
    const stop = { ...ticked('not-ok'), note: ' crack ', finding: 'stop', place: 'tip' } as const;
    expect(checksFrom({ 'check-nocks': stop }, rows)).toEqual([
      {
        item: 'check-nocks',
        outcome: 'not-ok',
        note: 'crack',
        finding: { grade: 'stop', place: 'tip' },
      },
    ]);
    const none = { ...stop, finding: 'none' } as const;
    expect(checksFrom({ 'check-nocks': none }, rows)[0]?.finding).toBeNull();
    // Thought better of: the choice of a finding made before goes nowhere.
    const fine = { ...stop, outcome: 'ok' } as const;
    expect(checksFrom({ 'check-nocks': fine }, rows)[0]?.finding).toBeNull();
  });
});

test('how far the list is, an outdated check not counted', () => {
  expect(standing(rows)).toBe('3 to look at');
  expect(
    standing([
      row('check-flexed', true, 'ok', true),
      row('check-nocks', true, 'not-ok'),
      row('check-finish', false, 'ok'),
    ]),
  ).toBe('1 of 3 in order, 1 not in order, 1 to look at');
  expect(standing([row('check-flexed', true, 'ok')])).toBe('1 of 1 in order');
});
