import type { MarkingLimb, MarkingTemplateData } from './marking-template-data.ts';
import { pageSizes } from './sheet.ts';

export const inch = 72;
/** Points above and below the drawing, for head and check bar. */
const above = 112;
const below = 96;
/** Two sheets show the same stretch around a join, inches. */
export const overlapIn = 0.5;
/** Light paper before the fade line and past the nock, inches. */
const spareIn = 0.25;
/** Of the one-piece page, points: as wide as a Letter roll. */
const longWidth = 612;

/** One page of a limb: the stretch it shows and where that stands. Lengths along the limb in inches. */
export interface MarkingPage {
  limb: MarkingLimb;
  /** 1 and up, within its limb. */
  page: number;
  pages: number;
  size: readonly [number, number];
  fromIn: number;
  toIn: number;
  /** Lines at which this page meets its neighbours. */
  joins: { atIn: number; letter: string }[];
  /** Points. */
  top: number;
  bottom: number;
  centre: number;
  /** Widest half of the limb, points. */
  half: number;
}

function windowIn(format: 'letter' | 'a4'): number {
  const room = pageSizes[format][1] - above - below;
  // Whole quarters, so that sheets of either size are joined at round places.
  return Math.floor((room / inch) * 4) / 4;
}

function spans(limb: MarkingLimb, format: MarkingTemplateData['format']): [number, number][] {
  const [start, end] = [-spareIn, limb.lengthIn + spareIn];
  if (format === 'long') return [[start, end]];
  const shown = windowIn(format);
  const count = 1 + Math.max(0, Math.ceil((end - start - shown) / (shown - overlapIn)));
  return Array.from({ length: count }, (_, i) => {
    const from = start + i * (shown - overlapIn);
    return [from, from + shown];
  });
}

const letterOf = (join: number) => String.fromCharCode(65 + join);

function sizeOf(format: MarkingTemplateData['format'], shownIn: number): readonly [number, number] {
  return format === 'long' ? [longWidth, above + shownIn * inch + below] : pageSizes[format];
}

/** The sheets of one limb, from the fade outwards. */
export function pagesOfLimb(
  limb: MarkingLimb,
  format: MarkingTemplateData['format'],
): MarkingPage[] {
  const all = spans(limb, format);
  const widths = limb.outline.flatMap(({ left, right }) => [left.presentIn, right.presentIn]);
  return all.map(([fromIn, toIn], i) => {
    const size = sizeOf(format, toIn - fromIn);
    const joins = [
      ...(i === 0 ? [] : [{ atIn: fromIn + overlapIn / 2, letter: letterOf(i - 1) }]),
      ...(i === all.length - 1 ? [] : [{ atIn: toIn - overlapIn / 2, letter: letterOf(i) }]),
    ];
    return {
      limb,
      page: i + 1,
      pages: all.length,
      size,
      fromIn,
      toIn,
      joins,
      top: above,
      bottom: above + (toIn - fromIn) * inch,
      centre: size[0] / 2,
      half: Math.max(...widths) * inch,
    };
  });
}

/** Height on the page of a place along the limb; the tip is up. */
export const yOf = (page: MarkingPage, fromFadeIn: number) =>
  page.bottom - (fromFadeIn - page.fromIn) * inch;
