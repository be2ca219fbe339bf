import { expect, test } from 'vitest';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { editCustomer } from '../../../core/shop/customers/customers.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { sendHome } from '../../../core/shop/orders/going-home.ts';
import { editOrder } from '../../../core/shop/orders/orders.ts';
import { setHandover } from '../../../core/shop/orders/reroute.ts';
import { customsNoteData } from '../../../core/shop/papers/customs-note-data.ts';
import { issuePaper, previewPaper } from '../../../core/shop/papers/papers.ts';
import { returnTagData } from '../../../core/shop/papers/return-tag-data.ts';
import { addPriceLine } from '../../../core/shop/prices/lines.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import type { PriceLineFields } from '../../../shared/contract/prices.ts';
import type { GoingHome } from '../../../shared/stages.ts';
import { biteOnRecord } from '../../support/bite-on-record.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { decode, pagesOf, textOf } from '../papers/read-back.ts';

const printedAt = '2026-03-02T09:00:00.000Z';
const tag = { aboutId: null, kind: 'return-tag', format: '4x6', copy: 'parcel' } as const;
const note = { aboutId: null, kind: 'customs-note', format: 'letter', copy: 'parcel' } as const;

async function arrived() {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  await flow.unpack();
  await flow.move('arrived', { override: { reason: 'papers follow' } });
  return { shop, flow };
}

type Kit = Awaited<ReturnType<typeof arrived>>;

async function goHome({ shop, flow }: Kit, kind: GoingHome) {
  const { id, rowVersion } = (await flow.order()).card;
  const input = { commandId: newCommandId(), id, rowVersion, kind, reason: 'argued over money' };
  await sendHome(shop.owner, input);
}

const find = ({ shop, flow }: Kit, grade: 'watch' | 'stop', place: string) =>
  addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    grade,
    place,
    note: 'glass lifting',
  });

const tagOf = async ({ shop, flow }: Kit) =>
  returnTagData(await flow.order(), await getShop(shop.owner), { ...tag, printedAt });

const noteOf = async ({ shop, flow }: Kit) =>
  customsNoteData(await flow.order(), await getShop(shop.owner), { ...note, printedAt });

const answers = (data: Awaited<ReturnType<typeof noteOf>>) =>
  Object.fromEntries([...data.bow, ...data.work, ...data.values]);

async function moveAbroad({ shop, flow }: Kit, country: string) {
  const { customer } = await flow.order();
  await editCustomer(shop.owner, {
    commandId: newCommandId(),
    id: customer?.id ?? '',
    rowVersion: customer?.rowVersion ?? 0,
    ...customerFields,
    address: { ...customerFields.address, country },
  });
}

const offers = async ({ flow }: Kit) => (await flow.order()).paperOffers.map(({ kind }) => kind);

test('a bow in work needs no return tag and is told so', async () => {
  const { shop, flow } = await arrived();
  await expect(previewPaper(shop.owner, { orderId: flow.orderId, ...tag })).rejects.toMatchObject({
    code: 'CONFLICT',
    message: expect.stringContaining('no return tag'),
  });
});

test('a sound bow may be strung by its owner; with a stop, or broken, it may not', async () => {
  const kit = await arrived();
  await goHome(kit, 'declined');
  expect(await tagOf(kit)).toMatchObject({ unsafe: false, findings: [], toldOn: null });
  await find(kit, 'watch', 'lower tip');
  await find(kit, 'stop', 'upper limb');
  await kit.flow.note('findings-told', 'phoned 555 0142');
  expect(await tagOf(kit)).toMatchObject({
    unsafe: true,
    toldOn: '2026-03-02',
    findings: [
      { grade: 'Stop', words: 'upper limb, glass lifting' },
      { grade: 'Watch', words: 'lower tip, glass lifting' },
    ],
  });
  const broken = await arrived();
  await goHome(broken, 'broken');
  expect((await broken.flow.order()).card.openStops).toBe(0);
  expect((await tagOf(broken)).unsafe).toBe(true);
});

test('the printed tag tells findings and why, reads as its order, and keeps the shop’s own words in', async () => {
  const kit = await arrived();
  await find(kit, 'stop', 'upper limb');
  await kit.flow.note('findings-told', 'phoned 555 0142');
  await goHome(kit, 'refused');
  const choice = { orderId: kit.flow.orderId, ...tag };
  const file = await issuePaper(kit.shop.owner, {
    commandId: newCommandId(),
    ...choice,
    action: 'printed',
  });
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = await textOf(bytes);
  for (const words of [
    'DO NOT STRING OR DRAW',
    'upper limb, glass lifting',
    'does not take on the work',
    'The customer was told on 2026-03-02.',
    'Nora Hale',
  ]) {
    expect(text).toContain(words);
  }
  for (const words of ['argued', '555 0142', 'Orchard']) expect(text).not.toContain(words);
  const [page] = await pagesOf(bytes);
  if (page === undefined) throw new Error('no page');
  const { number } = (await kit.flow.order()).card;
  expect((await decode(page)).map((code) => code.text)).toEqual([number, number]);
});

