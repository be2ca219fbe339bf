import { expect, test } from 'vitest';
import { editCustomer } from '../../../core/shop/customers/customers.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { setHandover } from '../../../core/shop/orders/reroute.ts';
import { comparePaper } from '../../../core/shop/papers/compare.ts';
import { listPapers } from '../../../core/shop/papers/issued.ts';
import { issuePaper, previewPaper } from '../../../core/shop/papers/papers.ts';
import { customerFields } from '../../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';

const tag = { aboutId: null, kind: 'shipping-tag', format: '4x6', copy: 'parcel' } as const;
const sheet = { aboutId: null, kind: 'work-order', format: 'letter', copy: 'bench' } as const;
const all = { kind: null, orderNumber: '', page: 0 };

const issue = (shop: TestShop, orderId: string, choice: typeof tag | typeof sheet = tag) =>
  issuePaper(shop.owner, { commandId: newCommandId(), orderId, ...choice, action: 'printed' });

async function changeStreet(shop: TestShop, orderId: string) {
  const { customer } = await getOrder(shop.owner, orderId);
  await editCustomer(shop.owner, {
    commandId: newCommandId(),
    id: customer?.id ?? '',
    rowVersion: 1,
    ...customerFields,
    address: { ...customerFields.address, street: '13 Orchard Road' },
  });
}

test('all papers stand newest first, by kind and by part of an order number', async () => {
  const shop = await testShop();
  const [a, b] = [await takeIn(shop), await takeIn(shop)];
  await issue(shop, a.id);
  await issue(shop, b.id, sheet);
  const { papers, more } = await listPapers(shop.owner, all);
  expect(more).toBe(false);
  expect(papers).toMatchObject([
    { orderNumber: b.number, kind: 'work-order', orderId: b.id, outdated: false },
    { orderNumber: a.number, kind: 'shipping-tag', orderId: a.id },
  ]);
  const kinds = await listPapers(shop.owner, { ...all, kind: 'shipping-tag' });
  expect(kinds.papers.map(({ orderId }) => orderId)).toEqual([a.id]);
  const found = await listPapers(shop.owner, { ...all, orderNumber: b.number.slice(-3) });
  expect(found.papers.map(({ orderId }) => orderId)).toEqual([b.id]);
  expect((await listPapers(shop.owner, { ...all, orderNumber: '%' })).papers).toEqual([]);
});

test('a long list is paged, and nothing is shown twice or left out', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  await issue(shop, id);
  const [first] = (await listPapers(shop.owner, all)).papers;
  const row = await shop.owner.read.selectFrom('paper').selectAll().executeTakeFirstOrThrow();
  const { runCommand } = await import('../../../core/storage/commands.ts');
  await runCommand(shop.owner, { id: newCommandId(), name: 'papers.issue' }, async (trx) => {
    for (let i = 0; i < 60; i += 1) {
      const { row_version: _, ...columns } = row;
      await trx.insert('paper', { ...columns, id: shop.owner.newId() });
    }
    return {};
  });
  const pages = await Promise.all([0, 1].map((page) => listPapers(shop.owner, { ...all, page })));
  expect(pages.map(({ papers, more }) => [papers.length, more])).toEqual([
    [50, true],
    [11, false],
  ]);
  const ids = pages.flatMap(({ papers }) => papers.map((paper) => paper.id));
  expect(new Set(ids).size).toBe(61);
  expect(ids).toContain(first?.id);
});

test('a change of what is printed makes the paper differ; any other change only outdates it', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  await issue(shop, id);
  const [paper] = (await listPapers(shop.owner, all)).papers;
  const compare = () => comparePaper(shop.owner, { id: paper?.id ?? '' });
  expect(await compare()).toEqual({ outcome: 'same' });
  const { card } = await getOrder(shop.owner, id);
  await setHandover(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: card.rowVersion,
    handover: 'collected',
  });
  expect((await listPapers(shop.owner, all)).papers[0]?.outdated).toBe(true);
  expect(await compare()).toEqual({ outcome: 'same' });
  await changeStreet(shop, id);
  expect(await compare()).toMatchObject({
    outcome: 'differs',
    sentence: expect.stringContaining('says something else now'),
  });
});

test('papers of a bow that left are not out of date by its leaving, only by a stop finding since', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  await issue(shop, id);
  const outdated = async () => (await listPapers(shop.owner, all)).papers[0]?.outdated;
  const { write } = shop.core.shop();
  const leave = write.updateTable('shop_order').where('id', '=', id);
  await leave.set({ stage: 'shipped', row_version: 9 }).execute();
  expect(await outdated()).toBe(false);
  shop.clock.advance(1000);
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    grade: 'stop',
    place: 'upper limb, back glass',
    note: 'lifted, seen on the photograph the customer sent',
  });
  expect(await outdated()).toBe(true);
});

test('the record of a reprint says whether it is as the one before', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  await issue(shop, id);
  await issue(shop, id);
  await changeStreet(shop, id);
  await issue(shop, id);
  const { history } = await getOrder(shop.owner, id);
  const lines = history.filter(({ kind }) => kind === 'paper').map(({ summary }) => summary);
  expect(lines.filter((line) => line.includes('again'))).toHaveLength(2);
  expect(lines.filter((line) => line.includes('again: as the one of'))).toHaveLength(1);
  expect(lines.filter((line) => line.includes('says something else than'))).toHaveLength(1);
});

test('without an accepted plan the template is refused in words; before and after is made', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const choice = { orderId: id, aboutId: null, format: 'letter' } as const;
  await expect(
    previewPaper(shop.owner, { ...choice, kind: 'marking-template', copy: 'bench' }),
  ).rejects.toMatchObject({
    code: 'CONFLICT',
    message: 'No weight plan is accepted for this order. Accept one, then print.',
  });
  const sheet = await previewPaper(shop.owner, {
    ...choice,
    kind: 'before-after',
    copy: 'customer',
  });
  expect(sheet.name).toMatch(/before and after\.pdf$/);
});
