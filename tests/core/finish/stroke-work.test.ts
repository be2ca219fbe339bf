import { expect, test } from 'vitest';
import { abrasive } from '../../../core/finish/grit.ts';
import { strokeWork } from '../../../core/finish/stroke-work.ts';

const work = (grit: number) => strokeWork(10, abrasive({ grit, scale: 'P' }).micrometres);

test('strokes count by their grain up to 100 micrometres, and no coarser one counts for more', () => {
  expect(strokeWork(10, 35)).toBeCloseTo(3.5, 12);
  expect(strokeWork(10, 100)).toBe(10);
  expect(strokeWork(10, 425)).toBe(10);
  expect(work(400)).toBeCloseTo(3.5, 9);
  expect(work(80)).toBe(work(120));
  expect(work(180)).toBeGreaterThan(work(220));
  expect(work(220)).toBeGreaterThan(work(320));
});
