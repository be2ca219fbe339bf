import { describe, expect, test } from 'vitest';
import type { FinishState, RecordState } from '../../../core/shop/gates/finish-state.ts';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import { missingAt } from '../../../core/shop/gates/gates.ts';
import type { Gate } from '../../../shared/gates.ts';
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
  const own = ['last-grit', 'finish-system', 'air', 'pot-life', 'string-and-flex', 'safe-to-wrap'];
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
  ['coat', 'pot-life', 'potLife'],
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

test('a coat about to be recorded answers by its own batch, whatever was noted', () => {
  const later = noted('ok', '23');
  expect(asked('coat', { proposed: true, potLife: trouble }, later)[0]?.sentence).toBe(
    'It is not so.',
  );
  expect(asked('coat', { proposed: true, potLife: none }, later)[0]?.item).toBe('pot-life');
  expect(asked('coat', { proposed: false, air: none }, null)).toEqual([]);
  expect(asked('coat', { proposed: true, air: none }, later)[0]?.item).toBe('air');
});
