import type { CareCardData } from '../../../core/papers/care-card.ts';

const many = (count: number, words: string) =>
  Array.from({ length: count }, (_, i) => `${words} (${i + 1})`);

export const careSample: CareCardData = {
  format: 'letter',
  copy: 'customer',
  printedAt: '2026-03-02T09:00:00.000Z',
  shop: {
    name: 'Alder Bow Works',
    lines: ['12 Mill Lane', 'Oldfield, OH 45000'],
    phone: '555 0100',
    email: 'shop@example.com',
  },
  number: '26-0147',
  customerName: 'Nora Hale',
  bowLine: 'Longbow, 66", serial 118',
  work: 'Reduce weight, Strip & refinish, Re-mark',
  weights: [
    ['Weight at 28" AMO', '45.2# @ 28", measured'],
    ['At your own draw, 27"', '42.6# @ 27", by calculation between measured draws'],
    ['Weighed', '2026-02-27'],
  ],
  string: [
    ['Brace height', '6 1/2" to 7 1/4"'],
    [
      'String',
      'polyester string of the stretching kind; low-stretch strings only where the tips are rated for them: yours are not known to be',
    ],
    ['Never draw past', '29" AMO'],
  ],
  arrows: [
    'Arrows of at least 407 grains in all: 9 grains a pound at 45.2# @ 28". That is this shop\'s rule; where the maker of the bow or of the arrows asks for more, that counts. If you draw farther, the arrows must be heavier.',
    'The bow draws less than before: shafts that suited it may now be too stiff in spine. Try them at a short distance, or ask.',
  ],
  finish: [
    ['Finish', 'two-part clear, sheet of 2025-06'],
    ['Safe to wrap or case', 'from 2026-03-01 (seven days at 70 F)'],
    [
      'Fully cured',
      'when the data sheet of the finish says so, counted from the last coat on 2026-02-20; until then keep it dry, cool and unpressed',
    ],
  ],
  use: [
    'String it with a stringer, and look along both limbs that the string runs down the middle before you draw.',
    'Unstring it after shooting.',
    'Never let go of the drawn string without an arrow on it.',
    'Keep it out of a hot car, off a heater and out of rain and damp. Hang it, or lay it flat, unstrung.',
    'A crack, a line that lifts, a click or a change of tiller: unstring it, do not draw it again, and call us.',
  ],
  watch: ['upper tip overlay: hairline in the glue line'],
  terms: 'We look at our work again without charge within 90 days.',
};

export const careShortest: CareCardData = {
  ...careSample,
  shop: { name: 'A', lines: [], phone: '', email: '' },
  customerName: '',
  bowLine: 'Bow not identified',
  work: '',
  weights: [['Weight', 'not weighed since the work']],
  arrows: ['Arrows of at least 9 grains a pound of draw weight at your own draw.'],
  finish: [],
  watch: [],
  terms: '',
};

export const careLong: CareCardData = {
  ...careSample,
  customerName: 'Wilhelmina Featherstonehaugh-Cholmondeley of the Upper Riverside Archers',
  bowLine: `Three-piece take-down recurve, 62", ${'serial with a very long number 0123456789 '.repeat(4)}`,
  work: many(7, 'Strip & refinish').join(', '),
  finish: [
    ['Finish', 'oil under two-part clear '.repeat(30).trim()],
    ...careSample.finish.slice(1),
  ],
  watch: many(40, 'lower limb, belly face: chip at the edge of the glass, to be watched'),
  terms: many(30, 'We look at our work again without charge within 90 days.').join('\n'),
};
