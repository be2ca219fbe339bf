import type { BowLabelData } from '../../../core/papers/bow-label.ts';
import type { InscriptionProofData } from '../../../core/papers/inscription-proof.ts';

/** Invented shop, customer and bow. */
export const proofSample: InscriptionProofData = {
  format: 'letter',
  printedAt: '2026-03-02T09:00:00.000Z',
  printedOn: '2026-03-02',
  number: '26-0147',
  shop: { name: 'Fernhill Bow Works', lines: ['4 Mill Lane', 'Ashdale, VT 05000'] },
  customerName: 'Nora Hale',
  bowLine: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  lines: ['45# @ 28"', 'AMO 66"', 'No. H-118', 'Reworked by Fernhill Bow Works'],
  letterHeightIn: 3 / 16,
  facts: [
    ['Where', 'Upper limb, belly, 3 in from the grip'],
    ["Maker's own mark", 'stays where it is, under the new finish'],
    ['Surface', 'on the seal coat'],
    ['How', 'lettered by hand'],
    ['Ink', 'black archival pen'],
    ['Height of a capital', '0.188 in'],
  ],
  oldMarking: 'Oldfield Heron\n52# @ 28"\nAMO 66"',
  limb: {
    name: 'upper limb',
    stations: [
      { fromFadeIn: 0, widthIn: 1.375 },
      { fromFadeIn: 6, widthIn: 1.25 },
      { fromFadeIn: 20, widthIn: 0.625 },
    ],
  },
  answer: 'Asked 2026-03-01: waiting for an answer.',
};

export const proofShortest: InscriptionProofData = {
  ...proofSample,
  customerName: null,
  bowLine: 'Bow not identified yet',
  shop: { name: 'F', lines: [] },
  lines: ['45# @ 28"'],
  facts: [['Where', 'Not said yet: ask where the lines shall stand.']],
  oldMarking: '',
  limb: null,
  answer: "The bow is the shop's own: nobody is asked.",
};

const longWords = 'Riser wedge of a very long description with many words ';

/** As long as every field may be, with fractions, Greek and Cyrillic letters. */
export const proofLong: InscriptionProofData = {
  ...proofSample,
  customerName: `Αλεξάνδρα Ζαχαρία-Жуковская ${'van der '.repeat(10)}Hale`,
  bowLine: longWords.repeat(5),
  lines: [
    '41½# @ 26¾"',
    'Νίκη',
    'Журавль',
    'gjpqy ÅÉ',
    ...Array.from({ length: 24 }, () => 'Abcde 12'),
  ],
  letterHeightIn: 0.25,
  facts: [
    ['Where', longWords.repeat(3)],
    ["Maker's own mark", longWords.repeat(3)],
    ['Ink', longWords.repeat(2)],
  ],
  oldMarking: longWords.repeat(18),
};

export const labelSample: BowLabelData = {
  format: 'letter',
  printedAt: proofSample.printedAt,
  printedOn: proofSample.printedOn,
  number: proofSample.number,
  shop: proofSample.shop,
  bowLine: proofSample.bowLine,
  position: 'Upper limb, belly, 3 in from the grip',
  makerMark: 'stays where it is, under the new finish',
  lines: ['45# @ 28"', 'AMO 66"', 'No. H-118'],
  letterHeightIn: 3 / 16,
  approval: 'Approved word for word by Nora Hale on 2026-03-02.',
};

export const labelLong: BowLabelData = {
  ...labelSample,
  bowLine: proofLong.bowLine,
  position: longWords.repeat(3),
  makerMark: longWords.repeat(3),
  lines: proofLong.lines,
  letterHeightIn: 0.25,
};
