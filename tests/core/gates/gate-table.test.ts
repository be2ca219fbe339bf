import { describe, expect, test } from 'vitest';
import { missingAt, passGates } from '../../../core/shop/gates/gates.ts';
import { gateTable } from '../../../core/shop/gates/table.ts';
import { gate as gateSchema } from '../../../shared/gates.ts';
import { roles } from '../../../shared/people.ts';
import { type GateCase, gateCases, openAt, openOnTheWayHome } from './gate-cases.ts';

const gates = gateSchema.options;
const reason = { reason: 'decided at the bench' };

function factsFor({ gate, goingHome, take }: GateCase) {
  const open = goingHome === true ? openOnTheWayHome() : openAt(gate);
  return { ...open, ...take(open) };
}

test('every row of the table has a case, and every case a row', () => {
  const rows = gates.flatMap((gate) => gateTable[gate].map(({ item }) => `${gate}: ${item}`));
  const cases = gateCases.map(({ gate, item }) => `${gate}: ${item}`);
  expect(cases.sort()).toEqual([...new Set(rows)].sort());
});

test.each(gates)('%s opens when everything is there', (gate) => {
  expect(missingAt(gate, openAt(gate))).toEqual([]);
});

test.each(['packed', 'shipped', 'collected'] as const)(
  'on the way home, %s asks for nothing that only finished work has',
  (gate) => {
    const home = openOnTheWayHome();
    const entry = (asked: string) =>
      asked.startsWith('check-') || asked === 'string-and-flex' ? null : home.entry('coat');
    expect(missingAt(gate, { ...home, entry })).toEqual([]);
  },
);

describe.each(gateCases)('$gate without $item', (gateCase) => {
  const { gate, item, override } = gateCase;
  const facts = factsFor(gateCase);

  test('is the one thing missing, in one sentence with the place to fix it', () => {
    const missing = missingAt(gate, facts);
    expect(missing.map((each) => each.item)).toEqual([item]);
    expect(missing[0]).toMatchObject({ gate, override });
    expect(missing[0]?.sentence).toMatch(/^[A-Z0-9"].*\.$/);
  });

  test.each(roles)('stays shut for the %s without an override', (role) => {
    expect(passGates([gate], facts, role, undefined)).toMatchObject({ open: false });
  });

  test.each(roles)(`for the %s with a reason: ${override}`, (role) => {
    if (role !== 'owner') {
      expect(() => passGates([gate], facts, role, reason)).toThrow('Only the owner');
      return;
    }
    const verdict = passGates([gate], facts, role, reason);
    expect(verdict.open).toBe(override === 'owner');
    const listed = verdict.open ? verdict.overridden : verdict.missing;
    expect(listed.map((each) => each.item)).toEqual([item]);
  });
});

test('one thing that nobody may let pass keeps the gate shut for all the rest', () => {
  const facts = { ...openAt('agreed'), arrivalChecked: false, openStops: 1 };
  const verdict = passGates(['agreed'], facts, 'owner', reason);
  expect(verdict).toMatchObject({ open: false });
});
