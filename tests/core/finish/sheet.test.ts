import { describe, expect, test } from 'vitest';
import { cureInstants } from '../../../core/finish/cure.ts';
import { potLifeMinutes } from '../../../core/finish/pot-life.ts';
import {
  type AerosolSheet,
  type FinishSheet,
  type HandRubbedOilSheet,
  type OnePartSheet,
  potLifeOf,
  type TwoPartSheet,
} from '../../../core/finish/sheet.ts';
import { refuseOddSheet, sheetTroubles } from '../../../core/finish/sheet-troubles.ts';

const anyKind = {
  name: 'Satin top coat',
  revision: '4',
  datedOn: '2026-01-15',
  air: { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 80 } },
  coats: { from: 2, to: 3 },
  recoat: [{ fromF: 60, toF: 90, spans: [{ fromH: 4, toH: 36, scuff: false }] }],
  cure: { handle: 8, stringAndFlex: 48, wrap: 96, full: 336 },
  lastGrit: { glass: { grit: 320, scale: 'P' }, wood: null, overlay: null },
  scuffGrit: { grit: 400, scale: 'P' },
  hazards: ['isocyanate', 'flammable-solvent'],
} as const;
const mix = {
  by: 'volume',
  resinParts: 2,
  hardenerParts: 1,
  thinnerPercent: 10,
  density: { resin: 1.15, hardener: 0.97, thinner: null },
} as const;
const film = { solidsPercent: 40, wetMil: { from: 3, to: 5 } };

const twoPart: TwoPartSheet = {
  ...anyKind,
  kind: 'two-part',
  mix,
  film,
  potLife: { minutes: 120, referenceF: 70, inductionMin: 15 },
};
const onePart: OnePartSheet = {
  ...anyKind,
  kind: 'one-part',
  mix: { ...mix, hardenerParts: 0 },
  film,
};
const aerosol: AerosolSheet = { ...anyKind, kind: 'aerosol' };
const oil: HandRubbedOilSheet = { ...anyKind, kind: 'hand-rubbed-oil' };

const sentences = (sheet: FinishSheet) => sheetTroubles(sheet).map((each) => each.sentence);

test.each([twoPart, onePart, aerosol, oil])('a whole sheet of $kind raises nothing', (sheet) => {
  expect(sheetTroubles(sheet)).toEqual([]);
  expect(() => refuseOddSheet(sheet)).not.toThrow();
});

test("the pot life holds inside the sheet's own air temperatures only", () => {
  expect(potLifeMinutes(potLifeOf(twoPart), 88)).toBeCloseTo(60, 9);
  expect(() => potLifeMinutes(potLifeOf(twoPart), 91)).toThrow('The sheet says nothing about 91 F');
});

describe('what a sheet can lack', () => {
  test.each<[FinishSheet, string, string]>([
    [{ ...oil, name: ' ' }, 'name', 'Give the finish a name.'],
    [{ ...oil, revision: '' }, 'revision', "Enter the revision of the finish's sheet."],
    [{ ...oil, datedOn: '1/15/26' }, 'datedOn', 'Enter the date printed on the sheet.'],
    [{ ...oil, coats: { from: 3, to: 2 } }, 'coats', 'Coats are whole numbers from 1'],
    [{ ...oil, recoat: [] }, 'recoat', 'Enter at least one recoat line.'],
    [
      { ...oil, air: { ...anyKind.air, airF: { from: 90, to: 60 } } },
      'air.airF',
      'The air temperatures of the sheet must rise.',
    ],
    [
      { ...oil, air: { ...anyKind.air, humidityPercent: { from: 20, to: 101 } } },
      'air.humidityPercent',
      'The humidity limits of the sheet must rise',
    ],
    [
      { ...oil, scuffGrit: { grit: 321, scale: 'P' } },
      'scuffGrit',
      'P321 is in no grit table. Choose another grit.',
    ],
    [
      { ...oil, lastGrit: { ...anyKind.lastGrit, wood: { grit: 1, scale: 'CAMI' } } },
      'lastGrit.wood',
      'CAMI 1 is in no grit table.',
    ],
    [
      { ...twoPart, mix: { ...mix, hardenerParts: 0 } },
      'mix.hardenerParts',
      'A two-part finish needs its parts of hardener.',
    ],
    [{ ...onePart, mix }, 'mix.hardenerParts', 'A one-part finish has no hardener.'],
    [
      { ...onePart, mix: { ...onePart.mix, density: { ...mix.density, resin: -1 } } },
      'mix.density.resin',
      'The density of the resin must be more than 0.',
    ],
    [
      { ...twoPart, film: { ...film, solidsPercent: 0 } },
      'film.solidsPercent',
      'Solids by volume must be more than 0',
    ],
    [
      { ...onePart, film: { ...film, wetMil: { from: 5, to: 3 } } },
      'film.wetMil',
      'Give the thinner wet film first.',
    ],
    [
      { ...twoPart, potLife: { ...twoPart.potLife, referenceF: 95 } },
      'potLife.referenceF',
      'The pot life reference must lie inside',
    ],
  ])('%#: %s', (sheet, field, sentence) => {
    const troubles = sheetTroubles(sheet);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]?.field).toBe(field);
    expect(troubles[0]?.sentence).toContain(sentence);
  });

  test('several things are told together, each under its field', () => {
    const sheet = { ...twoPart, name: '', recoat: [] };
    expect(sentences(sheet)).toHaveLength(2);
    expect(() => refuseOddSheet(sheet)).toThrow(
      expect.objectContaining({
        code: 'BAD_INPUT',
        message: 'Put 2 things on the sheet right.',
        details: {
          name: 'Give the finish a name.',
          recoat: 'Enter at least one recoat line.',
        },
      }),
    );
  });
});

describe('four times after the last coat', () => {
  test('each counts from the last coat, none from another', () => {
    expect(cureInstants(anyKind.cure, '2026-03-02T08:00:00Z')).toEqual({
      handle: '2026-03-02T16:00:00.000Z',
      stringAndFlex: '2026-03-04T08:00:00.000Z',
      wrap: '2026-03-06T08:00:00.000Z',
      full: '2026-03-16T08:00:00.000Z',
    });
  });

  test.each([
    [{ handle: 0 }, 'Hours: dry to handle must be more than 0.'],
    [{ wrap: 4 }, 'Safe to wrap cannot come before dry to handle.'],
    [{ stringAndFlex: 400 }, 'Safe to string and flex cannot come after full cure.'],
  ])('%o is refused', (change, sentence) => {
    expect(sentences({ ...oil, cure: { ...anyKind.cure, ...change } })).toEqual([sentence]);
  });

  test('wrapping may come before stringing: the sheet decides', () => {
    expect(sentences({ ...oil, cure: { ...anyKind.cure, wrap: 24 } })).toEqual([]);
  });
});
