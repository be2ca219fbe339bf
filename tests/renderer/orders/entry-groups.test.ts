import { expect, test } from 'vitest';
import {
  entryGroups,
  groupsFor,
  offeredGroups,
} from '../../../renderer/screens/orders/bench-log/entry-groups.ts';
import { entryItems } from '../../../shared/entries.ts';

test('every kind of entry stands in exactly one group', () => {
  expect(entryGroups.flatMap((group) => group.items).toSorted()).toEqual(entryItems.toSorted());
});

test('only what is written here by hand is offered', () => {
  const offered = offeredGroups.flatMap((group) => group.items);
  expect(offered).toEqual(expect.arrayContaining(['target-feasible', 'findings-told']));
  expect(offered).toEqual(expect.arrayContaining(['lettering-applied', 'lettering-dry']));
  for (const item of ['condition', 'final-safety', 'tracking', 'check-nocks', 'coat'] as const)
    expect(offered).not.toContain(item);
});

test('what was written before it had a screen of its own stays readable', () => {
  const place = { route, stage: 'agreed', next: 'weight-work' } as const;
  const arrived = (written: Set<(typeof entryItems)[number]>) =>
    groupsFor(place, written).before.find((group) => group.gate === 'arrived')?.items;
  expect(arrived(new Set())).toBeUndefined();
  expect(arrived(new Set(['condition']))).toEqual(['condition']);
});

const route = [
  'requested',
  'in-mail',
  'arrived',
  'agreed',
  'weight-work',
  'strip-sand',
  'finish',
  'cure',
  'final-check',
  'packed',
  'shipped',
] as const;

test('what the next gate and the present work need comes first', () => {
  const agreed = groupsFor({ route, stage: 'agreed', next: 'weight-work' }, new Set());
  expect(agreed.now.map((group) => group.gate)).toEqual(['weight-work']);
  const place = { route, stage: 'strip-sand', next: 'finish' } as const;
  const groups = groupsFor(place, new Set());
  expect(groups.now).toEqual([]);
  // Bites and coats are records of their own by now; what was noted of them before is still shown.
  const noted = groupsFor(place, new Set(['removal', 'last-grit', 'coat']));
  expect(noted.now.map((group) => group.gate)).toEqual(['bite', 'finish']);
  expect(noted.later.map((group) => group.gate)).toEqual(['lettering', 'coat', 'packed']);
  expect(groups.later.map((group) => group.gate)).toEqual(['lettering', 'packed']);
  expect(groups.before.map((group) => group.gate)).toEqual(['agreed', 'weight-work']);
});

test('a group off the route shows only what was written in it', () => {
  const short = [
    'requested',
    'in-mail',
    'arrived',
    'agreed',
    'final-check',
    'packed',
    'shipped',
  ] as const;
  const place = { route: short, stage: 'agreed', next: 'final-check' } as const;
  const gates = (written: Set<(typeof entryItems)[number]>) => {
    const groups = groupsFor(place, written);
    return [...groups.now, ...groups.later, ...groups.before].map((group) => group.gate);
  };
  expect(gates(new Set())).not.toContain('weight-work');
  expect(gates(new Set(['stations']))).toContain('weight-work');
});
