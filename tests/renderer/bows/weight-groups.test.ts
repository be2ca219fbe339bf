import { expect, test } from 'vitest';
import { weightGroups } from '../../../renderer/screens/bows/life/weight-groups.ts';
import type { LifeWeight } from '../../../shared/contract/bow-life.ts';

const weight = (
  readingId: string,
  forceLbf: number,
  part: Partial<LifeWeight> = {},
): LifeWeight => ({
  readingId,
  on: '2026-03-02',
  phase: 'work',
  forceLbf,
  drawIn: 28,
  drawReference: 'amo',
  text: `${forceLbf}# @ 28"`,
  orderNumber: '26-0001',
  limbSetName: null,
  riserNote: '',
  ...part,
});

test('only weighings of one draw, reference, limbs and riser stand side by side, oldest first', () => {
  const newestFirst = [
    weight('d', 40),
    weight('c', 44, { drawReference: 'to-back' }),
    weight('b', 48, { limbSetName: 'longs', riserNote: 'shop riser' }),
    weight('a', 50),
  ];
  const groups = weightGroups(newestFirst);
  expect(groups.map((group) => group.title)).toEqual([
    'at 28" AMO',
    'at 28" AMO, longs, on shop riser',
    'at 28" to the back',
  ]);
  expect(groups[0]?.weights.map((one) => [one.weight.readingId, one.share])).toEqual([
    ['a', 1],
    ['d', 0.8],
  ]);
  expect(weightGroups([])).toEqual([]);
});
