import type { CustomsNoteData } from '../../../core/papers/customs-note.ts';
import { careLong, careSample, careShortest } from './care-card-samples.ts';

export const customsSample: CustomsNoteData = {
  format: 'letter',
  copy: 'parcel',
  printedAt: careSample.printedAt,
  shop: careSample.shop,
  number: '26-0147',
  to: { name: 'Nora Hale', lines: ['12 Orchard Road', 'Millbrook, ON K0A 0A0', 'Canada'] },
  statement: [
    'Returned after repair: this bow was sent in to be repaired or altered and goes back to its owner.',
    'It was not sold, and its owner does not change.',
    'This note goes with the customs form of the carrier and replaces none.',
  ],
  bow: [
    ['What it is', 'Used archery bow, unstrung: longbow 66", Oldfield Heron, marked 52# @ 28"'],
    ['Serial number', 'H-118'],
    ['Made of', 'glass-laminated, facing E-glass, core rock elm'],
    ['Listed species (CITES)', 'YES: wood or horn of a listed species'],
    ['Country it was made in', ''],
    ['Tariff number', ''],
  ],
  work: [
    ['Received for the work from', 'Nora Hale'],
    ['Received on', '2026-02-20'],
    ['Work done', 'Reduce weight, Re-mark'],
  ],
  values: [
    ['Value of the repair', '$196.03, the price with its tax, without return freight'],
    [
      'Value of the bow',
      '$600.00, declared on this parcel; evidence: appraisal by the owner of 2025',
    ],
    ['Currency', 'US dollars (USD)'],
    ['Parcel, outside', 'box 70 x 5 x 5 in, 4.5 lb'],
  ],
  cautions: [
    'Customs of either country decides what is asked and what is owed; the shop does not.',
    'Listed species: a permit may be needed at both borders under CITES.',
  ],
};

/** Nothing is on record but where it goes. */
export const customsShortest: CustomsNoteData = {
  ...customsSample,
  shop: careShortest.shop,
  bow: customsSample.bow.map(([asked]) => [asked, '']),
  work: customsSample.work.map(([asked]) => [asked, '']),
  values: customsSample.values.map(([asked]) => [asked, '']),
};

export const customsLong: CustomsNoteData = {
  ...customsSample,
  copy: 'office',
  shop: careLong.shop,
  to: {
    name: careLong.customerName,
    lines: Array.from(
      { length: 6 },
      (_, i) => `Line ${i + 1} of an address that is longer than one would like it to be`,
    ),
  },
  values: [
    ...customsSample.values,
    ['Evidence', 'a receipt of the maker, photographs and a letter '.repeat(20).trim()],
  ],
};
