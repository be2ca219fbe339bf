import type { PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import type { WorkOrderData } from '../../../core/papers/data.ts';
import { workOrderPdf } from '../../../core/papers/work-order.ts';
import { workOrderModule } from '../../../core/papers/work-order-head.ts';
import { expectCleanPages } from './layout-checks.ts';
import { planOutdated } from './plan-samples.ts';
import {
  type DecodedCode,
  entries,
  figureTexts,
  once,
  openPdf,
  pagesOf,
  placedText,
  rolesOf,
  textOf,
} from './read-back.ts';
import { workOrderEmpty, workOrderLong, workOrderSample } from './sample-data.ts';

/** Each page is drawn and its barcodes are decoded: long papers take their time on a busy machine. */
const patience = 90_000;

const bench: WorkOrderData = { ...workOrderSample, copy: 'bench' };
/** Each sample is drawn once, for all that is read of it. */
const made = once(workOrderPdf);
const quietPt = 10 * workOrderModule;

/** Both read as the order number, top right. */
function expectBothCodes(page: PDFPageProxy, codes: readonly DecodedCode[]): void {
  const { width, height } = page.getViewport({ scale: 1 });
  expect(codes.map((code) => code.format).sort()).toEqual(['Code128', 'QRCode']);
  for (const code of codes) {
    expect(code.text).toBe('26-0147');
    expect(code.box.left).toBeGreaterThan(width / 2);
    expect(code.box.bottom).toBeLessThan(height / 5);
  }
}

test.each([
  ['letter', 612, 792],
  ['a4', 595.28, 841.89],
] as const)('%s pages have their exact size', async (format, width, height) => {
  const { bytes, pages } = await workOrderPdf({ ...workOrderSample, format });
  const read = await pagesOf(bytes);
  expect(read).toHaveLength(pages);
  for (const page of read) {
    const size = page.getViewport({ scale: 1 });
    expect(size.width).toBeCloseTo(width, 2);
    expect(size.height).toBeCloseTo(height, 2);
  }
});

test('the file and the document carry number and paper as their name', async () => {
  const paper = await made(workOrderSample);
  expect(paper.fileName).toBe('26-0147 work order.pdf');
  const document = await openPdf(paper.bytes);
  const { info } = await document.getMetadata();
  expect(info).toMatchObject({ Title: '26-0147 work order', Language: 'en-US' });
  expect(entries(await document.getMarkInfo())).toMatchObject({ Marked: true });
  expect(entries(await document.getViewerPreferences())).toMatchObject({ DisplayDocTitle: true });
});

test('a reader gets what the bench needs', async () => {
  const text = await textOf((await made(bench)).bytes);
  for (const words of [
    'Nora H.',
    'longbow 66", Oldfield Heron',
    '45# @ 28"',
    'three-under, 0 to +1/8',
    'Reduce weight, Re-mark',
    'Wants the old grip kept.',
    'string, bow sock',
    '44.1# @ 26", 47.8# @ 28"',
    'arrived 52.3, now 47.8, forecast 46.4 (45.8 to 47), stop at 46.2 to 47, target 45 lb',
    'Use a stringer.',
    'Marking approval',
    'waiting for an answer',
    'Otto Reed',
  ])
    expect(text).toContain(words);
});

test('the bench copy knows no surname, address, phone or email', async () => {
  const text = await textOf((await made(bench)).bytes);
  for (const words of ['Hale', 'Orchard', 'Millbrook', '555 0142', 'nora@'])
    expect(text).not.toContain(words);
});

test('the office copy has all of the customer', async () => {
  const text = await textOf((await made(workOrderSample)).bytes);
  for (const words of [
    'Nora Hale',
    '12 Orchard Road',
    'Millbrook',
    '555 0142',
    'nora@hale.example',
  ])
    expect(text).toContain(words);
});

test('six bites are ruled to be written in, only where a weight is to be reached', async () => {
  const cutting = await textOf((await workOrderPdf({ ...bench, plan: null })).bytes);
  expect(cutting).toContain('Before 1 2 3 4 5 6');
  expect(cutting).toContain('Limb width at each station');
  const marking = await textOf((await made(workOrderEmpty)).bytes);
  expect(marking).not.toContain('Limb width at each station');
  expect(marking).toContain('not weighed yet');
});

test('the accepted plan is a table a limb, with blanks for what is measured again', async () => {
  const text = await textOf((await made(bench)).bytes);
  for (const words of [
    'Plan 2, accepted 2026-03-01 by Otto Reed',
    'Stop cutting at',
    'Cut table, upper limb',
    'Cut table, lower limb',
    'Measured before',
    'Left off',
    'Right off',
    '0.016" (1/64)',
    '0.031" (1/32)',
    'stop at the weight, not at the width',
  ]) {
    expect(text).toContain(words);
  }
  expect(text).not.toContain('Limb width at each station');
});

test('a plan that no longer fits says why and gives nothing to cut by', async () => {
  const text = await textOf((await workOrderPdf({ ...bench, plan: planOutdated })).bytes);
  expect(text).toContain('plan again, cut nothing by it');
  expect(text).toContain('measurement 1 to measurement 2');
  expect(text).toContain('Limb width at each station');
  expect(text).not.toContain('0.016"');
});

test('what is lettered and the finish are told; the price on the office copy alone', async () => {
  const office = await textOf((await made(workOrderSample)).bytes);
  const paper = await textOf((await made(bench)).bytes);
  for (const words of ['AMO 66"', 'upper limb, belly, 3 in above', 'two-part satin, 3 coats']) {
    expect(paper).toContain(words);
  }
  expect(office).toContain('$221.03');
  expect(office).toContain('Still to be paid');
  expect(paper).not.toContain('$');
});

test('an open stop finding and a hold stand before everything else', async () => {
  const { bytes } = await workOrderPdf({
    ...bench,
    stopFindings: ['Lower limb: crack at the fade'],
    order: { ...bench.order, hold: 'waiting for the customer' },
  });
  const text = await textOf(bytes);
  const order = [
    'STOP: do not string or draw this bow.',
    'Lower limb: crack at the fade',
    'On hold: waiting for the customer',
    'longbow 66"',
    'Not before the stop finding',
  ].map((words) => text.indexOf(words));
  expect(order).not.toContain(-1);
  expect(order).toEqual(order.toSorted((a, b) => a - b));
});

test('the structure tells headings, tables and pictures', async () => {
  const { bytes } = await made(workOrderSample);
  const roles = await rolesOf(bytes);
  expect(roles).toEqual(
    expect.arrayContaining(['Document', 'H1', 'H2', 'P', 'Figure', 'Table', 'TR', 'TH', 'TD']),
  );
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(await figureTexts(bytes)).toEqual([
    'Barcode and QR code of the order number 26-0147',
    'Weight strip: arrived 52.3, now 47.8, forecast 46.4 (45.8 to 47), stop at 46.2 to 47, target 45 lb',
  ]);
});

test('every row of a table has one cell a column', async () => {
  const { bytes } = await made(workOrderSample);
  const roles = await rolesOf(bytes);
  const rows = roles.join(' ').split('TR ').slice(1);
  const cells = rows.map((row) => row.match(/T[HD]/g)?.length ?? 0);
  expect(new Set(cells)).toEqual(new Set([4, 2, 9, 5, 3]));
  const named = roles.filter((role) => role === 'TH').length;
  expect(named).toBeGreaterThan(40);
});

const longFormats = ['letter', 'a4'] as const;

test.each(longFormats)(
  'very long data stays clean on %s, its codes readable',
  { timeout: patience },
  async (format) => {
    const { bytes, pages } = await workOrderPdf({ ...workOrderLong, format });
    const codes = await expectCleanPages(bytes, quietPt);
    const read = await pagesOf(bytes);
    expect(read.length).toBeGreaterThan(3);
    for (const [index, page] of read.entries()) {
      const texts = (await placedText(page)).map((item) => item.text).join(' ');
      expect(texts).toContain(`page ${index + 1} of ${pages}`);
      expect(texts).toContain('26-0147');
      expectBothCodes(page, codes[index] ?? []);
    }
    const all = await textOf(bytes);
    expect(all).toContain('no. 40');
    expect(all).toContain('Note 40:');
    expect(all).toContain('Stage 20 of a long route');
    expect(all).toContain('46.1# @ 28"');
  },
);

test('short data stays clean too', { timeout: patience }, async () => {
  await expectCleanPages((await made(bench)).bytes, quietPt);
  await expectCleanPages((await made(workOrderEmpty)).bytes, quietPt);
});

test('the same data gives the same bytes, a later print different ones', {
  timeout: patience,
}, async () => {
  const first = await workOrderPdf(workOrderLong);
  const twice = await workOrderPdf(structuredClone(workOrderLong));
  const later = await workOrderPdf({ ...workOrderLong, printedAt: '2026-03-02T09:00:01.000Z' });
  expect(Buffer.from(first.bytes).equals(twice.bytes)).toBe(true);
  expect(Buffer.from(first.bytes).equals(later.bytes)).toBe(false);
});

test('a name the font cannot write is refused by name', async () => {
  const name = '山田 Nora';
  const data = { ...workOrderSample, customer: { name, lines: [], phone: '', email: '' } };
  await expect(workOrderPdf(data)).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: expect.stringMatching(/"山", "田" in the customer name/),
  });
});

test('a usual planned order is three pages at the bench', async () => {
  for (const format of ['letter', 'a4'] as const) {
    const { pages } = await made({ ...bench, format });
    expect(pages, format).toBe(3);
  }
});
