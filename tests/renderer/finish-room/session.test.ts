import { describe, expect, it } from 'vitest';
import { inputErrors } from '../../../renderer/parts/input-schema.ts';
import { byCure, cureLines } from '../../../renderer/screens/finish-room/cure-words.ts';
import { mayBeLetPass, sprayErrors } from '../../../renderer/screens/finish-room/spray-errors.ts';
import {
  bowsOf,
  newSession,
  sessionInput,
  sourcesOf,
  sprayInput,
  stockAt,
  untouched,
} from '../../../renderer/screens/finish-room/spray-fields.ts';
import {
  byUrgency,
  coatsText,
  isReady,
  windowWords,
} from '../../../renderer/screens/finish-room/window-words.ts';
import { contract } from '../../../shared/contract/index.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { at, batch, bow, noon, room, system, window } from './rows.ts';

const full = room({
  systems: [
    system(),
    system({ id: 'oil', kind: 'hand-rubbed-oil', name: 'Rubbed oil' }),
    system({ id: 'gone', kind: 'aerosol', active: false }),
  ],
  batches: [batch(), batch({ id: 'b2', name: 'poured away', discardedAt: at(-1) })],
  bows: [bow(), bow({ orderId: 'o2', finishSystemId: 'oil' })],
});

describe('what is put on', () => {
  it('offers cups that stand, and finishes without a cup', () => {
    expect(sourcesOf(full).map(({ key }) => key)).toEqual(['batch:b1', 'system:oil']);
  });

  it('lists only bows of that finish', () => {
    const [cup] = sourcesOf(full);
    expect(bowsOf(full, cup).map(({ orderId }) => orderId)).toEqual(['o1']);
    expect(bowsOf(full, undefined)).toEqual([]);
  });

  it('chooses the one cup that may be used, and none where there are two ways', () => {
    const cupOnly = { ...full, systems: [system()] };
    expect(newSession(cupOnly, null, noon).source).toBe('batch:b1');
    expect(newSession(cupOnly, null, Date.parse(at(91))).source).toBeNull();
    expect(newSession(full, null, noon).source).toBeNull();
    expect(newSession(full, 'b1', noon)).toMatchObject({ source: 'batch:b1', purpose: 'clear' });
  });

  it('sends what was said and nothing that has not changed', () => {
    const [cup] = sourcesOf(full);
    const fields = {
      ...newSession(full, 'b1', noon),
      bows: { o1: { ...untouched, isScuffed: true, scuffGrit: 'P-400' } },
    };
    expect(sessionInput(fields, cup)).toEqual({
      finishSystemId: 'hard',
      batchId: 'b1',
      lotId: null,
      airReadingId: null,
      purpose: 'clear',
      sections: [],
      coats: 1,
      wetMil: null,
      bows: [
        {
          orderId: 'o1',
          scuffed: { grit: { grit: 400, scale: 'P' } },
          surfaceF: null,
          hungSince: null,
        },
      ],
      at: null,
    });
    expect(inputErrors(contract.finish.spray, sprayInput(fields, cup))).toEqual({});
  });

  it('asks for a cup and a bow before it asks the core', () => {
    const fields = { ...newSession(full, 'b1', noon), source: null };
    expect(sprayErrors(fields, undefined)).toMatchObject({
      finishSystemId: 'Choose what is put on.',
      bows: 'Choose at least one bow.',
    });
  });

  it('leaves to the owner only what the owner may let pass', () => {
    const item = (override: MissingItem['override']) => ({ override }) as MissingItem;
    expect(mayBeLetPass([], [])).toBe(false);
    expect(mayBeLetPass([item('owner')], [{ missing: [item('owner')] }])).toBe(true);
    expect(mayBeLetPass([item('owner')], [{ missing: [item('never')] }])).toBe(false);
  });
});

describe('windows in words', () => {
  it('tells every state with a shape of its own kind', () => {
    const kind = (state: Parameters<typeof window>[0]) =>
      windowWords(bow({ window: window(state) })).kind;
    expect([kind('open'), kind('scuff'), kind('before')]).toEqual([
      'done',
      'attention',
      'attention',
    ]);
    expect([kind('closed'), kind('off-sheet')]).toEqual(['stop', 'stop']);
    expect(windowWords(bow())).toEqual({ kind: 'done', text: 'Ready for its first coat.' });
    expect(windowWords(bow({ finishSystemId: null })).text).toBe('No finish chosen.');
  });

  it('is ready when open or to be scuffed, never without a finish', () => {
    expect(isReady(bow())).toBe(true);
    expect(isReady(bow({ window: window('scuff') }))).toBe(true);
    expect(isReady(bow({ window: window('before') }))).toBe(false);
    expect(isReady(bow({ finishSystemId: null }))).toBe(false);
  });

  it('puts the window that shuts soonest first', () => {
    const bows = [
      bow({ orderId: 'closed', window: window('closed') }),
      bow({ orderId: 'later', window: window('open', { closesAt: at(90) }) }),
      bow({ orderId: 'waits', window: window('before', { opensAt: at(10) }) }),
      bow({ orderId: 'first' }),
      bow({ orderId: 'soon', window: window('scuff', { closesAt: at(20) }) }),
      bow({ orderId: 'none', finishSystemId: null }),
    ];
    expect(byUrgency(bows).map(({ orderId }) => orderId)).toEqual([
      'soon',
      'later',
      'first',
      'waits',
      'closed',
      'none',
    ]);
  });

  it('counts coats against the sheet', () => {
    expect(coatsText(bow({ coatsOn: 1 }))).toBe('1 of 2 to 4 coats on');
    expect(coatsText(bow({ coatsOn: 1, coatsFrom: 3, coatsTo: 3 }))).toBe('1 of 3 coats on');
    expect(coatsText(bow({ coatsOn: 1, coatsFrom: null }))).toBe('1 coats on');
  });
});

describe('cure', () => {
  const cure = [
    { step: 'handle' as const, at: at(-10) },
    { step: 'stringAndFlex' as const, at: at(30) },
  ];

  it('tells what has passed since when, and how long the rest takes', () => {
    const lines = cureLines({ cure }, noon);
    expect(lines.map(({ isPassed }) => isPassed)).toEqual([true, false]);
    expect(lines[0]?.text).toMatch(/^Dry to handle since 25 Nov/);
    expect(lines[1]?.text).toBe('Safe to string and flex in 30 min 00 s');
    expect(cureLines({ cure }, noon + 30 * 60_000)[1]?.isPassed).toBe(true);
  });

  it('puts the bow that may be strung first on top, and what nobody knows last', () => {
    const bows = [
      bow({ orderId: 'none', number: '26-0001' }),
      bow({ orderId: 'late', cure: [{ step: 'stringAndFlex', at: at(60) }] }),
      bow({ orderId: 'soon', cure }),
    ];
    expect(byCure(bows).map(({ orderId }) => orderId)).toEqual(['soon', 'late', 'none']);
  });
});

describe('a session that is written down afterwards', () => {
  it('offers the cups that stood at its time, past as they are by now', () => {
    const old = batch({
      id: 'old',
      mixedAt: at(-60 * 24 * 5),
      usableUntil: at(-60 * 24 * 5 + 120),
    });
    const cups = (ago: number) =>
      stockAt(full, [batch(), old], at(ago)).batches.map(({ id }) => id);
    expect(cups(-60 * 24 * 5 + 30)).toEqual(['old']);
    expect(cups(-60 * 24 * 3)).toEqual([]);
    expect(cups(-1)).toEqual(['b1']);
    expect(stockAt(full, [old], null)).toBe(full);
  });
});
