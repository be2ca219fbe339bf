import { expect, test } from 'vitest';
import { underText } from '../../../renderer/screens/orders/weighings/under-text.ts';

const at = (nowLbf: number | null, targetLbf: number | null) => ({
  stage: 'weight-work' as const,
  weights: { arrivalLbf: 54.2, nowLbf, targetLbf, drawIn: 28 },
});

test('a bow under its target is told at once, and exactly at it is not under', () => {
  expect(underText(at(46.9, 48))).toMatch(/^1\.1 lb under the target\. Take nothing more off/);
  expect(underText(at(48, 48))).toBeNull();
  expect(underText(at(48.1, 48))).toBeNull();
});

test('nothing is said where nothing is known, or once the sanding is over', () => {
  expect(underText(at(null, 48))).toBeNull();
  expect(underText(at(46.9, null))).toBeNull();
  expect(underText({ ...at(46.9, 48), stage: 'finish' })).toBeNull();
});
