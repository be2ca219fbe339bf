import type { FinishSheetFields } from '../../shared/finish-sheet.ts';

const ofAnyKind = {
  air: { airF: { from: 60, to: 85 }, humidityPercent: { from: 25, to: 75 } },
  coats: { from: 2, to: 3 },
  lastGrit: { glass: null, wood: null, overlay: null },
  scuffGrit: { grit: 400, scale: 'P' as const },
};

const film = { solidsPercent: 42, wetMil: { from: 3, to: 4 } };

/** Data sheets of an invented shop: generic finishes, no maker's. */
export const demoSheets = {
  'two-part': {
    kind: 'two-part',
    name: 'Two-part satin clear',
    revision: '3',
    datedOn: '2025-05-12',
    ...ofAnyKind,
    recoat: [
      {
        fromF: 60,
        toF: 74,
        spans: [
          { fromH: 6, toH: 24, scuff: false },
          { fromH: 24, toH: 120, scuff: true },
        ],
      },
      {
        fromF: 75,
        toF: 85,
        spans: [
          { fromH: 4, toH: 16, scuff: false },
          { fromH: 16, toH: 120, scuff: true },
        ],
      },
    ],
    cure: { handle: 12, stringAndFlex: 96, wrap: 168, full: 336 },
    hazards: ['isocyanate', 'flammable-solvent'],
    mix: {
      by: 'volume',
      resinParts: 4,
      hardenerParts: 1,
      thinnerPercent: 0,
      density: { resin: 1.05, hardener: 1.1, thinner: 0.88 },
    },
    film,
    potLife: { minutes: 240, referenceF: 70, inductionMin: 15 },
  },
  'one-part': {
    kind: 'one-part',
    name: 'One-part satin polyurethane',
    revision: '7',
    datedOn: '2024-11-03',
    ...ofAnyKind,
    recoat: [{ fromF: 60, toF: 85, spans: [{ fromH: 6, toH: 120, scuff: true }] }],
    cure: { handle: 8, stringAndFlex: 72, wrap: 168, full: 480 },
    hazards: ['flammable-solvent'],
    mix: {
      by: 'volume',
      resinParts: 1,
      hardenerParts: 0,
      thinnerPercent: 10,
      density: { resin: null, hardener: null, thinner: null },
    },
    film,
  },
  oil: {
    kind: 'hand-rubbed-oil',
    name: 'Hand-rubbed oil',
    revision: '2',
    datedOn: '2025-02-20',
    ...ofAnyKind,
    coats: { from: 3, to: 4 },
    recoat: [{ fromF: 60, toF: 85, spans: [{ fromH: 12, toH: null, scuff: false }] }],
    cure: { handle: 24, stringAndFlex: 72, wrap: 168, full: 504 },
    hazards: ['self-heating-rags', 'flammable-solvent'],
  },
} as const satisfies Record<string, FinishSheetFields>;

export type DemoFinish = keyof typeof demoSheets;
