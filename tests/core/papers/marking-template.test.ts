import { expect, test } from 'vitest';
import { markingModule, markingTemplatePdf } from '../../../core/papers/marking-template.ts';
import type { MarkingTemplateData } from '../../../core/papers/marking-template-data.ts';
import { expectCleanPages } from './layout-checks.ts';
import { markingLimb, markingLong, markingSample, markingShortest } from './marking-samples.ts';
import {
  decode,
  entries,
  figureTexts,
  once,
  openPdf,
  pagesOf,
  placedText,
  rolesOf,
  textOf,
} from './read-back.ts';
import {
  expectTemplate,
  isLevel,
  measure,
  near,
  uprightBar,
  windowAdvance,
} from './template-measure.ts';

/** Each sample is drawn and opened once, for all that is read of it. */
const made = once(async (data: MarkingTemplateData) => {
  const { bytes } = await markingTemplatePdf(data);
  return { bytes, pages: await pagesOf(bytes) };
});

const formats = ['letter', 'a4', 'long'] as const;
const samples = { markingShortest, markingSample, markingLong };
const cases = Object.entries(samples).flatMap(([name, data]) =>
  formats.map((format) => [name, format, { ...data, format }] as const),
);

test.each(cases)(
  '%s, %s: every edge at every station is where the plan puts it',
  async (_, __, data) => {
    const { pages } = await made(data);
    await expectTemplate(pages, {
      format: data.format,
      limbs: data.limbs.map(({ lengthIn, outline, stations }) => ({
        lengthIn,
        stations: outline.filter(
          ({ fromFadeIn }) =>
            fromFadeIn > 0 && stations.some((each) => each.fromFadeIn === fromFadeIn),
        ),
      })),
    });
  },
);

test.each(cases)('%s, %s: both check bars are 288 points on every sheet', async (_, __, data) => {
  for (const page of (await made(data)).pages) {
    const { uprightPt, levelPt } = await uprightBar(page);
    expect(uprightPt).toBeCloseTo(288, 4);
    expect(levelPt).toBeCloseTo(288, 4);
  }
});

test.each(cases)(
  '%s, %s: nothing runs into anything; the number is on every sheet',
  async (_, format, data) => {
    const { bytes, pages } = await made(data);
    const read =
      format === 'long'
        ? await Promise.all(pages.map((page) => decode(page, 150)))
        : await expectCleanPages(bytes, 10 * markingModule);
    expect(read.flat().map(({ text }) => text)).toEqual(pages.map(() => '26-0147'));
  },
  90_000,
);

test('two sheets show the same half inch around a join, with the same letter', async () => {
  const { bytes } = await markingTemplatePdf(markingSample);
  const pages = (await pagesOf(bytes)).slice(0, 4);
  const advance = windowAdvance(markingSample.format, pages.length, 24.5);
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
  for (const [i, page] of pages.entries()) {
    const { width, height } = page.getViewport({ scale: 1 });
    expect(width).toBe(612);
    expect(height).toBeGreaterThan((markingLong.limbs[i]?.lengthIn ?? 0) * 72);
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
