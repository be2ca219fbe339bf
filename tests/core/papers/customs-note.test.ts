import { expect, test } from 'vitest';
import { customsNotePdf } from '../../../core/papers/customs-note.ts';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { customsLong, customsSample, customsShortest } from './customs-note-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { rolesOf, textOf } from './read-back.ts';

const samples = { customsShortest, customsSample, customsLong };
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: clean pages, every answer whole, the number on every page',
  async (_, __, data) => {
    const { bytes, fileName } = await customsNotePdf(data);
    expect(fileName).toBe('26-0147 customs note.pdf');
    for (const codes of await expectCleanPages(bytes, 10 * plainModule)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = bare(await textOf(bytes));
    const rows = [...data.bow, ...data.work, ...data.values];
    const said = [...data.statement, ...rows.flat(), ...data.to.lines];
    if (data.copy === 'office') said.push(...data.cautions);
    // Longer ones may be cut where a page ends.
    for (const words of said.filter(({ length }) => length < 400)) {
      expect(text).toContain(bare(words));
    }
    const many = text.split('areceiptofthemaker').length - 1;
    expect(many).toBeGreaterThanOrEqual(data.values === customsLong.values ? 19 : 0);
  },
  60_000,
);

test('what is not on record is a blank with its name, not a word that reads as an answer', async () => {
  const text = await textOf((await customsNotePdf(customsSample)).bytes);
  expect(text).toContain(
    'Not on record, to be filled in by hand: Country it was made in; Tariff number.',
  );
  const full = {
    ...customsSample,
    bow: customsSample.bow.map(([asked, answer]): [string, string] => [asked, answer || 'known']),
  };
  expect(await textOf((await customsNotePdf(full)).bytes)).not.toContain('Not on record');
});

test('a usual note is one page, its answers in tables whose rows are named', async () => {
  const { bytes, pages } = await customsNotePdf(customsSample);
  expect(pages).toBe(1);
  expect(await textOf(bytes)).not.toContain('Before it is posted');
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'Table')).toHaveLength(5);
  expect(roles.filter((role) => role === 'TH')).toHaveLength(2 + 13 + 3);
});

test('with every answer still a blank an A4 note is one page, its signature too', async () => {
  const { pages } = await customsNotePdf({ ...customsShortest, format: 'a4' });
  expect(pages).toBe(1);
});
