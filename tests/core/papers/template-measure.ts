/** Marking-out templates as they come out of the printer: every line measured on the page. */
import { OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect } from 'vitest';
import type { MarkingTemplateData } from '../../../core/papers/marking-template-data.ts';
import { edgeLine } from '../../../core/papers/marking-template-drawing.ts';
import { placedText } from './read-back.ts';

type Point = { x: number; y: number };
interface Stroke {
  width: number;
  points: Point[];
}

/** Strokes of straight pieces, each subpath by itself, points from the top left of the page. */
async function strokesOf(page: PDFPageProxy): Promise<Stroke[]> {
  const { height } = page.getViewport({ scale: 1 });
  const { fnArray, argsArray } = await page.getOperatorList();
  const strokes: Stroke[] = [];
  let width = 1;
  // pdfkit turns the page over with its first matrix; paths come in its coordinates.
  let down = false;
  for (const [i, operator] of fnArray.entries()) {
    const args = argsArray[i] as unknown[];
    if (operator === OPS.transform && args[3] === -1) down = true;
    if (operator === OPS.setLineWidth) width = Number(args[0]);
    if (operator !== OPS.constructPath || args[0] !== OPS.stroke) continue;
    const [numbers] = args[1] as [Float32Array | null];
    if (numbers === null) continue;
    let points: Point[] = [];
    for (let at = 0; at < numbers.length; ) {
      const kind = numbers[at];
      if (kind === 0 && points.length > 0) {
        strokes.push({ width, points });
        points = [];
      }
      if (kind === 0 || kind === 1) {
        const y = numbers[at + 2] ?? Number.NaN;
        points.push({ x: numbers[at + 1] ?? Number.NaN, y: down ? y : height - y });
        at += 3;
      } else {
        at += kind === 2 ? 7 : kind === 3 ? 5 : 1;
      }
    }
    strokes.push({ width, points });
  }
  return strokes;
}

export const near = (a: number, b: number) => Math.abs(a - b) < 0.001;
export const isLevel = ({ points: [a, b] }: Stroke) =>
  a !== undefined && b !== undefined && near(a.y, b.y);

const measured = new WeakMap<PDFPageProxy, ReturnType<typeof measureOnce>>();
/** Each page is read once. */
export function measure(page: PDFPageProxy) {
  const known = measured.get(page) ?? measureOnce(page);
  measured.set(page, known);
  return known;
}

/** Long lines of two points: the centre is the upright one in the middle of the page. */
async function measureOnce(page: PDFPageProxy) {
  const strokes = await strokesOf(page);
  const { width } = page.getViewport({ scale: 1 });
  const outlines = strokes.filter(({ points }) => points.length > 4);
  const pick = (line: number) => outlines.filter((stroke) => near(stroke.width, line));
  const lines = strokes.filter(({ points }) => points.length === 2);
  const centre = lines.find(
    ({ points: [a, b], width: line }) =>
      near(line, edgeLine.centre) && a !== undefined && b !== undefined && near(a.x, b.x),
  )?.points[0]?.x;
  return { present: pick(edgeLine.present), new: pick(edgeLine.new), lines, centre, width };
}

/** Where an outline crosses a height: its x, or none. */
function xAt({ points }: Stroke, y: number): number | null {
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (a === undefined || y > a.y + 0.001 || y < b.y - 0.001) continue;
    return a.y === b.y ? a.x : a.x + ((b.x - a.x) * (a.y - y)) / (a.y - b.y);
  }
  return null;
}

/** Station lines with the edges read on them, from the fade outwards, over all sheets of a limb. */
async function stationsOn(pages: readonly PDFPageProxy[]) {
  const found: { sheet: number; y: number; left: number[]; right: number[] }[] = [];
  for (const [sheet, page] of pages.entries()) {
    const { lines, centre, present, new: next } = await measure(page);
    if (centre === undefined) throw new Error('no centre line');
    const levels = lines.filter((line) => isLevel(line) && near(line.width, edgeLine.station));
    for (const line of levels) {
      const y = line.points[0]?.y ?? 0;
      const offsets = [...present, ...next]
        .map((outline) => xAt(outline, y))
        .filter((x) => x !== null)
        .map((x) => x - centre);
      found.push({
        sheet,
        y,
        left: offsets.filter((x) => x < 0).map((x) => -x),
        right: offsets.filter((x) => x > 0),
      });
    }
  }
  return found;
}

const exact = 0.1;

/** The edges at one station, inches from the centre line, as they should stand on the paper. */
interface WantedStation {
  fromFadeIn: number;
  left: { presentIn: number; newIn: number };
  right: { presentIn: number; newIn: number };
}

interface WantedTemplate {
  format: MarkingTemplateData['format'];
  /** Stations past the fade line. */
  limbs: readonly { lengthIn: number; stations: readonly WantedStation[] }[];
}

/** Measures both edges on both sides at every station, on each sheet that shows it. */
export async function expectTemplate(all: readonly PDFPageProxy[], wanted: WantedTemplate) {
  const texts = await Promise.all(all.map(placedText));
  let from = 0;
  for (const limb of wanted.limbs) {
    const count = Number(
      texts[from]
        ?.map((t) => t.text)
        .join(' ')
        .match(/page 1 of (\d+) of this limb/)?.[1],
    );
    const pages = all.slice(from, from + count);
    const read = await stationsOn(pages);
    // The first sheet ends its drawing 1/4 in under the fade line.
    const bars = await Promise.all(pages.map(uprightBar));
    const advance = windowAdvance(wanted.format, pages.length, limb.lengthIn);
    for (const station of limb.stations) {
      const sheets = read.filter(
        ({ sheet, y }) =>
          Math.abs(
            ((bars[sheet]?.low ?? 0) - y) / 72 - 0.25 + advance * sheet - station.fromFadeIn,
          ) <
          exact / 72,
      );
      expect(sheets.length, `station ${station.fromFadeIn}`).toBeGreaterThan(0);
      for (const sheet of sheets) {
        expect(sheet.left).toHaveLength(2);
        for (const side of ['left', 'right'] as const) {
          const [present = 0, next = 0] = sheet[side];
          expect(Math.abs(present - station[side].presentIn * 72)).toBeLessThan(exact);
          expect(Math.abs(next - station[side].newIn * 72)).toBeLessThan(exact);
        }
      }
    }
    from += count;
  }
  expect(from).toBe(all.length);
}

/** Inches along the limb from one sheet to the next: what it shows less the half inch shown twice. */
export function windowAdvance(
  format: MarkingTemplateData['format'],
  sheets: number,
  lengthIn: number,
): number {
  if (format === 'long') return 0;
  const shown = format === 'letter' ? 8 : 8.75;
  expect(sheets).toBe(1 + Math.max(0, Math.ceil((lengthIn + 0.5 - shown) / (shown - 0.5))));
  return shown - 0.5;
}

export async function uprightBar(page: PDFPageProxy) {
  const { lines } = await measure(page);
  const bars = lines.filter(({ width }) => near(width, 0.75));
  expect(bars).toHaveLength(2);
  const upright = bars.find((line) => !isLevel(line));
  const level = bars.find(isLevel);
  const [a, b] = upright?.points ?? [];
  const [c, d] = level?.points ?? [];
  return {
    low: Math.max(a?.y ?? 0, b?.y ?? 0),
    uprightPt: Math.abs((a?.y ?? 0) - (b?.y ?? 0)),
    levelPt: Math.abs((c?.x ?? 0) - (d?.x ?? 0)),
  };
}
