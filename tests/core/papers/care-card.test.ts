import { expect, test } from 'vitest';
import { careCardPdf } from '../../../core/papers/care-card.ts';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { careLong, careSample, careShortest } from './care-card-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { figureTexts, pagesOf, rolesOf, textOf } from './read-back.ts';

const samples = { careShortest, careSample, careLong };
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: clean pages, all of it said, the number on every page',
  async (_, __, data) => {
    const { bytes, fileName } = await careCardPdf(data);
    expect(fileName).toBe('26-0147 care card.pdf');
    for (const codes of await expectCleanPages(bytes, 10 * plainModule)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = bare(await textOf(bytes));
    const said = [
      ...[data.weights, data.string, data.finish].flat(2),
      ...data.arrows,
      ...data.use,
      ...data.watch,
      ...data.terms.split('\n'),
    ];
    for (const words of said) expect(text).toContain(bare(words));
  },
  60_000,
);

test.each(['letter', 'a4'] as const)('the usual card is one %s page', async (format) => {
  const { bytes } = await careCardPdf({ ...careSample, format });
  expect(await pagesOf(bytes)).toHaveLength(1);
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
  expect(roles.filter((role) => role === 'H2')).toHaveLength(6);
  expect(roles.filter((role) => role === 'Table')).toHaveLength(2);
  expect(await figureTexts(bytes)).toEqual(['Barcode of the order number 26-0147']);
});

test('without terms of the shop it promises nothing', async () => {
  const text = await textOf((await careCardPdf({ ...careSample, terms: '' })).bytes);
  expect(text).not.toMatch(/warrant|guarantee|promise|void|Our terms/i);
});
