import type { ReturnTagData } from '../../../core/papers/return-tag.ts';
import { tagLong, tagSample } from './sample-data.ts';

/** Sent home sound, as its owner wished. */
export const returnTagSample: ReturnTagData = {
  format: '4x6',
  copy: 'parcel',
  printedAt: '2026-03-02T09:00:00.000Z',
  number: '26-0147',
  from: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000', '555 0100', 'bench@fernhill.example'],
  },
  customerName: 'Nora Hale',
  bowLine: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  unsafe: false,
  why: [
    'Price, date or findings were told, and the work was not wanted.',
    'The work is not done, or not finished.',
  ],
  findings: [
    {
      grade: 'Watch',
      isStop: false,
      words: 'upper limb, 9" from the fade, hairline in the finish',
    },
  ],
  toldOn: '2026-03-01',
  mind: [
    'It travelled unstrung. Look it over, let it reach the temperature of the room, and string it with a stringer.',
  ],
};

export const returnTagUnsafe: ReturnTagData = {
  ...returnTagSample,
  unsafe: true,
  why: [
    'The shop does not take on the work: the bow cannot give it, or it would not be safe.',
    'The work is not done, or not finished.',
  ],
  findings: [
    { grade: 'Stop', isStop: true, words: 'upper limb, glass lifting along the belly, 2" long' },
    ...returnTagSample.findings,
  ],
  mind: [
    'Leave it unstrung: a limb that fails under load can injure. Have it looked at by somebody who builds bows before anything else.',
    'Material has come off the limbs: the weight written on it no longer holds. Weigh it before you choose arrows.',
  ],
};

/** The shop's own bow, nothing found, nobody to tell. */
export const returnTagShortest: ReturnTagData = {
  ...returnTagSample,
  from: { name: 'Fernhill Bow Works', lines: [] },
  customerName: '',
  bowLine: 'Bow not identified',
  why: ['It is broken and cannot be shot any more.'],
  findings: [],
  toldOn: null,
  mind: ['Leave it unstrung.'],
};

/** More than one label holds. */
export const returnTagLong: ReturnTagData = {
  ...returnTagUnsafe,
  format: 'a6',
  from: tagLong.from,
  customerName: tagLong.from.name,
  bowLine: `take-down recurve 62", ${tagSample.from.name} ${'Heron of the northern yard '.repeat(5)}`,
  findings: Array.from({ length: 9 }, (_, i) => ({
    grade: i < 3 ? 'Stop' : 'Watch',
    isStop: i < 3,
    words: `place ${i + 1}: delamination along the belly glass, about 2" long, opens when the limb is flexed by hand, seen under the lamp and felt with a thumb nail`,
  })),
  toldOn: null,
};
