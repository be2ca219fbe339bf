import { expect, test } from 'vitest';
import { code128Bars } from '../../../core/papers/code128.ts';
import { shippingTagPdf } from '../../../core/papers/shipping-tag.ts';
import { tagModule } from '../../../core/papers/tag-parts.ts';
import { expectCleanPages } from './layout-checks.ts';
import {
  darkRuns,
  decode,
  entries,
  figureTexts,
  openPdf,
  pagesOf,
  rolesOf,
  textOf,
} from './read-back.ts';
import { tagLong, tagSample } from './sample-data.ts';

const quietPt = 10 * tagModule;

async function onlyPage(bytes: Uint8Array) {
  const pages = await pagesOf(bytes);
  expect(pages).toHaveLength(1);
  const [page] = pages;
  if (page === undefined) throw new Error('no page');
  return page;
}

test.each([
  ['4x6', 288, 432],
  ['a6', 297.64, 419.53],
] as const)('%s is one page of its exact size', async (format, width, height) => {
  for (const data of [tagSample, tagLong]) {
    const page = await onlyPage((await shippingTagPdf({ ...data, format })).bytes);
    const size = page.getViewport({ scale: 1 });
    expect(size.width).toBeCloseTo(width, 2);
    expect(size.height).toBeCloseTo(height, 2);
  }
});

test('it prints at true size under its own name', async () => {
  const paper = await shippingTagPdf(tagSample);
  expect(paper).toMatchObject({ fileName: '26-0147 shipping tag.pdf', pages: 1 });
  const document = await openPdf(paper.bytes);
  expect(entries(await document.getViewerPreferences())).toMatchObject({
    PrintScaling: 'None',
    DisplayDocTitle: true,
  });
});

test.each([
  ['4x6', 203],
  ['4x6', 300],
  ['a6', 300],
] as const)('both codes read as the order number: %s at %i dpi', async (format, dpi) => {
  const page = await onlyPage((await shippingTagPdf({ ...tagLong, format })).bytes);
  const codes = await decode(page, dpi);
  expect(codes.map((code) => [code.format, code.text]).sort()).toEqual([
    ['Code128', '26-0147'],
    ['QRCode', '26-0147'],
  ]);
});

test('the bars measure half a millimetre a module, with 10 modules of white beside them', async () => {
  const page = await onlyPage((await shippingTagPdf(tagSample)).bytes);
  const box = (await decode(page)).find((code) => code.format === 'Code128')?.box;
  if (box === undefined) throw new Error('no bars');
  const runs = await darkRuns(page, (box.top + box.bottom) / 2, 1200);
  const halfMm = (0.5 / 25.4) * 72;
  const bars = code128Bars('26-0147');
  expect(runs).toHaveLength(bars.filter((_, i) => i % 2 === 0).length);
  let at = runs[0]?.from ?? 0;
  // A dot of 1200 dpi is 0.06 pt; each edge may be off by one.
  for (const [index, width] of bars.entries()) {
    const run = runs[Math.floor(index / 2)];
    if (index % 2 === 0) {
      expect(Math.abs((run?.from ?? 0) - at)).toBeLessThan(0.13);
      expect(Math.abs((run?.to ?? 0) - at - width * halfMm)).toBeLessThan(0.13);
    }
    at += width * halfMm;
  }
  expect(runs[0]?.from).toBeGreaterThan(10 * halfMm);
  expect(288 - (runs.at(-1)?.to ?? 288)).toBeGreaterThan(10 * halfMm);
});

test('it says how to carry the parcel, and nothing of what lies in it', async () => {
  const text = await textOf((await shippingTagPdf(tagSample)).bytes);
  expect(text).toContain('Fragile - do not bend');
  for (const words of ['STOP', 'DO NOT STRING', 'bow']) expect(text).not.toContain(words);
});

test('box and value are on the office copy only; contents only where asked', async () => {
  const parcel = await textOf((await shippingTagPdf(tagSample)).bytes);
  for (const words of ['480', '66 x 5 x 5', 'Archery', 'Office copy'])
    expect(parcel).not.toContain(words);
  const office = await textOf(
    (await shippingTagPdf({ ...tagSample, copy: 'office', contents: 'Archery bow' })).bytes,
  );
  for (const words of ['$480.00', '66 x 5 x 5 in', 'Archery bow', 'Office copy', 'tracking 9400'])
    expect(office).toContain(words);
});

test('from and to are whole, even when long', async () => {
  const text = await textOf((await shippingTagPdf(tagLong)).bytes);
  for (const line of [...tagLong.from.lines, ...tagLong.to.lines]) expect(text).toContain(line);
});

test('an address that fits in no size is refused, not cut off', async () => {
  const lines = Array.from({ length: 40 }, (_, i) => `Line ${i + 1}`);
  await expect(
    shippingTagPdf({ ...tagSample, to: { name: 'Nora Hale', lines } }),
  ).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: 'The delivery address is too long for the shipping tag: shorten it.',
  });
});

test.each(['4x6', 'a6'] as const)('nothing overlaps on %s', async (format) => {
  for (const data of [tagSample, tagLong])
    await expectCleanPages((await shippingTagPdf({ ...data, format })).bytes, quietPt);
});

test('the structure tells headings and pictures', async () => {
  const { bytes } = await shippingTagPdf(tagSample);
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(roles.filter((role) => role === 'H2')).toHaveLength(2);
  expect(await figureTexts(bytes)).toEqual([
    'QR code of the order number 26-0147',
    'Barcode of the order number 26-0147',
  ]);
});

test('the same data gives the same bytes', async () => {
  const once = await shippingTagPdf(tagLong);
  const twice = await shippingTagPdf(structuredClone(tagLong));
  expect(Buffer.from(once.bytes).equals(twice.bytes)).toBe(true);
});
