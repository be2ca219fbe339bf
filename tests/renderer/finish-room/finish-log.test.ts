import { describe, expect, it } from 'vitest';
import {
  gritsOnHand,
  newSanding,
  sandingInput,
} from '../../../renderer/screens/finish-room/sanding-fields.ts';
import { formFor } from '../../../renderer/screens/orders/finish/finish-openings.ts';
import {
  coatWords,
  finishState,
  sandingWords,
} from '../../../renderer/screens/orders/finish/finish-words.ts';
import type { Coat, OrderFinishNow, Sanding } from '../../../shared/contract/finish.ts';
import type { ConsumableSummary } from '../../../shared/contract/stores.ts';
import { at } from './rows.ts';

const coat: Coat = {
  id: 'c1',
  rowVersion: 1,
  sessionId: 's1',
  purpose: 'clear',
  sections: [],
  coats: 1,
  wetMil: 3,
  dryMil: 1.145,
  scuffed: null,
  at: at(0),
  systemName: 'Hard clear',
  batchId: 'b1',
  batchName: '261125-1',
  overrideReason: null,
  personName: 'Ida Penn',
  struckReason: null,
};

const p320 = { grit: 320, scale: 'P' as const, micrometres: 46.2, source: 'a reprint' };
const sanding: Sanding = {
  id: 'a1',
  rowVersion: 1,
  section: 'upper-limb',
  substrate: 'glass',
  grit: p320,
  strokes: 20,
  wiped: true,
  isLast: true,
  note: '',
  at: at(0),
  personName: 'Ida Penn',
  struckReason: null,
};

describe('the finish log in words', () => {
  it('says of a coat what was said of it, and nothing else', () => {
    expect(coatWords(coat)).toBe('Clear coat, 3 mil wet, 1.15 mil dry');
    const scuffed = { grit: { grit: 400, scale: 'CAMI' as const } };
    const more = { ...coat, coats: 2, wetMil: null, dryMil: null, scuffed };
    expect(coatWords({ ...more, sections: ['riser', 'overlays'] })).toBe(
      'Clear coat, 2 times, riser and overlays, scuffed first with CAMI 400',
    );
    expect(coatWords({ ...more, scuffed: { grit: null } })).toContain('scuffed first');
  });

  it('writes a grit with its size, the part and what was done after it', () => {
    expect(sandingWords(sanding)).toBe(
      'Upper limb, glass: P320 (46.2 µm), 20 strokes, wiped, the last one before finish',
    );
    const overlay = { ...sanding, section: 'overlays' as const, substrate: 'overlay' as const };
    expect(sandingWords({ ...overlay, strokes: null, wiped: false, isLast: false })).toBe(
      'Overlays: P320 (46.2 µm)',
    );
  });

  it('stands folded in a few words', () => {
    const nothing = { chosen: null, coatsOn: 0, sandings: [], passed: [] };
    const finish = (change: object) => ({ ...nothing, ...change }) as unknown as OrderFinishNow;
    expect(finishState(undefined)).toBe('');
    expect(finishState(finish({}))).toBe('nothing recorded yet');
    expect(finishState(finish({ sandings: [sanding] }))).toBe('sanded');
    expect(finishState(finish({ sandings: [{ ...sanding, struckReason: 'wrong bow' }] }))).toBe(
      'nothing recorded yet',
    );
    const coated = { chosen: { sheet: { name: 'Hard clear' } }, coatsOn: 2, passed: ['handle'] };
    expect(finishState(finish(coated))).toBe('Hard clear, 2 coats on, dry to handle');
  });
});

describe('a sanding as it is typed', () => {
  it('sends each part with what it is made of', () => {
    const fields = {
      ...newSanding('o1'),
      parts: ['upper-limb:glass', 'riser:wood'],
      grit: 'P-320',
    };
    expect(sandingInput(fields)).toMatchObject({
      orderId: 'o1',
      parts: [
        { section: 'upper-limb', substrate: 'glass' },
        { section: 'riser', substrate: 'wood' },
      ],
      grit: { grit: 320, scale: 'P' },
      at: null,
    });
  });

  it('offers the abrasives in the stores by grain size, each grit once', () => {
    const stored = (micrometres: number, change: object = {}) =>
      ({
        category: 'abrasive',
        active: true,
        inDate: 5,
        grit: { ...p320, grit: micrometres, micrometres },
        ...change,
      }) as ConsumableSummary;
    const shelves = [
      stored(36),
      stored(58.5),
      stored(58.5),
      stored(82, { inDate: 0 }),
      stored(100, { active: false }),
      stored(125, { category: 'solvent' }),
    ];
    expect(gritsOnHand(shelves).map(({ micrometres }) => micrometres)).toEqual([58.5, 36]);
  });
});

it('opens the form of what is put right here, and none for what time or the finish room mends', () => {
  expect(formFor('finish-system')).toBe('finish-system');
  expect(formFor('last-grit')).toBe('last-grit');
  expect(formFor('string-and-flex')).toBeNull();
  expect(formFor(null)).toBeNull();
});
