import { expect, it } from 'vitest';
import type { Seen } from '../../../renderer/screens/bench-view/seen.ts';
import {
  noNumber,
  numberRow,
  tillerLine,
  weightLine,
} from '../../../renderer/screens/bench-view/seen-text.ts';

const seen: Seen = {
  orderId: 'order-1',
  number: '26-0147',
  customer: 'Hale',
  bow: 'longbow',
  advice: 'a',
  step: { kind: 'weigh' },
  sentence: 'Weigh the bow.',
  now: { lbf: 47.62, sdLbf: 0.2, isWeighed: false },
  stopAtLbf: 46.7,
  targetLbf: 45,
  drawIn: 28,
  tiller: { nowIn: 0, targetIn: 0.125, upperTrack: null, lowerTrack: null },
  told: null,
  missing: [],
  cautions: [],
};

it('shows no forecast to the one who reads the rig', () => {
  expect(numberRow(seen, null, true)).toMatchObject({ now: noNumber, nowNote: 'on the rig' });
  expect(numberRow(seen, 47.84, true)).toMatchObject({ now: '47.8', nowNote: 'pulled so far' });
});

it('says where the number now was reckoned only', () => {
  expect(numberRow(seen, null, false)).toEqual({
    now: '47.6',
    nowNote: 'reckoned, not weighed ± 0.2',
    stopAt: '46.7',
    target: '45',
    unit: 'lb @ 28"',
  });
  expect(numberRow({ ...seen, now: null }, null, false).nowNote).toBe('not weighed');
});

it('says which limb wants more off', () => {
  expect(tillerLine(seen)).toBe('Tiller: upper strong 1/8 in → more from upper');
  expect(tillerLine({ tiller: null })).toBeNull();
});

it('tells all weights in one line where large words fill the screen', () => {
  expect(weightLine(seen)).toBe('Now 47.6 lb, stop at 46.7 lb, target 45 lb @ 28".');
  const told = 'Weighed 47.6 lb, expected 47.5 lb.';
  const bare = { ...seen, now: null, stopAtLbf: null, targetLbf: null };
  expect(weightLine({ ...bare, told })).toBe(told);
  expect(weightLine(bare)).toBeNull();
});
