import { describe, expect, test } from 'vitest';
import { lotLabelPdf } from '../../../core/papers/lot-label.ts';
import { shelfLabelPdf } from '../../../core/papers/shelf-label.ts';
import { decode, entries, openPdf, pagesOf, placedText, untaggedDrawing } from './read-back.ts';
import { lotSample, shelfLong, shelfSample, shelfShortest } from './stock-label-samples.ts';

const mm = 72 / 25.4;
const samples = [
  ['shelf', 'shelf label', shelfLabelPdf, shelfSample],
  ['shortest shelf', 'shelf label', shelfLabelPdf, shelfShortest],
  ['longest shelf', 'shelf label', shelfLabelPdf, shelfLong],
  ['lot', 'lot label', lotLabelPdf, lotSample],
] as const;

describe.each(samples)('the %s label', (_, what, draw, data) => {
  test('is one page of label stock, at true size, named after its barcode', async () => {
    const { bytes, pages, fileName } = await draw(data);
    expect(pages).toBe(1);
    expect(fileName).toBe(`${data.barcode} ${what}.pdf`);
    const [page] = await pagesOf(bytes);
    expect(page?.getViewport({ scale: 1 })).toMatchObject({ width: 162, height: 90 });
    const pdf = await openPdf(bytes);
    expect(entries(await pdf.getViewerPreferences())).toMatchObject({ PrintScaling: 'None' });
  });

  test('has its bars and its QR code in whole dots, read back as the barcode', async () => {
    const [page] = await pagesOf((await draw(data)).bytes);
    if (page === undefined) throw new Error('no page');
    // As the two usual label printers draw it.
    for (const dpi of [203, 300]) {
      const codes = await decode(page, dpi);
      expect(codes.map(({ format, text }) => [format, text]).sort()).toEqual([
        ['Code128', data.barcode],
        ['QRCode', data.barcode],
      ]);
    }
    const codes = await decode(page, 600);
    const quiet = { Code128: 10 * 0.25 * mm, QRCode: 4 * 0.5 * mm - 0.2 };
    for (const { box, format } of codes) {
      const light = quiet[format as keyof typeof quiet];
      expect(box.left, format).toBeGreaterThanOrEqual(light);
      expect(162 - box.right, format).toBeGreaterThanOrEqual(light);
    }
  });

  test('says everything in letters that do not run into each other or off the label', async () => {
    const [page] = await pagesOf((await draw(data)).bytes);
    if (page === undefined) throw new Error('no page');
    expect(await untaggedDrawing(page)).toBe(0);
    const texts = await placedText(page);
    // The font writes the micro sign as the Greek letter.
    const read = texts.map(({ text }) => text.replace('μ', 'µ')).join(' ');
    for (const part of [data.name, ...data.facts, data.barcode]) expect(read).toContain(part);
    const codes = await decode(page, 600);
    for (const [index, a] of texts.entries()) {
      expect(a.left).toBeGreaterThan(4);
      expect(a.right).toBeLessThan(158);
      expect(a.bottom).toBeLessThan(87);
      const others = [
        ...texts.slice(index + 1),
        ...codes.map(({ box }) => ({ ...box, text: 'code' })),
      ];
      const over = others.filter(
        (b) =>
          a.left < b.right - 0.3 &&
          b.left < a.right - 0.3 &&
          a.top < b.bottom - 0.3 &&
          b.top < a.bottom - 0.3,
      );
      expect(over.map(({ text }) => `${a.text} / ${text}`)).toEqual([]);
    }
  });
});

test('a barcode too long for bars is a QR code and letters', async () => {
  const barcode = 'ITEM-4471-B-0098221-REV-C-2026-XX';
  const [page] = await pagesOf((await shelfLabelPdf({ ...shelfSample, barcode })).bytes);
  if (page === undefined) throw new Error('no page');
  const codes = await decode(page, 300);
  expect(codes.map(({ format, text }) => [format, text])).toEqual([['QRCode', barcode]]);
  expect((await placedText(page)).map(({ text }) => text)).toContain(barcode);
});

test('text that fits in no size is refused by name', async () => {
  const name = 'Long words of a name '.repeat(20);
  await expect(shelfLabelPdf({ ...shelfSample, name })).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: 'The name is too long for the label: shorten it.',
  });
});
