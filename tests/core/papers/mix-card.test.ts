import { expect, test } from 'vitest';
import { mixCardPdf } from '../../../core/papers/mix-card.ts';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { expectCleanPages } from './layout-checks.ts';
import { mixCardLong, mixCardSample, mixCardShortest } from './mix-card-samples.ts';
import { rolesOf, textOf } from './read-back.ts';

const samples = { mixCardShortest, mixCardSample, mixCardLong };
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: clean pages, every word whole, the batch in bars on every page',
  async (_, __, data) => {
    const { bytes, fileName } = await mixCardPdf(data);
    expect(fileName).toBe(`${data.number} mix card.pdf`);
    for (const codes of await expectCleanPages(bytes, 10 * plainModule)) {
      expect(codes.map(({ text }) => text)).toEqual([data.number]);
    }
    const text = bare(await textOf(bytes));
    const said = [
      data.finish,
      data.discarded || data.usable,
      ...data.parts.flatMap((part) => Object.values(part)),
      ...data.facts.flat(),
      ...data.coats.flat(),
      ...data.cautions,
    ];
    // Longer ones may be cut where a page ends.
    for (const words of said.filter(({ length }) => length < 400)) {
      expect(text).toContain(bare(words));
    }
    const stirred = text.split('Stirredfiveminutes').length - 1;
    expect(stirred).toBeGreaterThanOrEqual(data.facts === mixCardLong.facts ? 15 : 0);
  },
  60_000,
);

test('a discarded batch says so in place of its times', async () => {
  const text = await textOf((await mixCardPdf(mixCardLong)).bytes);
  expect(text).toContain('DISCARDED 2026-03-02 12:20');
  expect(text).not.toContain('Use from');
});

test('a usual card is one page with named rows and lines to write on', async () => {
  const { bytes, pages } = await mixCardPdf(mixCardSample);
  expect(pages).toBe(1);
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'Table')).toHaveLength(3);
  // Seven heads and three parts, five facts, four heads over the coats.
  expect(roles.filter((role) => role === 'TH')).toHaveLength(7 + 3 + 5 + 4);
  expect(await textOf((await mixCardPdf(mixCardShortest)).bytes)).toContain('not known');
});
