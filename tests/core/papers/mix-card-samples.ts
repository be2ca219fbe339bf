import type { MixCardData } from '../../../core/papers/mix-card.ts';

export const mixCardSample: MixCardData = {
  format: 'letter',
  copy: 'bench',
  printedAt: '2026-03-02T15:20:00.000Z',
  shop: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000'],
    phone: '555 0100',
    email: 'bench@fernhill.example',
  },
  number: '260302-1',
  finish: 'Satin top coat',
  usable: 'Use from 2026-03-02 10:30 until 12:15',
  discarded: '',
  parts: [
    {
      part: 'Resin',
      name: 'Satin base',
      ml: '200',
      fluidOunces: '6.76',
      grams: '240',
      scaleReads: '240',
      lots: 'R-1, 2026-06-30',
    },
    {
      part: 'Hardener',
      name: 'Satin hardener',
      ml: '100',
      fluidOunces: '3.38',
      grams: '100',
      scaleReads: '340',
      lots: 'H-1, 2026-04-30',
    },
    {
      part: 'Thinner',
      name: 'Slow thinner',
      ml: '30',
      fluidOunces: '1.01',
      grams: '24',
      scaleReads: '364',
      lots: 'T-1',
    },
  ],
  facts: [
    ['Data sheet', 'Satin top coat, 4 of 2026-01-15'],
    ['Mixed', '2026-03-02 10:15 by Ida Penn'],
    ['Temperature of the mix', '70 F (21.1 C)'],
    ['Stands before use', '15 min'],
    ['Pot life', 'Warmer it is shorter. Thinner or fresh mix does not make it longer.'],
  ],
  coats: [
    ['26-0147', 'Clear coat', '2026-03-02 10:40', '4 mil'],
    ['26-0151', 'First clear coat over the lettering', '2026-03-02 10:52', '4 mil'],
  ],
  cautions: [
    'Contains isocyanates: supplied air as its sheet says, not a dust mask.',
    'Flammable: no flame, spark or heater near it, and air moving.',
    'The safety data sheet, the local fire code and a licensed professional decide.',
  ],
};

/** Mixed by weight without a density, nothing coated yet. */
export const mixCardShortest: MixCardData = {
  ...mixCardSample,
  number: '1',
  finish: 'Clear',
  parts: [
    { part: 'Resin', name: 'A', ml: '', fluidOunces: '', grams: '5', scaleReads: '5', lots: '' },
  ],
  facts: [['Mixed', '2026-03-02 10:15 by Ida Penn']],
  coats: [],
  cautions: ['The safety data sheet, the local fire code and a licensed professional decide.'],
};

const long = (text: string, times: number) => Array.from({ length: times }, () => text).join(' ');

/** As long as the fields allow, and thrown away. */
export const mixCardLong: MixCardData = {
  ...mixCardSample,
  number: 'evening cup no. 2026',
  finish: long('Very slow satin top coat for cold rooms', 3).slice(0, 120),
  discarded: `DISCARDED 2026-03-02 12:20: ${long('past its pot life and thick in the gun', 10).slice(0, 400)}`,
  parts: mixCardSample.parts.map((part) => ({
    ...part,
    name: long(part.name, 12).slice(0, 120),
    lots: Array.from({ length: 12 }, (_, i) => `LOT-2026-000${i}-X, 2026-06-30`).join('; '),
  })),
  facts: [
    ...mixCardSample.facts,
    ['Note', long('Stirred five minutes, strained, the pot stood in cold water.', 16)],
  ],
  coats: Array.from({ length: 40 }, (_, i): [string, string, string, string] => [
    `26-0${200 + i}`,
    'First clear coat over the lettering, 2 coats',
    '2026-03-02 10:52',
    '12.5 mil',
  ]),
};
