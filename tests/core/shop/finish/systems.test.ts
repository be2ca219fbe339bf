import { expect, test } from 'vitest';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { editFinishPolicy, finishPolicy } from '../../../../core/shop/finish/policy.ts';
import {
  addFinishSystem,
  checkFinishSheet,
  editFinishSystem,
  listFinishSystems,
} from '../../../../core/shop/finish/systems.ts';
import { choose, finishKit, oilSheet, twoPartSheet } from '../../../support/finish-kit.ts';
import { stocked } from '../../../support/stocked-shop.ts';
import { newCommandId, takeIn, testShop } from '../../../support/test-shop.ts';

const nothingInStores = { resinId: null, hardenerId: null, thinnerId: null, active: true };

test('a shop begins with no finish: sheets are copied, never invented', async () => {
  const shop = await testShop();
  expect(await listFinishSystems(shop.owner, { includeInactive: true })).toEqual([]);
});

test('a system keeps its whole sheet, names what it is issued from and says its cautions', async () => {
  const { shop } = await finishKit();
  const [system] = await listFinishSystems(shop.owner, { includeInactive: false });
  expect(system).toMatchObject({
    name: 'Satin top coat',
    kind: 'two-part',
    sheet: twoPartSheet,
    resinName: 'Satin base',
    hardenerName: 'Satin hardener',
    thinnerName: 'Slow thinner',
  });
  expect(system?.cautions.join(' ')).toMatch(/supplied air.*data sheet/);
});

test('a sheet with mistakes is refused, each at its field', async () => {
  const shop = await testShop();
  const sheet = { ...twoPartSheet, cure: { ...twoPartSheet.cure, wrap: 4 }, recoat: [] };
  expect(checkFinishSheet({ sheet }).map(({ field }) => field)).toEqual(['recoat', 'cure.wrap']);
  const adding = addFinishSystem(shop.owner, {
    commandId: newCommandId(),
    sheet,
    ...nothingInStores,
  });
  await expect(adding).rejects.toMatchObject({ code: 'BAD_INPUT' });
  expect(await listFinishSystems(shop.owner, { includeInactive: true })).toEqual([]);
});

test('two finishes of one name are refused, and stock that cannot be measured out', async () => {
  const { shop, systemId } = await finishKit();
  const add = (change: object) =>
    addFinishSystem(shop.owner, {
      commandId: newCommandId(),
      sheet: twoPartSheet,
      ...nothingInStores,
      ...change,
    });
  await expect(add({})).rejects.toThrow('There is already a finish named Satin top coat.');
  await expect(add({ resinId: 'nowhere' })).rejects.toMatchObject({ code: 'NOT_FOUND' });
  const { id: sheets } = await stocked(shop.owner, { name: 'Sheets', unit: 'sheet' });
  await expect(add({ sheet: { ...twoPartSheet, name: 'Other' }, resinId: sheets })).rejects.toThrow(
    'Sheets is counted by the sheet: a mix is issued in mL, fl oz or g.',
  );
  const { id } = await stocked(shop.owner, { name: 'Coat' });
  await expect(
    add({ sheet: { ...twoPartSheet, name: 'Other' }, resinId: id }),
  ).resolves.toBeTruthy();
  const editing = editFinishSystem(shop.owner, {
    commandId: newCommandId(),
    id: systemId,
    rowVersion: 1,
    sheet: { ...twoPartSheet, name: 'Other' },
    ...nothingInStores,
  });
  await expect(editing).rejects.toThrow('already a finish named Other');
});

test('an order keeps the sheet it chose until the same is chosen again', async () => {
  const kit = await finishKit();
  const { shop, systemId } = kit;
  const { id } = await takeIn(shop);
  await choose(shop, id, systemId);
  await editFinishSystem(shop.owner, {
    commandId: newCommandId(),
    id: systemId,
    rowVersion: 1,
    sheet: { ...twoPartSheet, revision: '5', cure: { ...twoPartSheet.cure, full: 400 } },
    resinId: kit.resinId,
    hardenerId: kit.hardenerId,
    thinnerId: null,
    active: true,
  });
  const before = await orderFinishNow(shop.owner, id);
  expect(before.chosen).toMatchObject({ sheetChanged: true, sheet: { revision: '4' } });
  await expect(choose(shop, id, systemId)).rejects.toMatchObject({ code: 'STALE' });
});

test('rack places and what reaches the work are set by the shop', async () => {
  const shop = await testShop();
  expect(await finishPolicy(shop.owner.read)).toMatchObject({ rackSlots: 6, transferPercent: 25 });
  const { rowVersion } = await finishPolicy(shop.owner.read);
  await editFinishPolicy(shop.owner, {
    commandId: newCommandId(),
    rowVersion,
    rackSlots: 4,
    transferPercent: 31.5,
  });
  expect(await finishPolicy(shop.owner.read)).toMatchObject({
    rackSlots: 4,
    transferPercent: 31.5,
  });
});

test('an oil is a system like any other, without mix or pot life', async () => {
  const shop = await testShop();
  await addFinishSystem(shop.owner, {
    commandId: newCommandId(),
    sheet: oilSheet,
    ...nothingInStores,
  });
  const [oil] = await listFinishSystems(shop.owner, { includeInactive: false });
  expect(oil).toMatchObject({ kind: 'hand-rubbed-oil', resinName: '' });
  expect(oil?.cautions[0]).toMatch(/closed metal can/);
});
