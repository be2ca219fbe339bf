import sharp from 'sharp';
import type { BeforeAfterData } from '../../../core/papers/before-after.ts';
import { workOrderSample } from './sample-data.ts';

const picture = async (width: number, height: number, background: string) =>
  (
    await sharp({ create: { width, height, channels: 3, background } })
      .jpeg()
      .toBuffer()
  ).toString('base64');

export const beforeAfterShortest: BeforeAfterData = {
  format: 'letter',
  copy: 'customer',
  printedAt: '2026-03-20T09:00:00.000Z',
  shop: workOrderSample.shop,
  number: '26-0147',
  customerName: '',
  bowLine: 'Bow not identified',
  photographs: [],
  weighed: { before: '', after: '' },
  weights: [{ draw: 'standard: 28"', before: 'not measured', after: 'not measured' }],
  strip: { arrivalLbf: null, nowLbf: null, targetLbf: null, stopBandLbf: null, forecastLbf: null },
  stripDraw: '28" AMO',
  removed: [],
  removedWords: ['Nothing was taken off the limbs to change the draw weight.'],
  facts: [{ label: 'String', before: 'not recorded', after: 'not recorded' }],
  finished: [],
  acknowledged: null,
};

export const beforeAfterSample: BeforeAfterData = {
  ...beforeAfterShortest,
  customerName: 'Nora Hale',
  bowLine: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  photographs: [
    {
      label: 'Before',
      words: '2026-03-01, back of the upper limb',
      jpeg: await picture(1100, 825, '#B89B72'),
      widthPx: 1100,
      heightPx: 825,
    },
    {
      label: 'After',
      words: '2026-03-19, whole bow',
      jpeg: await picture(700, 1100, '#8A6F4A'),
      widthPx: 700,
      heightPx: 1100,
    },
  ],
  weighed: { before: ' (arrival, 2026-03-01)', after: ' (final, 2026-03-19)' },
  weights: [
    { draw: 'as ordered: 28"', before: '52.3# @ 28"', after: '45.2# @ 28"' },
    { draw: 'your own draw: 29"', before: '54.9# @ 29"', after: 'not measured' },
  ],
  strip: {
    arrivalLbf: 52.3,
    nowLbf: 45.2,
    targetLbf: 45,
    stopBandLbf: null,
    forecastLbf: null,
  },
  removed: [
    {
      limb: 'Upper',
      cells: ['0.047" (3/64")', '0.047" (3/64")', '0.094" (3/32")', '2 thou', '2 thou'],
    },
    {
      limb: 'Lower',
      cells: ['0.039" (3/64")', '0.039" (3/64")', '0.078" (5/64")', '2 thou', 'nothing'],
    },
  ],
  removedWords: [],
  facts: [
    { label: 'String', before: '14 strands, new', after: '14 strands, new' },
    { label: 'Brace height', before: '7 1/4"', after: '7 3/8"' },
    { label: 'Tiller at the fades', before: '5/16" (upper limb weaker)', after: 'even' },
  ],
  finished: [
    ['Work', 'Reduce weight, Refinish'],
    ['Finish', 'two-part satin, sheet revision 4'],
    ['By', 'Ben Marsh, Ida Penn'],
  ],
  acknowledged: "The maker's warranty may not cover an altered bow.",
};

export const beforeAfterLong: BeforeAfterData = {
  ...beforeAfterSample,
  customerName: 'Nora '.repeat(24).trim(),
  bowLine: 'longbow 66", Oldfield Heron of the northern yard, '.repeat(6),
  photographs: beforeAfterSample.photographs.map((each) => ({
    ...each,
    words: `${each.words}, ${'seen from the side with the string on '.repeat(8)}`.slice(0, 312),
  })),
  removedWords: Array.from(
    { length: 60 },
    (_, i) => `Bite ${i + 1}: ${'scraped evenly along the belly of both limbs, '.repeat(4)}`,
  ),
  finished: [
    ['Work', 'Reduce weight, Refinish, Re-mark, '.repeat(4)],
    ['Finish', 'two-part satin, sheet revision 4, three coats with a flash of one day. '.repeat(5)],
    ['By', 'Ben Marsh, Ida Penn, Otto Reed, '.repeat(8)],
  ],
};
