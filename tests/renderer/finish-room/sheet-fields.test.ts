import { describe, expect, it } from 'vitest';
import {
  fieldsOfSheet,
  newBand,
  newSheet,
  newSpan,
  sheetFrom,
} from '../../../renderer/screens/settings/finish-systems/sheet-fields.ts';
import { finishKinds } from '../../../shared/finish.ts';
import { type FinishSheetFields, finishSheet } from '../../../shared/finish-sheet.ts';

const ofAnyKind = {
  name: 'Hard clear',
  revision: 'C',
  datedOn: '2026-03-01',
  air: { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 70 } },
  coats: { from: 2, to: 4 },
  recoat: [
    { fromF: 60, toF: 70, spans: [{ fromH: 4, toH: 24, scuff: false }] },
    {
      fromF: 70,
      toF: 90,
      spans: [
        { fromH: 2, toH: 16, scuff: false },
        { fromH: 16, toH: null, scuff: true },
      ],
    },
  ],
  cure: { handle: 12, stringAndFlex: 72, wrap: 96, full: 168 },
  lastGrit: { glass: { grit: 320, scale: 'P' as const }, wood: null, overlay: null },
  scuffGrit: { grit: 400, scale: 'CAMI' as const },
  hazards: ['isocyanate' as const],
};
const film = { solidsPercent: 42, wetMil: { from: 2, to: 4 } };
const density = { resin: 1.02, hardener: 1.11, thinner: null };
const mix = { by: 'volume' as const, resinParts: 4, hardenerParts: 1, thinnerPercent: 10, density };

const sheets: FinishSheetFields[] = [
  {
    kind: 'two-part',
    ...ofAnyKind,
    mix,
    film,
    potLife: { minutes: 120, referenceF: 70, inductionMin: 15 },
  },
  {
    kind: 'one-part',
    ...ofAnyKind,
    mix: { ...mix, hardenerParts: 0, density: { ...density, hardener: null } },
    film,
  },
  { kind: 'aerosol', ...ofAnyKind },
  { kind: 'hand-rubbed-oil', ...ofAnyKind },
];

describe('the form of a data sheet', () => {
  it.each(sheets)('gives back the $kind sheet it was filled with', (sheet) => {
    expect(sheetFrom(fieldsOfSheet(sheet))).toEqual(sheet);
  });

  it.each(finishKinds)('invents no figure of a new %s sheet: all are asked for', (kind) => {
    const read = finishSheet.safeParse(sheetFrom(newSheet(kind)));
    const paths = read.error?.issues.map(({ path }) => path.join('.')) ?? [];
    expect(paths).toEqual(
      expect.arrayContaining([
        'name',
        'datedOn',
        'air.airF.from',
        'air.humidityPercent.to',
        'coats.from',
        'recoat.0.fromF',
        'recoat.0.spans.0.fromH',
        'cure.handle',
        'cure.full',
      ]),
    );
    expect(paths.some((path) => path.startsWith('mix'))).toBe(kind === 'two-part');
    expect(paths.includes('potLife.minutes')).toBe(kind === 'two-part');
  });

  it('leaves out what belongs to another kind when the kind is changed', () => {
    const [twoPart] = sheets;
    if (twoPart === undefined) throw new Error('no sheet');
    const fields = fieldsOfSheet(twoPart);
    expect(sheetFrom({ ...fields, kind: 'aerosol' })).toEqual({ kind: 'aerosol', ...ofAnyKind });
    expect(sheetFrom({ ...fields, kind: 'one-part' })).toMatchObject({
      kind: 'one-part',
      mix: { hardenerParts: 0 },
    });
  });

  it('starts a recoat line where the one before ends', () => {
    const first = { ...newBand([]), fromF: 60, toF: 75 };
    expect(newBand([first])).toMatchObject({ key: 2, fromF: 75, toF: null });
    const span = { ...newSpan([]), fromH: 4, toH: 24 };
    expect(newSpan([span])).toEqual({ key: 2, fromH: 24, toH: null, scuff: true });
  });
});
