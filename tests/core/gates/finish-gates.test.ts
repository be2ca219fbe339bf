import { describe, expect, test } from 'vitest';
import { type CoatState, noCoat } from '../../../core/shop/gates/coat-state.ts';
import type { FinishState } from '../../../core/shop/gates/finish-state.ts';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import { missingAt } from '../../../core/shop/gates/gates.ts';
import type { RecordState } from '../../../core/shop/gates/record-state.ts';
import { gateTable } from '../../../core/shop/gates/table.ts';
import { entryItem, entryKinds } from '../../../shared/entries.ts';
import { type Gate, gate as gateSchema } from '../../../shared/gates.ts';
import { finishThere, openAt } from './gate-cases.ts';

const none = { state: 'none' } as const;
const trouble: RecordState = {
  state: 'trouble',
  sentence: 'It is not so.',
  at: '2026-03-02T10:00:00.000Z',
};

/** The gate's own finish items, with what stands against each, given records and one entry for all. */
function asked(gate: Gate, finish: Partial<FinishState>, entry: ReturnType<GateFacts['entry']>) {
  const facts = openAt(gate);
  const own = ['last-grit', 'finish-system', 'air', 'string-and-flex', 'safe-to-wrap'];
  return missingAt(gate, {
    ...facts,
    finish: { ...finishThere, ...finish },
    entry: (item) => (own.includes(item) ? entry : facts.entry(item)),
  }).map(({ item, sentence, section, opens }) => ({ item, sentence, section, opens }));
}

const noted = (outcome: 'ok' | 'not-ok', hour: string) => ({
  outcome,
  recordedAt: `2026-03-02T${hour}:00:00.000Z`,
});

describe.each([
  ['finish', 'last-grit', 'lastGrit'],
  ['finish', 'finish-system', 'system'],
  ['finish', 'air', 'air'],
  ['final-check', 'string-and-flex', 'stringAndFlex'],
  ['packed', 'safe-to-wrap', 'wrap'],
] as const)('%s: %s', (gate, item, key) => {
  test('a record that answers needs no entry', () => {
    expect(asked(gate, { [key]: { state: 'ok' } }, null)).toEqual([]);
  });

  test('without a record an entry of before still stands, unless it says that all is not well', () => {
    expect(asked(gate, { [key]: none }, noted('ok', '09'))).toEqual([]);
    expect(asked(gate, { [key]: none }, noted('not-ok', '09'))[0]?.sentence).toMatch(
      /recorded as not in order/,
    );
    expect(asked(gate, { [key]: none }, null)).toMatchObject([
      { item, section: 'finish', opens: item },
    ]);
  });

  test('a record that stands against it wins over an earlier entry, not over a later one', () => {
    expect(asked(gate, { [key]: trouble }, noted('ok', '09'))[0]?.sentence).toBe('It is not so.');
    expect(asked(gate, { [key]: trouble }, noted('ok', '11'))).toEqual([]);
    expect(asked(gate, { [key]: trouble }, noted('not-ok', '11'))[0]?.item).toBe(item);
  });
});

describe.each(['coat', 'first-clear'] as const)('%s', (gate) => {
  const missing = (change: Partial<CoatState>) => {
    const facts = openAt(gate);
    return missingAt(gate, { ...facts, coat: { ...facts.coat, ...change } });
  };

  test.each([
    ['potLife', 'pot-life'],
    ['lots', 'lots-in-date'],
    ['window', 'recoat-window'],
    ['air', 'air'],
    ['system', 'finish-system'],
  ] as const)('%s is answered by the coat itself, whatever was noted later', (key, item) => {
    expect(missing({ [key]: trouble })).toMatchObject([{ item, sentence: 'It is not so.' }]);
    expect(missing({ [key]: none })).toMatchObject([{ item, section: 'finish', opens: item }]);
  });

  test('stays shut where no coat is about to be recorded', () => {
    expect(missingAt(gate, { ...openAt(gate), coat: noCoat })).toHaveLength(5);
  });
});

test('no gate sends anybody to write an entry that nobody can write any more', () => {
  const rows = gateSchema.options.flatMap((gate) => gateTable[gate]);
  const noted = rows.filter((row) => row.section === 'bench-log' && row.opens !== null);
  expect(noted.map(({ opens }) => opens)).toContain('lettering-dry');
  for (const { opens } of noted) {
    expect(entryKinds[entryItem.parse(opens)].retired, `${opens}`).toBeNull();
  }
});
