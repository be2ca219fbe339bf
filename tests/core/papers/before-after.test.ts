import { expect, test } from 'vitest';
import { beforeAfterPdf } from '../../../core/papers/before-after.ts';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { beforeAfterLong, beforeAfterSample, beforeAfterShortest } from './before-after-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { figureTexts, pagesOf, rolesOf, textOf } from './read-back.ts';

const samples = { beforeAfterShortest, beforeAfterSample, beforeAfterLong };
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: clean pages, all of it said, the number on every page',
  async (_, __, data) => {
    const { bytes, fileName } = await beforeAfterPdf(data);
    expect(fileName).toBe('26-0147 before and after.pdf');
    for (const codes of await expectCleanPages(bytes, 10 * plainModule)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = bare(await textOf(bytes));
    const said = [
      ...data.weights.flatMap(({ draw, before, after }) => [draw, before, after]),
      ...data.removed.flatMap(({ limb, cells }) => [limb, ...cells]),
      ...data.removedWords,
      ...data.facts.flatMap(({ label, before, after }) => [label, before, after]),
      ...data.finished.flat(),
      ...data.photographs.map(({ words }) => words),
      data.acknowledged ?? '',
    ];
    for (const words of said) expect(text).toContain(bare(words));
  },
  60_000,
);

test('the usual case is one page with both pictures and the strip told in words', async () => {
  const { bytes } = await beforeAfterPdf(beforeAfterSample);
  expect(await pagesOf(bytes)).toHaveLength(1);
  const figures = await figureTexts(bytes);
  expect(figures).toContain('Photograph of the bow, before: 2026-03-01, back of the upper limb');
  expect(figures.some((text) => text.startsWith('Weight strip at 28" AMO: '))).toBe(true);
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(roles.filter((role) => role === 'Table')).toHaveLength(3);
});

test('without an acknowledgement it says nothing of a warranty, and it never promises', async () => {
  const text = await textOf(
    (await beforeAfterPdf({ ...beforeAfterSample, acknowledged: null })).bytes,
  );
  expect(text).not.toMatch(/warrant|guarantee|promise|void/i);
});
