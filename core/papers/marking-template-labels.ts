import { ShopError } from '../../shared/errors.ts';
import { inchFraction } from '../../shared/measure.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import type { MarkingFigure, MarkingLimb, MarkingStation } from './marking-template-data.ts';
import { outside } from './marking-template-drawing.ts';
import { type MarkingPage, overlapIn, yOf } from './marking-template-places.ts';
import { artifact, quiet } from './sheet.ts';

const nameStyle: TextStyle = { font: fonts.semibold, size: 7 };
const figureStyle: TextStyle = { font: fonts.regular, size: 7 };
const step = lineHeight(figureStyle);
/** A label takes three lines and a little air, points. */
const labelHeight = 3 * step + 3;
/** Words keep this far off the ends of the station line, points. */
const leader = 10;
const leftEdge = 66;
const rightEdge = 62;

interface Label {
  /** Height on the page the words belong to, points. */
  at: number;
  left: string[];
  right: string[];
}

/** Less than half a 64th has no fraction. */
const written = ({ decimalText, fractionText }: MarkingFigure) =>
  fractionText === '0' ? `${decimalText}"` : `${decimalText}" (${fractionText}")`;

const sideLines = ({ new: next, off }: MarkingStation['left']) => [
  `new ${written(next)}`,
  off.valueIn === 0 ? 'off nothing' : `off ${written(off)}`,
];

function nameOf(limb: MarkingLimb, station: MarkingStation): string {
  if (station.fromFadeIn === 0) return 'fade line';
  const from = `${inchFraction(station.fromFadeIn)}" from the fade`;
  return Math.abs(station.fromFadeIn - limb.lengthIn) < 0.001 ? `${from}: nock` : from;
}

/** Words of the stations this page is the one to name; near a join only one of two sheets does. */
function labelsOf(page: MarkingPage): Label[] {
  const { limb } = page;
  const from = page.page === 1 ? page.fromIn : page.fromIn + overlapIn / 2;
  const to = page.page === page.pages ? page.toIn : page.toIn - overlapIn / 2;
  const named = limb.stations.filter(({ fromFadeIn }) => fromFadeIn >= from && fromFadeIn < to);
  const labels = named.map((station) => ({
    at: yOf(page, station.fromFadeIn),
    left: [nameOf(limb, station), ...sideLines(station.left)],
    right: [
      station.offTotal.valueIn === 0
        ? 'both sides: nothing off'
        : `both off ${written(station.offTotal)}`,
      ...sideLines(station.right),
    ],
  }));
  const fade = { at: yOf(page, 0), left: ['fade line'], right: [] };
  const noFade = page.page === 1 && !limb.stations.some(({ fromFadeIn }) => fromFadeIn === 0);
  return noFade ? [fade, ...labels] : labels;
}

/**
 * Tops of the labels, from the fade (low on the page) upwards: as near their lines as they go.
 * @throws ShopError UNPRINTABLE where the stations lie too close for their figures
 */
function topsOf(page: MarkingPage, labels: readonly Label[]): number[] {
  const lowest = page.bottom + 18 - labelHeight;
  if ((labels.length - 1) * labelHeight > lowest - page.top) {
    const sentence = `The ${page.limb.limb} limb has ${labels.length} stations on one sheet: their figures do not fit beside it. Measure fewer, or print it as one long page.`;
    throw new ShopError('UNPRINTABLE', sentence, { stations: sentence });
  }
  const tops: number[] = [];
  let room = lowest;
  for (const label of labels) {
    const top = Math.min(label.at - labelHeight / 2, room);
    tops.push(top);
    room = top - labelHeight;
  }
  // What was pushed out at the top is pushed back down.
  let least = page.top - 4;
  for (let i = tops.length - 1; i >= 0; i -= 1) {
    const top = Math.max(tops[i] ?? 0, least);
    tops[i] = top;
    least = top + labelHeight;
  }
  return tops;
}

function drawLabel(flow: Flow, page: MarkingPage, label: Label, top: number): void {
  const { doc } = flow;
  const reach = page.half + outside;
  const [leftEnd, rightStart] = [page.centre - reach - leader, page.centre + reach + leader];
  const middle = top + labelHeight / 2;
  artifact(doc, () => {
    doc.moveTo(page.centre - reach, label.at).lineTo(leftEnd + 2, middle);
    if (label.right.length > 0)
      doc.moveTo(page.centre + reach, label.at).lineTo(rightStart - 2, middle);
    doc.lineWidth(0.25).stroke(quiet);
  });
  const boxes = [
    [label.left, { x: leftEdge, width: leftEnd - leftEdge, align: 'right' }],
    [label.right, { x: rightStart, width: page.size[0] - rightEdge - rightStart, align: 'left' }],
  ] as const;
  flow.tagged('P', () => {
    for (const [lines, box] of boxes) {
      const y = middle - (lines.length * step) / 2;
      drawLines(doc, lines.slice(0, 1), { ...box, y }, nameStyle);
      drawLines(doc, lines.slice(1), { ...box, y: y + step }, figureStyle);
    }
  });
}

/** Figures beside their station lines. @throws ShopError UNPRINTABLE */
export function drawLabels(flow: Flow, page: MarkingPage): void {
  const labels = labelsOf(page);
  const tops = topsOf(page, labels);
  labels.forEach((label, i) => {
    drawLabel(flow, page, label, tops[i] ?? label.at);
  });
}
