import { expect, test } from 'vitest';
import * as limb from '../../../core/limb/index.ts';

test('the public face offers what the bench asks for, by name', () => {
  const asked = [
    'solveStaticBow',
    'braceTiller',
    'fitForceDraw',
    'predictRemoval',
    'planReduction',
    'startWorkdown',
    'recordWeighing',
    'nextBite',
    'markingText',
    'templateOffsets',
  ];
  expect(Object.keys(limb)).toEqual(expect.arrayContaining(asked));
});
