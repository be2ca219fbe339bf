import { expect, test } from 'vitest';
import { bowLabelPdf } from '../../../core/papers/bow-label.ts';
import { emPerCapital } from '../../../shared/inscription.ts';
import { labelLong, labelSample } from './inscription-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { darkRuns, entries, openPdf, pagesOf, placedText } from './read-back.ts';

const barQuietPt = (10 * 0.33 * 72) / 25.4;

test.each(
  (['letter', 'a4'] as const).flatMap((format) => [
    ['shortest', { ...labelSample, format, lines: ['1'], makerMark: '' }] as const,
    ['typical', { ...labelSample, format }] as const,
    ['longest', { ...labelLong, format }] as const,
  ]),
)('the %s guide shows every line in full and in outline', async (_, data) => {
  const { bytes } = await bowLabelPdf(data);
  await expectCleanPages(bytes, barQuietPt);
  const pieces = (await Promise.all((await pagesOf(bytes)).map(placedText))).flat();
  for (const line of new Set(data.lines)) {
    const times = data.lines.filter((each) => each === line).length;
    expect(pieces.filter(({ text }) => text === line).length, line).toBeGreaterThanOrEqual(
      2 * times,
    );
  }
  expect(pieces.map(({ text }) => text).join(' ')).toContain(data.approval);
});

test('the label is the lines and nothing else, at the size of its stock', async () => {
  const { bytes } = await bowLabelPdf({ ...labelSample, format: 'label' });
  const [page, ...more] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  expect(more).toEqual([]);
  expect(page.getViewport({ scale: 1 })).toMatchObject({ width: 162, height: 90 });
  const { items } = await page.getTextContent();
  const lines = items.flatMap((item) => ('str' in item && item.str !== '' ? [item] : []));
  expect(lines.map(({ str }) => str)).toEqual(labelSample.lines);
  for (const { transform } of lines) {
    expect(((transform as number[])[3] ?? 0) / emPerCapital).toBeCloseTo(13.5, 3);
  }
  const texts = await placedText(page);
  for (const text of texts) {
    expect(text.left).toBeGreaterThan(4);
    expect(text.right).toBeLessThan(158);
  }
});

test('fractions, Greek and Cyrillic letters are lettered as they stand', async () => {
  const lines = ['41½# @ 26¾"', 'Νίκη 7⅜"', 'Журавль'];
  const { bytes } = await bowLabelPdf({
    ...labelSample,
    format: 'label',
    lines,
    letterHeightIn: 0.125,
  });
  const texts = (await Promise.all((await pagesOf(bytes)).map(placedText))).flat();
  expect(texts.map(({ text }) => text)).toEqual(lines);
});

test.each([
  ['too long a line', ['Reworked by Fernhill Bow Works'], 'Reworked by Fernhill'],
  ['too many lines', ['1', '2', '3', '4', '5', '6'], '6 lines'],
  ['a sign the papers cannot write', ['弓 45# @ 28"'], '弓'],
])('%s is refused by name', async (_, lines, named) => {
  await expect(bowLabelPdf({ ...labelSample, format: 'label', lines })).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: expect.stringContaining(named),
  });
});

test('it prints at true size, and its check bar is four inches', async () => {
  for (const format of ['letter', 'a4', 'label'] as const) {
    const pdf = await openPdf((await bowLabelPdf({ ...labelSample, format })).bytes);
    expect(entries(await pdf.getViewerPreferences())).toMatchObject({ PrintScaling: 'None' });
  }
  const [page] = await pagesOf((await bowLabelPdf(labelSample)).bytes);
  if (page === undefined) throw new Error('no page');
  const note = (await placedText(page)).find(({ text }) => text.startsWith('This bar is 4 inches'));
  const runs = await darkRuns(page, (note?.top ?? 0) - 9, 300);
  expect(Math.max(...runs.map(({ from, to }) => to - from))).toBeCloseTo(288, 0);
});
