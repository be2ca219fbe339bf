import { z } from './zod.ts';

/** Letters stand on the bare bow, or on a seal coat that keeps the ink from bleeding into the grain. */
export const letteringSurface = z.enum(['bare', 'sealed']);
export type LetteringSurface = z.infer<typeof letteringSurface>;
export const letteringSurfaceLabels: Record<LetteringSurface, string> = {
  bare: 'on the bare surface',
  sealed: 'on the seal coat',
};

export const letteringManner = z.enum(['hand', 'label']);
export type LetteringManner = z.infer<typeof letteringManner>;
export const letteringMannerLabels: Record<LetteringManner, string> = {
  hand: 'lettered by hand',
  label: 'label under the finish',
};

/** Steps a measured weight is rounded to on the bow, pound-force. Shop policy: no standard says it. */
export const markingRounds = [1, 0.5] as const;
export const markingRoundLbf = z.literal(markingRounds);
export type MarkingRoundLbf = (typeof markingRounds)[number];
export const markingRoundLabels: Record<MarkingRoundLbf, string> = {
  1: 'nearest pound',
  0.5: 'nearest half pound',
};

/** What a line of the inscription says. */
export const suggestionKinds = [
  'weight',
  'amo-length',
  'serial',
  'date',
  'owner',
  'reworked-by',
] as const;
export type SuggestionKind = (typeof suggestionKinds)[number];
export const suggestionLabels: Record<SuggestionKind, string> = {
  weight: 'Measured weight',
  'amo-length': 'AMO length',
  serial: 'Serial number',
  date: 'Date',
  owner: "Owner's mark",
  'reworked-by': 'Reworked by',
};

/** Width of a payment card, inches: ISO/IEC 7810, ID-1, 85.60 x 53.98 mm. Shows whether a size is true. */
export const cardWidthIn = 85.6 / 25.4;

/**
 * Em size in multiples of the height of a capital, of Source Sans 3: its capitals are 660 of
 * 1000 units high (OS/2 table of the font, sCapHeight). Screen and papers letter with it.
 */
export const emPerCapital = 1000 / 660;

/** From base line to base line, in multiples of the height of a capital (common practice). */
export const lineStepPerCapital = 1.8;

/** Height of a capital where nobody chose one, inches: legible at arm's length (common practice). */
export const usualLetterHeightIn = 3 / 16;
