import { expect, it } from 'vitest';
import { runningText } from '../../../renderer/frame/clock-strip/clock-text.ts';

const s = 1000;
const min = 60 * s;
const h = 60 * min;

it.each([
  [0, '0 s'],
  [9 * s + 999, '9 s'],
  [60 * s, '1 min 00 s'],
  [42 * min + 7 * s, '42 min 07 s'],
  [59 * min + 59 * s, '59 min 59 s'],
  [h, '1 h 00 min'],
  [2 * h + 5 * min + 59 * s, '2 h 05 min'],
  [47 * h + 59 * min, '47 h 59 min'],
  [48 * h, '2 d 0 h'],
  [76 * h, '3 d 4 h'],
  [-5 * s, '0 s'],
])('%d ms reads %s', (ms, text) => {
  expect(runningText(ms)).toBe(text);
});
