import { expect, test } from 'vitest';
import { returnTagPdf } from '../../../core/papers/return-tag.ts';
import { tagModule } from '../../../core/papers/tag-parts.ts';
import { expectCleanPages } from './layout-checks.ts';
import { entries, figureTexts, openPdf, pagesOf, rolesOf, textOf } from './read-back.ts';
import {
  returnTagLong,
  returnTagSample,
  returnTagShortest,
  returnTagUnsafe,
} from './return-tag-samples.ts';

const samples = { returnTagShortest, returnTagSample, returnTagUnsafe, returnTagLong };
const sizes = { '4x6': [288, 432], a6: [297.64, 419.53] } as const;
const cases = Object.entries(samples).flatMap(([name, data]) =>
  (['4x6', 'a6'] as const).map((format) => [name, format, { ...data, format }] as const),
);
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(cases)(
  '%s on %s: exact size, clean, whole, its number in both codes on the first label',
  async (_, format, data) => {
    const { bytes, fileName } = await returnTagPdf(data);
    expect(fileName).toBe('26-0147 return tag.pdf');
    const read = await expectCleanPages(bytes, 10 * tagModule);
    const pages = await pagesOf(bytes);
    for (const [index, page] of pages.entries()) {
      const { width, height } = page.getViewport({ scale: 1 });
      expect([width, height].map((side) => Number(side.toFixed(2)))).toEqual([...sizes[format]]);
      const codes = (read[index] ?? []).map((code) => `${code.format} ${code.text}`).sort();
      const first = ['Code128 26-0147', 'QRCode 26-0147'];
      expect(codes).toEqual(index === 0 ? first : first.slice(0, 1));
    }
    const text = bare(await textOf(bytes));
    const said = [data.bowLine, ...data.why, ...data.findings.map(({ words }) => words)];
    for (const words of [...said, ...data.mind]) expect(text).toContain(bare(words));
  },
  60_000,
);

test('an unsafe bow is forbidden on every label; a sound one on none', async () => {
  const { bytes, pages } = await returnTagPdf(returnTagLong);
  expect(pages).toBeGreaterThan(1);
  const text = await textOf(bytes);
  expect(text.match(/DO NOT STRING\s+OR DRAW/g)).toHaveLength(pages);
  expect(text).toContain('Whether the customer was told is not on record.');
  const sound = await textOf((await returnTagPdf(returnTagSample)).bytes);
  expect(sound).not.toContain('DO NOT STRING');
  expect(sound).toContain('The customer was told on 2026-03-01.');
});

test('it prints at true size, and its structure names sign and codes', async () => {
  const { bytes } = await returnTagPdf(returnTagUnsafe);
  const document = await openPdf(bytes);
  expect(entries(await document.getViewerPreferences())).toMatchObject({ PrintScaling: 'None' });
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(await figureTexts(bytes)).toEqual([
    'QR code of the order number 26-0147',
    'Barcode of the order number 26-0147',
    'Stop sign',
  ]);
});
