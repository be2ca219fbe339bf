import { describe, expect, it } from 'vitest';
import {
  clockWords,
  passedWords,
  stripClocks,
} from '../../../renderer/frame/clock-strip/clock-words.ts';
import type { Clock } from '../../../shared/contract/clocks.ts';

const noon = Date.parse('2026-11-25T12:00:00.000Z');
const min = 60_000;
const at = (minutes: number) => new Date(noon + minutes * min).toISOString();

function clock(change: Partial<Clock>): Clock {
  return {
    id: `${change.kind ?? 'pot-life'} ${change.orderId ?? change.batchId}`,
    kind: 'pot-life',
    orderId: null,
    batchId: null,
    label: 'A-12',
    from: at(-60),
    until: at(42),
    state: 'running',
    words: 'Pot life',
    ...change,
  };
}

describe('a clock in words', () => {
  it('runs without a mark while nobody need hurry', () => {
    expect(clockWords(clock({}), noon)).toEqual({
      kind: null,
      text: 'Pot life ends in 42 min 00 s',
    });
  });

  it('asks for a hurry in the last quarter of an hour of what closes', () => {
    expect(clockWords(clock({ until: at(15) }), noon).kind).toBe('attention');
    expect(clockWords(clock({ until: at(15.1) }), noon).kind).toBeNull();
    const opens = clock({ kind: 'recoat-opens', words: 'Recoat opens', until: at(5) });
    expect(clockWords(opens, noon).kind).toBeNull();
  });

  it('is past at the very instant it ends, and says so in a word and a shape', () => {
    const ended = clock({ until: at(0) });
    expect(clockWords(ended, noon - 1).text).toBe('Pot life ends in 0 s');
    const past = clockWords(ended, noon);
    expect(past.kind).toBe('stop');
    expect(past.text).toMatch(/^Pot life past since \d\d:\d\d$/);
  });

  it('does not trust the state it was read with: time goes on without a call', () => {
    expect(clockWords(clock({ state: 'running' }), noon + 43 * min).kind).toBe('stop');
  });

  it('tells what has opened since when', () => {
    const wrap = clock({ kind: 'wrap', words: 'Safe to wrap', until: at(-3 * 24 * 60) });
    const { kind, text } = clockWords(wrap, noon);
    expect(kind).toBe('done');
    expect(text).toMatch(/^Safe to wrap since 22 Nov, \d\d:\d\d$/);
    const shut = clock({ kind: 'recoat-closes', words: 'Recoat closes', until: at(-1) });
    expect(clockWords(shut, noon)).toMatchObject({
      kind: 'attention',
      text: expect.stringMatching(/^Recoat window past since/),
    });
  });
});

describe('what the strip shows', () => {
  const cure = (orderId: string, kind: Clock['kind'], minutes: number) =>
    clock({ orderId, kind, label: orderId, until: at(minutes), words: kind });

  it('shows one clock of each cure: the one that ends next', () => {
    const clocks = [
      cure('o1', 'handle', -10),
      cure('o1', 'string-and-flex', 50),
      cure('o1', 'wrap', 90),
      cure('o1', 'full-cure', 900),
      cure('o2', 'handle', 20),
    ];
    expect(stripClocks(clocks, noon).map(({ id }) => id)).toEqual([
      'handle o2',
      'string-and-flex o1',
    ]);
  });

  it('puts what is past and shut first, and what has opened last', () => {
    const clocks = [
      cure('o1', 'full-cure', -30),
      cure('o2', 'recoat-opens', 5),
      clock({ batchId: 'b1', until: at(-5) }),
      cure('o3', 'recoat-closes', -1),
      clock({ batchId: 'b2', until: at(3) }),
    ];
    expect(stripClocks(clocks, noon).map(({ id }) => id)).toEqual([
      'pot-life b1',
      'recoat-closes o3',
      'pot-life b2',
      'recoat-opens o2',
      'full-cure o1',
    ]);
  });

  it('keeps the window and the cure of one bow apart', () => {
    const clocks = [cure('o1', 'recoat-closes', 60), cure('o1', 'handle', 30)];
    expect(stripClocks(clocks, noon)).toHaveLength(2);
  });
});

describe('what is said aloud', () => {
  it('is what has passed, and nothing of what still runs', () => {
    const ended = clock({ label: 'B-3', until: at(0) });
    expect(passedWords([clock({}), ended], noon - 1)).toBe('');
    expect(passedWords([clock({}), ended], noon)).toMatch(/^B-3: Pot life past since \d\d:\d\d$/);
  });
});
