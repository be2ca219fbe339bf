import type { GritScale } from '../../shared/grit.ts';

export type GritTableId = 'reprint' | 'chart' | 'dictionary' | 'range-ends';

export interface GritTable {
  id: GritTableId;
  scale: GritScale;
  /** Where the sizes were printed; none of the prints is the standard's own text. */
  source: string;
  /** Average grain size in micrometres, by the grit number. */
  micrometres: ReadonlyMap<number, number>;
}

/** From `number:micrometres` pairs, as they stand in the prints. */
function sizes(text: string): ReadonlyMap<number, number> {
  return new Map(
    text.split(' ').map((pair) => {
      const [grit, micrometres] = pair.split(':').map(Number);
      return [grit ?? Number.NaN, micrometres ?? Number.NaN] as const;
    }),
  );
}

const reprint = 'both scales as reprinted on a woodworking page, 24 March 2008';
const chart = 'comparison chart of the abrasives and finishing trade, whole micrometres';
const dictionary = 'a dictionary of sizes, article on sandpaper; the stored print ends at 120';
const ends = 'the ends of the range as printed in a household reference';

/**
 * Printed grain sizes, every table under its own name: the American ones disagree by up to five
 * in a hundred (CAMI 500 and 600 by more, being whole micrometres), and the standards' own texts
 * were not at hand to settle it.
 *
 * The first table that has a grit is its default. That is the reprint on both scales: it has the
 * most grits to a tenth of a micrometre, it sets the scales side by side and so compares them by
 * one measure, and the dictionary agrees with its P60 to P120. The others fill its holes: the
 * coarse ends, CAMI 280, and P1500 and finer.
 */
export const gritTables: readonly GritTable[] = [
  {
    id: 'reprint',
    scale: 'P',
    source: `FEPA 43 / ISO 6344: ${reprint}`,
    micrometres: sizes(
      '60:269 80:201 100:162 120:125 150:100 180:82 220:68 240:58.5 280:52.2 320:46.2 360:40.5 ' +
        '400:35 500:30.2 600:25.8 800:21.8 1000:18.3 1200:15.3',
    ),
  },
  {
    id: 'dictionary',
    scale: 'P',
    source: `FEPA 43: ${dictionary}`,
    micrometres: sizes('12:1815 36:538 40:425 50:336 60:269 80:201 100:162 120:125'),
  },
  {
    id: 'range-ends',
    scale: 'P',
    source: `FEPA P grades: ${ends}`,
    micrometres: sizes('12:1815 2500:8.4'),
  },
  {
    id: 'chart',
    scale: 'P',
    source: `P grades: ${chart}`,
    micrometres: sizes(
      '40:425 50:336 80:200 100:162 120:125 150:100 180:82 220:68 240:60 280:52 320:46 360:40 ' +
        '400:35 500:30 600:26 800:22 1000:18 1200:15 1500:13 2000:10 2500:8',
    ),
  },
  {
    id: 'reprint',
    scale: 'CAMI',
    source: `ANSI B74.18: ${reprint}`,
    micrometres: sizes(
      '60:265 80:190 100:140 120:115 150:92 180:82 220:68 240:53 320:36 360:28 400:23 500:20 600:16',
    ),
  },
  {
    id: 'dictionary',
    scale: 'CAMI',
    source: `CAMI: ${dictionary}`,
    micrometres: sizes('36:535 40:428 50:351 60:268 80:192 100:141'),
  },
  {
    id: 'range-ends',
    scale: 'CAMI',
    source: `CAMI: ${ends}`,
    micrometres: sizes('1000:10.3'),
  },
  {
    id: 'chart',
    scale: 'CAMI',
    source: `CAMI: ${chart}`,
    micrometres: sizes(
      '60:270 80:192 120:116 150:93 180:82 220:68 240:52 280:42 320:35 360:28 400:22 500:18 600:15',
    ),
  },
];
