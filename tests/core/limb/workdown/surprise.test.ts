import { expect, test } from 'vitest';
import { surpriseOf } from '../../../../core/limb/workdown/surprise.ts';

test('a reading within three standard errors asks nothing', () => {
  for (const innovation of [0, 2.9, -3, 3]) expect(surpriseOf(innovation)).toBeNull();
});

test.each([3.01, -3.01, 40, Number.NaN])('%d standard errors asks, in order', (innovation) => {
  expect(surpriseOf(innovation)?.map(({ about }) => about)).toEqual([
    'brace',
    'string',
    'rig zero',
    'temperature',
    'draw reference',
    'scale',
  ]);
});

test('every question is one', () => {
  for (const { question } of surpriseOf(9) ?? []) expect(question).toMatch(/^[A-Z].*\?$/);
});
