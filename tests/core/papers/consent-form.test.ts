import { expect, test } from 'vitest';
import { consentFormPdf } from '../../../core/papers/consent-form.ts';
import { consentFormData } from '../../../core/shop/papers/consent-form-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import {
  consentLong,
  consentShortest,
  consentSigned,
  consentWaiting,
} from './consent-form-samples.ts';
import { expectCleanPages } from './layout-checks.ts';
import { figureTexts, rolesOf, textOf } from './read-back.ts';

const samples = { consentShortest, consentWaiting, consentSigned, consentLong };
/** Ten modules of 0.33 mm. */
const quietPt = (10 * 0.33 * 72) / 25.4;
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: every word of the text, its mark and the number on every page',
  async (_, __, data) => {
    const { bytes, pages } = await consentFormPdf(data);
    for (const codes of await expectCleanPages(bytes, quietPt)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = bare(await textOf(bytes));
    const said = [
      ...data.text.split('\n'),
      data.title,
      data.customer,
      ...data.answers.flatMap(({ facts }) => facts.flat()),
      ...data.notes,
    ];
    const heads = `${bare(data.title)},continued|Text${bare(data.textMark)}|26-0147page\\d+of${pages}|26-0147`;
    const flowing = text.replaceAll(new RegExp(heads, 'g'), '');
    for (const words of said) {
      expect(flowing).toContain(bare(words).replaceAll(new RegExp(heads, 'g'), ''));
    }
    expect(text.split(`Text${bare(data.textMark)}`).length - 1).toBe(pages);
  },
);

test('a waiting one offers both answers and a line to sign; an answered one shows how it was', async () => {
  const waiting = await textOf((await consentFormPdf(consentWaiting)).bytes);
  for (const words of ['I agree to the text above.', 'I do not agree.', 'Signature', 'Date']) {
    expect(waiting).toContain(words);
  }
  const { bytes } = await consentFormPdf(consentSigned);
  expect(await textOf(bytes)).not.toContain('I do not agree.');
  expect(await figureTexts(bytes)).toContain('Signature drawn on the screen');
  expect((await rolesOf(bytes)).filter((role) => role === 'H1')).toHaveLength(1);
});

test('it prints what waits, or the one named, and refuses where there is nothing', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  const make = async (aboutId: string | null) =>
    consentFormData(await flow.order(), await getShop(shop.owner), aboutId, {
      format: 'letter',
      printedAt: '2026-03-02T09:00:00.000Z',
    });
  await expect(make(null)).rejects.toMatchObject({ code: 'CONFLICT' });
  const asked = await flow.grant('price-and-scope');
  await expect(make(null)).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(make('elsewhere')).rejects.toMatchObject({ code: 'CONFLICT' });
  const data = await make(asked.id);
  expect(data.state).toBe('Now: granted.');
  expect(data.textMark).toBe(asked.textSha256.slice(0, 16).replaceAll(/(.{4})(?=.)/g, '$1 '));
  await flow.ask('alteration-acknowledgement');
  expect((await make(null)).title).toBe('Alteration acknowledgement');
});
