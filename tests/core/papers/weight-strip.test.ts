import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { drawWeightStrip, weightStripHeight } from '../../../core/papers/weight-strip.ts';
import { type StripFacts, weightStrip } from '../../../shared/weight-strip.ts';
import { darkRuns, pagesOf } from './read-back.ts';

const box = { x: 20, y: 10, width: 300 };
/** The scale's line lies 15 pt below the top edge. */
const axis = box.y + 15;

async function drawn(facts: StripFacts) {
  const doc = new PDFDocument({ size: [340, 60], margin: 0 });
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise((resolve) => doc.on('end', resolve));
  drawWeightStrip(doc, facts, box);
  doc.end();
  await ended;
  const [page] = await pagesOf(Buffer.concat(chunks));
  if (page === undefined) throw new Error('no page');
  return page;
}

const facts: StripFacts = {
  arrivalLbf: 52,
  nowLbf: 49,
  targetLbf: 45,
  stopBandLbf: [46, 47],
  forecastLbf: null,
};

test('ring, dot, tick and bracket stand at their weights', async () => {
  const page = await drawn(facts);
  const { minLbf, maxLbf } = weightStrip(facts);
  const place = (lbf: number) => box.x + ((lbf - minLbf) / (maxLbf - minLbf)) * box.width;
  // 2 pt above the line, clear of its ticks below it.
  const runs = await darkRuns(page, axis - 2, 600);
  const middles = runs.map((run) => (run.from + run.to) / 2);
  const ring = 4;
  const chord = Math.sqrt(ring * ring - 4);
  const expected = [45, 46, 47, 49].map(place);
  expect(middles).toHaveLength(6);
  expected.forEach((x, i) => void expect(middles[i]).toBeCloseTo(x, 0));
  const dot = runs[3];
  expect((dot?.to ?? 0) - (dot?.from ?? 0)).toBeCloseTo(2 * Math.sqrt(3.4 * 3.4 - 4), 0);
  expect(middles[4]).toBeCloseTo(place(52) - chord, 0);
  expect(middles[5]).toBeCloseTo(place(52) + chord, 0);
});

test('an empty strip is a bare scale', async () => {
  const nothing = { ...facts, arrivalLbf: null, nowLbf: null, targetLbf: null, stopBandLbf: null };
  const page = await drawn(nothing);
  expect(await darkRuns(page, axis - 2, 600)).toEqual([]);
  expect(await darkRuns(page, axis + 2, 600)).toHaveLength(11);
});

test('everything stays inside the height it names', async () => {
  const page = await drawn({ ...facts, forecastLbf: [45, 46, 48] });
  expect(await darkRuns(page, box.y - 1, 300)).toEqual([]);
  expect(await darkRuns(page, box.y + weightStripHeight + 1, 300)).toEqual([]);
});
