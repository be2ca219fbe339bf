import { expect, test } from 'vitest';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { editCustomer } from '../../../core/shop/customers/customers.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { setHandover } from '../../../core/shop/orders/reroute.ts';
import { issuePaper, previewPaper } from '../../../core/shop/papers/papers.ts';
import { bowFields, customerFields } from '../../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { decode, pagesOf, textOf } from '../papers/read-back.ts';

async function withOrder() {
  const shop = await testShop();
  const { id, number } = await takeIn(shop);
  return { shop, id, number };
}

test('a printed tag is recorded, a preview is not, and a later change outdates it', async () => {
  const { shop, id, number } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: '4x6',
    copy: 'parcel',
  } as const;
  await previewPaper(shop.owner, choice);
  expect((await getOrder(shop.owner, id)).papers).toEqual([]);
  const file = await issuePaper(shop.owner, {
    commandId: newCommandId(),
    ...choice,
    action: 'printed',
  });
  expect(file.name).toBe(`${number} shipping tag.pdf`);
  const { papers, card } = await getOrder(shop.owner, id);
  expect(papers).toMatchObject([{ kind: 'shipping-tag', action: 'printed', outdated: false }]);
  await setHandover(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: card.rowVersion,
    handover: 'collected',
  });
  expect((await getOrder(shop.owner, id)).papers).toMatchObject([{ outdated: true }]);
});

test('the tag carries the order number as a barcode and the address as text', async () => {
  const { shop, id, number } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: 'a6',
    copy: 'parcel',
  } as const;
  const bytes = new Uint8Array(await (await previewPaper(shop.owner, choice)).arrayBuffer());
  const [page] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  const codes = await decode(page);
  expect(codes.map((code) => code.text)).toEqual([number, number]);
  expect(await textOf(bytes)).toContain('12 Orchard Road');
});

test('a size or copy that a paper does not have is refused by name', async () => {
  const { shop, id } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'work-order',
    format: '4x6',
    copy: 'bench',
  } as const;
  await expect(previewPaper(shop.owner, choice)).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { format: 'letter or a4' },
  });
});

test('a name that the font cannot write is refused by name, and nothing is recorded', async () => {
  const { shop, id } = await withOrder();
  const { customer } = await getOrder(shop.owner, id);
  await editCustomer(shop.owner, {
    commandId: newCommandId(),
    id: customer?.id ?? '',
    rowVersion: 1,
    ...customerFields,
    name: '弓田 Nora',
  });
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: '4x6',
    copy: 'parcel',
  } as const;
  await expect(
    issuePaper(shop.owner, { commandId: newCommandId(), ...choice, action: 'printed' }),
  ).rejects.toMatchObject({ code: 'UNPRINTABLE', message: expect.stringContaining('弓') });
  expect((await getOrder(shop.owner, id)).papers).toEqual([]);
});

test('a corrected address or bow outdates the papers that carry it', async () => {
  const { shop, id } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: '4x6',
    copy: 'parcel',
  } as const;
  const issue = () =>
    issuePaper(shop.owner, { commandId: newCommandId(), ...choice, action: 'printed' });
  await issue();
  const { customer, bow } = await getOrder(shop.owner, id);
  const address = { ...customerFields.address, street: '13 Orchard Road' };
  const edit = { commandId: newCommandId(), rowVersion: 1 };
  await editCustomer(shop.owner, { ...edit, id: customer?.id ?? '', ...customerFields, address });
  await issue();
  expect((await getOrder(shop.owner, id)).papers.map((paper) => paper.outdated)).toEqual([
    false,
    true,
  ]);
  const again = { commandId: newCommandId(), rowVersion: 1 };
  await editBow(shop.owner, { ...again, id: bow?.id ?? '', ...bowFields, maxSafeDrawIn: 29 });
  expect((await getOrder(shop.owner, id)).papers.map((paper) => paper.outdated)).toEqual([
    true,
    true,
  ]);
});

test('a repeat of a paper whose answer was lost is recorded once and gives a paper again', async () => {
  const { shop, id } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: '4x6',
    copy: 'parcel',
  } as const;
  const input = { commandId: newCommandId(), ...choice, action: 'printed' } as const;
  const first = await issuePaper(shop.owner, input);
  const second = await issuePaper(shop.owner, input);
  expect([second.name, second.type]).toEqual([first.name, first.type]);
  expect((await getOrder(shop.owner, id)).papers).toHaveLength(1);
});

test('a stop finding outdates a tag that was printed before it', async () => {
  const { shop, id } = await withOrder();
  const choice = {
    orderId: id,
    aboutId: null,
    kind: 'shipping-tag',
    format: '4x6',
    copy: 'parcel',
  } as const;
  await issuePaper(shop.owner, { commandId: newCommandId(), ...choice, action: 'printed' });
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    grade: 'stop',
    place: 'lower tip',
    note: 'overlay lifted',
  });
  expect((await getOrder(shop.owner, id)).papers).toMatchObject([{ outdated: true }]);
});