test('after a bite the tag says that the marked weight no longer holds', async () => {
  const kit = await arrived();
  await biteOnRecord(kit.shop, kit.flow.orderId);
  await goHome(kit, 'withdrawn');
  expect((await tagOf(kit)).mind.at(-1)).toContain('the weight written on it no longer holds');
});

test('the order offers the tag from going home until it is printed, and again after a new stop', async () => {
  const kit = await arrived();
  expect(await offers(kit)).toEqual([]);
  await goHome(kit, 'declined');
  expect(await offers(kit)).toEqual(['return-tag']);
  const print = () =>
    issuePaper(kit.shop.owner, {
      commandId: newCommandId(),
      orderId: kit.flow.orderId,
      ...tag,
      action: 'printed',
    });
  await print();
  expect(await offers(kit)).toEqual([]);
  await find(kit, 'stop', 'upper limb');
  expect(await offers(kit)).toEqual(['return-tag']);
  await print();
  expect(await offers(kit)).toEqual([]);
});

test('a parcel into another country needs a customs note, told apart by whatever name it has', async () => {
  const kit = await arrived();
  expect(await offers(kit)).toEqual([]);
  await moveAbroad(kit, 'United States of America');
  expect(await offers(kit)).toEqual([]);
  await moveAbroad(kit, 'Canada');
  expect(await offers(kit)).toEqual(['customs-note']);
  const { card } = await kit.flow.order();
  const at = () => ({ commandId: newCommandId(), id: card.id });
  await setHandover(kit.shop.owner, {
    ...at(),
    rowVersion: card.rowVersion,
    handover: 'collected',
  });
  expect(await offers(kit)).toEqual([]);
  await setHandover(kit.shop.owner, {
    ...at(),
    rowVersion: card.rowVersion + 1,
    handover: 'shipped',
  });
  await editOrder(kit.shop.owner, {
    ...at(),
    ...orderFields,
    rowVersion: card.rowVersion + 2,
    shipTo: 'Nora Hale\n1 Border Road\nOgdenville, NY 13000\nUSA',
  });
  expect(await offers(kit)).toEqual([]);
});

test('an empty order leaves blanks on the customs note; what is on record is written out', async () => {
  const kit = await arrived();
  await moveAbroad(kit, 'Canada');
  expect(answers(await noteOf(kit))).toMatchObject({
    'Value of the bow': '',
    'Country it was made in': '',
    'Tariff number': '',
    'Listed species (CITES)': '',
    'Parcel, outside': '',
    Currency: 'US dollars (USD)',
    'Received on': '2026-03-02',
    'Work done': 'Reduce weight, Re-mark',
    'Value of the repair': '$240.00, the price as one amount',
  });
  await kit.flow.parcel();
  const lines: [PriceLineFields['kind'], string, number][] = [
    ['service', 'Reduce weight', 18_000],
    ['freight', 'Return freight', 2500],
    ['discount', 'second bow', 1000],
  ];
  for (const [kind, what, unitCents] of lines) {
    const { rowVersion } = (await kit.flow.order()).card;
    await addPriceLine(kit.shop.owner, {
      commandId: newCommandId(),
      orderId: kit.flow.orderId,
      rowVersion,
      kind,
      what,
      quantity: 1,
      unitCents,
      discountBp: null,
      taxable: true,
      minutes: 0,
      answerId: null,
    });
  }
  const { bow } = await kit.flow.order();
  await editBow(kit.shop.owner, {
    commandId: newCommandId(),
    id: bow?.id ?? '',
    rowVersion: bow?.rowVersion ?? 0,
    ...bowFields,
    listedSpecies: 'listed',
  });
  const data = await noteOf(kit);
  expect(answers(data)).toMatchObject({
    'Value of the repair': '$170.00, the price with its tax, without return freight',
    'Value of the bow': '$600.00, declared on this parcel; evidence: appraisal by the owner',
    'Listed species (CITES)': 'YES: wood or horn of a listed species',
    'Parcel, outside': 'box 70 x 5 x 5 in, 4.5 lb',
  });
  expect(data.cautions.join(' ')).toContain('CITES');
  expect(data.cautions.join(' ')).not.toContain('19 CFR');
});

test('work that was not done has no value, and the note says that it goes back unrepaired', async () => {
  const kit = await arrived();
  await goHome(kit, 'declined');
  const data = await noteOf(kit);
  expect(data.statement[0]).toContain('Returned unrepaired');
  expect(answers(data)).toMatchObject({ 'Value of the repair': '' });
  // The shop of the tests stands in the country it is sent to: what to ask of a broker there.
  expect(data.cautions.join(' ')).toContain('19 CFR 10.8');
});
