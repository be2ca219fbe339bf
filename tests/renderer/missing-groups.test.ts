import { expect, test } from 'vitest';
import { groupsOf, leadOf, restOf } from '../../renderer/parts/missing-groups.ts';
import type { MissingItem } from '../../shared/gates.ts';

const item = (
  name: string,
  sentence: string,
  gate: MissingItem['gate'] = 'packed',
): MissingItem => ({
  item: name,
  gate,
  sentence,
  section: 'final-check',
  opens: name,
  override: 'owner',
});

const checks = ['Edges rounded', 'Nocks sound', 'Straight when unstrung'].map((label) =>
  item(label, `Final check not done: ${label}.`),
);

test('items that begin alike are one row, in the place of the first', () => {
  const paid = item('paid', 'Not paid and no terms noted.');
  const groups = groupsOf([...checks, paid]);
  expect(groups.map(({ first, items }) => [first.item, items.length])).toEqual([
    ['Edges rounded', 3],
    ['paid', 1],
  ]);
  const [group] = groups;
  expect(group === undefined ? '' : leadOf(group.first)).toBe('Final check not done');
  expect(restOf(group?.items ?? [])).toBe('Edges rounded; Nocks sound; Straight when unstrung');
});

test('two alike, and alike of several gates, stay rows of their own', () => {
  expect(groupsOf(checks.slice(1))).toHaveLength(2);
  const further = checks.map((check) => ({ ...check, gate: 'shipped' as const }));
  expect(groupsOf([...checks, ...further]).map(({ items }) => items.length)).toEqual([3, 3]);
});

test('every item is in exactly one row, also where two gates miss the same', () => {
  const same = [item('paid', 'Not paid.'), item('paid', 'Not paid.', 'shipped')];
  expect(groupsOf(same).flatMap(({ items }) => items)).toEqual(same);
});
