import { expect, test } from 'vitest';
import { packingListPdf } from '../../../core/papers/packing-list.ts';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { packingListData } from '../../../core/shop/papers/packing-list-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { expectCleanPages } from './layout-checks.ts';
import { packingLong, packingSample, packingShortest } from './packing-list-samples.ts';
import { rolesOf, textOf } from './read-back.ts';

const samples = { packingShortest, packingSample, packingLong };
const bare = (text: string) => text.replaceAll(/\s+/g, '');

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: clean pages, every thing named, the number on every page',
  async (_, __, data) => {
    const { bytes, fileName } = await packingListPdf(data);
    expect(fileName).toBe('26-0147 packing list.pdf');
    for (const codes of await expectCleanPages(bytes, 10 * plainModule)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = bare(await textOf(bytes));
    const said = [...data.items.flatMap(({ what, about }) => [what, about]), ...data.cautions];
    for (const words of said) expect(text).toContain(bare(words));
  },
  60_000,
);

test('things to tick and the signature are tables of one page, each thing naming its row', async () => {
  const { bytes, pages } = await packingListPdf(packingSample);
  expect(pages).toBe(1);
  const roles = await rolesOf(bytes);
  expect(roles.filter((role) => role === 'Table')).toHaveLength(2);
  expect(roles.filter((role) => role === 'TH')).toHaveLength(4 + packingSample.items.length + 2);
});

test('everything that came along is on the list, and a stop finding forbids stringing', async () => {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  await flow.unpack({}, ['string', 'bow  sock']);
  const list = async () =>
    packingListData(await flow.order(), await getShop(shop.owner), {
      format: 'a4',
      copy: 'parcel',
      printedAt: '2026-03-02T09:00:00.000Z',
    });
  const before = await list();
  expect(before.items.map(({ what }) => what).slice(1)).toEqual(['string', 'bow sock']);
  expect(before.items[1]?.about).toBe('came with the bow');
  await flow.tickAllBack();
  expect((await list()).items[1]?.about).toMatch(/^laid back \d{4}-\d\d-\d\d$/);
  expect((await list()).cautions[0]).not.toContain('DO NOT STRING');
  const stop = { grade: 'stop', place: 'upper limb', note: 'glass lifting' } as const;
  await addFinding(shop.owner, { commandId: newCommandId(), orderId: flow.orderId, ...stop });
  expect((await list()).cautions[0]).toContain('DO NOT STRING OR DRAW');
});
