import { expect, test } from 'vitest';
import { inscriptionProofPdf } from '../../../core/papers/inscription-proof.ts';
import { emPerCapital } from '../../../shared/inscription.ts';
import { proofLong, proofSample, proofShortest } from './inscription-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { darkRuns, decode, pagesOf, placedText, textOf } from './read-back.ts';

const formats = ['letter', 'a4'] as const;
const barQuietPt = (10 * 0.33 * 72) / 25.4;

test.each(
  formats.flatMap((format) => [
    ['shortest', { ...proofShortest, format }] as const,
    ['typical', { ...proofSample, format }] as const,
    ['longest', { ...proofLong, format }] as const,
  ]),
)('the %s proof is clean, whole and says its lines to the letter', async (_, data) => {
  const { bytes } = await inscriptionProofPdf(data);
  await expectCleanPages(bytes, barQuietPt);
  const pages = await pagesOf(bytes);
  const pieces = (await Promise.all(pages.map(placedText))).flat().map(({ text }) => text);
  let from = pieces.indexOf('Exactly these lines, at true size');
  for (const line of data.lines) {
    const at = pieces.indexOf(line, from + 1);
    expect(at, line).toBeGreaterThan(from);
    from = at;
  }
  const text = pieces.join(' ');
  for (const [name] of data.facts) expect(text).toContain(name);
  expect(text).toContain('Approved, word for word, as it stands above.');
  expect(text).toContain('Declined. Please change it as follows:');
  expect(text).toContain('no reply is no approval');
  const [first] = pages;
  if (first === undefined) throw new Error('no page');
  expect((await decode(first)).map((code) => code.text)).toEqual(['26-0147']);
});

test('letters, line steps, limb and check bar measure what they say', async () => {
  const { bytes } = await inscriptionProofPdf(proofSample);
  const [page] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  const { items } = await page.getTextContent();
  const lines = items.flatMap((item) =>
    'str' in item && proofSample.lines.includes(item.str) && item.height > 12
      ? [item.transform as number[]]
      : [],
  );
  expect(lines).toHaveLength(4);
  for (const [, , , size] of lines) {
    // 3/16 in capitals are 13.5 pt high.
    expect((size ?? 0) / emPerCapital).toBeCloseTo(13.5, 3);
  }
  const bases = lines.map((transform) => transform[5] ?? 0);
  for (const [index, base] of bases.slice(1).entries()) {
    expect((bases[index] ?? 0) - base).toBeCloseTo(13.5 * 1.8, 2);
  }
  const note = (await placedText(page)).find(({ text }) => text.startsWith('This bar is 4 inches'));
  const bar = await darkRuns(page, (note?.top ?? 0) - 9, 300);
  const longest = Math.max(...bar.map(({ from, to }) => to - from));
  expect(longest).toBeGreaterThan(287.5);
  expect(longest).toBeLessThan(288.5);
});

test('the capital on the drawn page is as high as the letter height says', async () => {
  const { bytes } = await inscriptionProofPdf({
    ...proofShortest,
    lines: ['HHHH'],
    letterHeightIn: 0.5,
  });
  const [page] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  const line = (await placedText(page)).find(({ text }) => text === 'HHHH');
  if (line === undefined) throw new Error('no line');
  const dark = async (y: number) =>
    (await darkRuns(page, y, 300)).some(({ from }) => from >= line.left && from < line.right);
  const { items } = await page.getTextContent();
  const item = items.find((each) => 'str' in each && each.str === 'HHHH');
  const base =
    page.getViewport({ scale: 1 }).height -
    ((item !== undefined && 'transform' in item ? (item.transform as number[])[5] : 0) ?? 0);
  // Half an inch is 36 points: ink just inside both ends, none just outside.
  expect(await dark(base - 1)).toBe(true);
  expect(await dark(base - 35)).toBe(true);
  expect(await dark(base + 1)).toBe(false);
  expect(await dark(base - 37)).toBe(false);
});

test('a line longer than the paper is refused by name, not shrunk', async () => {
  const line = 'Reworked by the longest name a shop could give itself';
  await expect(
    inscriptionProofPdf({ ...proofSample, lines: [line], letterHeightIn: 0.5 }),
  ).rejects.toMatchObject({ code: 'UNPRINTABLE', message: expect.stringContaining(line) });
});

test('a measured limb is told as such, and an unmeasured one too', async () => {
  expect(await textOf((await inscriptionProofPdf(proofSample)).bytes)).toContain(
    'edges of the upper limb',
  );
  expect(await textOf((await inscriptionProofPdf(proofShortest)).bytes)).toContain(
    'The limb was not measured.',
  );
});

test('the same data gives the same bytes', async () => {
  const [one, two] = await Promise.all([
    inscriptionProofPdf(proofSample),
    inscriptionProofPdf(proofSample),
  ]);
  expect(Buffer.from(one.bytes).equals(Buffer.from(two.bytes))).toBe(true);
});
