import { OPS, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { markingModule, markingTemplatePdf } from '../../../core/papers/marking-template.ts';
import type { MarkingTemplateData } from '../../../core/papers/marking-template-data.ts';
import { edgeLine } from '../../../core/papers/marking-template-drawing.ts';
import { expectCleanPages } from './layout-checks.ts';
import { markingLimb, markingLong, markingSample, markingShortest } from './marking-samples.ts';
import {
  decode,
  entries,
  figureTexts,
  openPdf,
  pagesOf,
  placedText,
  rolesOf,
  textOf,
} from './read-back.ts';

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

const near = (a: number, b: number) => Math.abs(a - b) < 0.001;
const isLevel = ({ points: [a, b] }: Stroke) =>
  a !== undefined && b !== undefined && near(a.y, b.y);

/** Long lines of two points: the centre is the upright one in the middle of the page. */
async function measure(page: PDFPageProxy) {
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

async function expectPlan(data: MarkingTemplateData) {
  const { bytes } = await markingTemplatePdf(data);
  const all = await pagesOf(bytes);
  let from = 0;
  for (const limb of data.limbs) {
    const text = await Promise.all(all.map(placedText));
    const count = Number(
      text[from]
        ?.map((t) => t.text)
        .join(' ')
        .match(/page 1 of (\d+) of this limb/)?.[1],
    );
    const pages = all.slice(from, from + count);
    const read = await stationsOn(pages);
    const points = limb.outline.map((point) => point.fromFadeIn);
    const stations = limb.stations.filter(({ fromFadeIn }) => fromFadeIn > 0);
    // The first sheet ends its drawing 1/4 in under the fade line.
    const bars = await Promise.all(pages.map(uprightBar));
    const advance = windowAdvance(data, pages.length, limb.lengthIn);
    for (const station of stations) {
      const sheets = read.filter(
        ({ sheet, y }) =>
          Math.abs(
            ((bars[sheet]?.low ?? 0) - y) / 72 - 0.25 + advance * sheet - station.fromFadeIn,
          ) <
          exact / 72,
      );
      expect(sheets.length, `station ${station.fromFadeIn}`).toBeGreaterThan(0);
      const at = limb.outline[points.indexOf(station.fromFadeIn)];
      if (at === undefined) throw new Error('no outline point');
      for (const sheet of sheets) {
        expect(sheet.left).toHaveLength(2);
        for (const side of ['left', 'right'] as const) {
          const [present = 0, next = 0] = sheet[side];
          expect(Math.abs(present - at[side].presentIn * 72)).toBeLessThan(exact);
          expect(Math.abs(next - at[side].newIn * 72)).toBeLessThan(exact);
        }
      }
    }
    from += count;
  }
  expect(from).toBe(all.length);
}

/** Inches along the limb from one sheet to the next: what it shows less the half inch shown twice. */
function windowAdvance(data: MarkingTemplateData, sheets: number, lengthIn: number): number {
  if (data.format === 'long') return 0;
  const shown = data.format === 'letter' ? 8 : 8.75;
  expect(sheets).toBe(1 + Math.max(0, Math.ceil((lengthIn + 0.5 - shown) / (shown - 0.5))));
  return shown - 0.5;
}

async function uprightBar(page: PDFPageProxy) {
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

const formats = ['letter', 'a4', 'long'] as const;
const samples = { markingShortest, markingSample, markingLong };
const cases = Object.entries(samples).flatMap(([name, data]) =>
  formats.map((format) => [name, format, { ...data, format }] as const),
);

test.each(cases)(
  '%s, %s: every edge at every station is where the plan puts it',
  async (_, __, data) => {
    await expectPlan(data);
  },
);

test.each(cases)('%s, %s: both check bars are 288 points on every sheet', async (_, __, data) => {
  const { bytes } = await markingTemplatePdf(data);
  for (const page of await pagesOf(bytes)) {
    const { uprightPt, levelPt } = await uprightBar(page);
    expect(uprightPt).toBeCloseTo(288, 4);
    expect(levelPt).toBeCloseTo(288, 4);
  }
});

test.each(cases)(
  '%s, %s: nothing runs into anything; the number is on every sheet',
  async (_, format, data) => {
    const { bytes } = await markingTemplatePdf(data);
    if (format !== 'long') await expectCleanPages(bytes, 10 * markingModule);
    for (const page of await pagesOf(bytes)) {
      expect((await decode(page, format === 'long' ? 150 : 300)).map(({ text }) => text)).toEqual([
        '26-0147',
      ]);
    }
  },
  90_000,
);

test('two sheets show the same half inch around a join, with the same letter', async () => {
  const { bytes } = await markingTemplatePdf(markingSample);
  const pages = (await pagesOf(bytes)).slice(0, 4);
  const advance = windowAdvance(markingSample, pages.length, 24.5);
  const joins: { letter: string; at: number }[] = [];
  for (const [sheet, page] of pages.entries()) {
    const { low } = await uprightBar(page);
    const { lines, new: next } = await measure(page);
    // The left cross of each join: 12 points across, around 56 points from the edge.
    const crosses = lines.filter(
      ({ points: [a, b], ...line }) =>
        isLevel({ ...line, points: [a, b].filter((at) => at !== undefined) }) &&
        near(a?.x ?? 0, 50) &&
        near(b?.x ?? 0, 62),
    );
    const heights = [...new Set(crosses.map((line) => line.points[0]?.y ?? 0))];
    const letters = (await placedText(page)).filter(({ text }) => /^[A-Z]$/.test(text));
    expect(letters).toHaveLength(heights.length);
    for (const y of heights) {
      const letter = letters.find((each) => Math.abs((each.top + each.bottom) / 2 - y) < 6);
      joins.push({ letter: letter?.text ?? '', at: (low - y) / 72 - 0.25 + advance * sheet });
    }
    // The outline reaches a quarter of an inch past the join.
    const top = Math.min(...next.flatMap(({ points }) => points.map(({ y }) => y)));
    if (sheet < pages.length - 1) {
      expect(Math.min(...heights) - top).toBeCloseTo(18, 2);
    }
  }
  const letters = [...new Set(joins.map(({ letter }) => letter))].sort();
  expect(letters).toEqual(['A', 'B', 'C']);
  for (const letter of letters) {
    const pair = joins.filter((join) => join.letter === letter);
    expect(pair).toHaveLength(2);
    expect(pair[0]?.at).toBeCloseTo(pair[1]?.at ?? Number.NaN, 3);
  }
});

test('a limb on one page is as long as the limb, within what a PDF page may be', async () => {
  const pages = await pagesOf((await markingTemplatePdf({ ...markingLong, format: 'long' })).bytes);
  expect(pages).toHaveLength(2);
  for (const page of pages) {
    const { width, height } = page.getViewport({ scale: 1 });
    expect(width).toBe(612);
    expect(height).toBeGreaterThan(49.3 * 72);
    expect(height).toBeLessThanOrEqual(200 * 72);
  }
});

test('it says which limb, face and plan it is, and what to check before cutting', async () => {
  const paper = await markingTemplatePdf(markingShortest);
  expect(paper.fileName).toBe('26-0147 marking-out template.pdf');
  const text = await textOf(paper.bytes);
  for (const words of [
    'LOWER LIMB, BACK',
    'Plan 2 of 2026-03-01: Narrowing to 45# @ 28"',
    'Printed 2026-03-02',
    'Print at 100 %',
    'both bars measure 4 in before cutting',
    'Centre = braced string line: mark it on the limb first',
    'Nothing comes off the width of the upper limb.',
    'fade line',
    'nock',
    'off 0.016" (1/64")',
  ]) {
    expect(text).toContain(words);
  }
});

test('it prints at true size and is tagged', async () => {
  const { bytes } = await markingTemplatePdf(markingSample);
  const document = await openPdf(bytes);
  expect(entries(await document.getViewerPreferences())).toMatchObject({ PrintScaling: 'None' });
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(roles.filter((role) => role === 'H2')).toHaveLength(7);
  expect(await figureTexts(bytes)).toContain('Check bar along the page, exactly 4 inches');
});

test('stations too close for their figures are refused by limb, not cut off', async () => {
  const crowded = { ...markingSample, limbs: [markingLimb('upper', 8, 1 / 64, 0.2)] };
  await expect(markingTemplatePdf(crowded)).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: expect.stringContaining('upper limb'),
  });
});
