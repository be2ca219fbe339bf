import { expect, test } from 'vitest';
import { tillerRange } from '../../shared/tiller-text.ts';

test.each([
  ['0 to +1/8', 0, 0.125],
  ['1/8 to 3/16', 0.125, 0.1875],
  ['1/16-1/8"', 0.0625, 0.125],
  ['1/8" positive', 0.125, 0.125],
  ['-1/16', -0.0625, -0.0625],
  ['1/16 negative', -0.0625, -0.0625],
  ['even', 0, 0],
  ['even, three under', 0, 0],
  ['+0.125 in', 0.125, 0.125],
])('"%s" asks for %d to %d', (text, fromIn, toIn) => {
  expect(tillerRange(text)).toEqual({ fromIn, toIn });
});

test.each(['', 'as it is', 'about 3 fingers', '1/8 or 3/16 or 1/4', 'split'])(
  '"%s" asks for no figure',
  (text) => expect(tillerRange(text)).toBeNull(),
);
