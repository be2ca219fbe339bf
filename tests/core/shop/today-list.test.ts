import { expect, test } from 'vitest';
import { recordArrival } from '../../../core/shop/arrival/arrival.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { holdOrder, releaseOrder } from '../../../core/shop/orders/holds.ts';
import { noteOrdered } from '../../../core/shop/stores/consumables.ts';
import { countLot } from '../../../core/shop/stores/corrections.ts';
import { addTask, finishTask } from '../../../core/shop/tasks/tasks.ts';
import { getToday } from '../../../core/shop/today/today.ts';
import { contract } from '../../../shared/contract/index.ts';
import { dayMs } from '../../support/clock.ts';
import { received, stocked } from '../../support/stocked-shop.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { inZone } from '../today/in-zone.ts';

/** Lines of the list as `group kind`, without promises where they are not the point. */
async function told(shop: TestShop, day: string): Promise<string[]> {
  const { items } = await getToday(shop.as('bench'), day);
  return items.map(({ group, kind }) => `${group} ${kind}`);
}

test('an empty shop has nothing to do', async () => {
  const shop = await testShop();
  expect(await getToday(shop.owner, '2026-03-02')).toMatchObject({ items: [], ordersInWork: 0 });
});

test('one order goes through a day: promised, asked, held, found, reminded', async () => {
  const shop = await testShop();
  const { id, number } = await takeIn(shop, { promisedOn: '2026-03-20' });
  const flow = new Flow(shop, id);
  expect(await told(shop, '2026-03-02')).toEqual([]);
  expect(await told(shop, '2026-03-13')).toEqual(['soon promised']);

  await flow.ask('price-and-scope');
  expect(await told(shop, '2026-03-04')).toEqual(['waiting consent']);
  expect(await told(shop, '2026-03-05')).toEqual(['today consent']);

  const held = await holdOrder(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: (await flow.order()).card.rowVersion,
    kind: 'customer',
    reason: 'says next week',
    remindOn: '2026-03-09',
  });
  expect(await told(shop, '2026-03-05')).toEqual(['waiting consent', 'waiting hold']);
  expect(await told(shop, '2026-03-09')).toEqual(['today hold', 'waiting consent']);
  const { items } = await getToday(shop.owner, '2026-03-09');
  expect(items[0]).toMatchObject({ number, who: 'Nora Hale', orderId: id, opens: 'hold' });

  await releaseOrder(shop.owner, { commandId: newCommandId(), id, rowVersion: held.rowVersion });
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    grade: 'stop',
    place: 'lower tip',
    note: 'split',
  });
  expect(await told(shop, '2026-03-21')).toEqual([
    'late promised',
    'today stop-finding',
    'today consent',
  ]);
});

test('a task shows on its day with the name it is for, until it is done', async () => {
  const shop = await testShop();
  const { id: orderId } = await takeIn(shop, { promisedOn: null });
  const task = await addTask(shop.owner, {
    commandId: newCommandId(),
    orderId,
    what: 'Buy leather',
    dueOn: '2026-03-10',
    forPersonId: shop.as('bench').actor.personId,
  });
  await addTask(shop.owner, {
    commandId: newCommandId(),
    orderId: null,
    what: 'Empty the solvent can',
    dueOn: '2026-03-03',
    forPersonId: null,
  });
  const { items } = await getToday(shop.owner, '2026-03-03');
  expect(items).toMatchObject([
    { group: 'today', what: 'Empty the solvent can', who: '', number: null },
    { group: 'soon', what: 'Buy leather', forPersonName: 'Ben Marsh', taskId: task.id },
  ]);
  await finishTask(shop.owner, { commandId: newCommandId(), ...task, note: '' });
  expect(await told(shop, '2026-03-10')).toEqual(['late task']);
});

test('an order is ready to go on when nothing is missing, and not while it is on hold', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop, { promisedOn: null });
  const flow = new Flow(shop, id);
  await flow.move('in-mail');
  expect(await told(shop, '2026-03-02')).toEqual([]);
  await recordArrival(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    rowVersion: null,
    openedOn: '2026-03-02',
    cameBy: 'parcel',
    packaging: 'tube',
    packagingKept: true,
    packagingDamaged: false,
    condition: 'finish worn at the grip',
    nothingCameAlong: true,
    restingSince: null,
    lookedOver: false,
    strung: 'not-yet',
    notStrungBecause: '',
    alignment: '',
    braceIn: null,
    tillerIn: null,
    stringTrack: '',
    note: '',
  });
  expect(await told(shop, '2026-03-02')).toEqual(['ready ready']);
  expect(await told(shop, '2026-03-04')).toEqual(['today arrival-check', 'ready ready']);
  const { items } = await getToday(shop.owner, '2026-03-02');
  expect(items[0]?.what).toBe('Nothing is missing for "Arrived".');
  await holdOrder(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: (await flow.order()).card.rowVersion,
    kind: 'material',
    reason: 'no shelf free',
    remindOn: null,
  });
  expect(await told(shop, '2026-03-04')).toEqual(['waiting hold']);
});

test('a scale is to be checked again while a bow is at the bench', async () => {
  const shop = await testShop();
  await checkedScale(shop);
  const { id } = await takeIn(shop, { promisedOn: null });
  const flow = new Flow(shop, id);
  const db = shop.owner.write;
  await flow.move('in-mail');
  await db.updateTable('shop_order').set({ stage: 'strip-sand' }).where('id', '=', id).execute();
  const scales = async () =>
    (await told(shop, '2026-03-03')).filter((one) => one.includes('scale'));
  expect(await scales()).toEqual([]);
  shop.clock.advance(dayMs + 60_000);
  expect(await scales()).toEqual(['today scale']);
});

test('lots that have expired or soon will, and what is to be ordered, each in a line', async () => {
  const shop = await testShop();
  const hardener = await stocked(shop.owner, {
    name: 'Clear finish, hardener',
    category: 'hardener',
    weeklyUse: 60,
    waitWeeks: 2,
  });
  const lot = (number: string, expiresOn: string | null, more: { containers?: number } = {}) =>
    received(shop.owner, hardener.id, { number, expiresOn, quantity: 40, ...more });
  await lot('H-1', '2026-03-01');
  await lot('H-2', '2026-03-30', { containers: 2 });
  await lot('H-3', '2026-03-31');
  await lot('H-4', null);
  const strings = await stocked(shop.owner, { name: 'String serving', category: 'string' });
  await received(shop.owner, strings.id, { number: 'S-1', expiresOn: '2026-03-02', quantity: 9 });
  const { items } = await getToday(shop.as('bench'), '2026-03-02');
  const inFinish = { group: 'stores', consumableId: hardener.id, forRoom: 'finish room' };
  expect(items).toMatchObject([
    {
      ...inFinish,
      kind: 'expired-lot',
      who: 'Clear finish, hardener',
      what: 'Lot H-1, 40 mL: it has expired, set it aside.',
      dueOn: '2026-03-01',
      orderId: null,
    },
    {
      kind: 'expiring-lot',
      who: 'String serving',
      what: 'Lot S-1, 9 mL: use it up.',
      consumableId: strings.id,
      forRoom: 'bench',
    },
    {
      ...inFinish,
      kind: 'expiring-lot',
      what: 'Lot H-2 (2 containers), 80 mL: use it up.',
      dueOn: '2026-03-30',
    },
  ]);
  // A day on H-3 comes into sight, and no string serving is in date any more.
  expect(await told(shop, '2026-03-03')).toEqual([
    'stores expired-lot',
    'stores expired-lot',
    'stores time-to-order',
    'stores expiring-lot',
    'stores expiring-lot',
  ]);
});

test('what falls to its reorder point is to be ordered, until it was; used up lots say nothing', async () => {
  const shop = await testShop();
  const { id, rowVersion } = await stocked(shop.owner, { weeklyUse: 60, waitWeeks: 2 });
  const lotId = await received(shop.owner, id, { quantity: 130, expiresOn: '2026-03-20' });
  expect(await told(shop, '2026-03-02')).toEqual(['stores expiring-lot']);
  const given = { lotId, unit: 'mL', reason: 'month end' } as const;
  await countLot(shop.owner, { commandId: newCommandId(), ...given, quantity: 90 });
  const { items } = await getToday(shop.owner, '2026-03-02');
  expect(items).toMatchObject([
    {
      kind: 'time-to-order',
      who: 'Clear finish, resin',
      what: 'Order 150 mL: 90 mL in date.',
      forRoom: 'office',
      dueOn: null,
    },
    { kind: 'expiring-lot' },
  ]);
  await countLot(shop.owner, { commandId: newCommandId(), ...given, quantity: 0 });
  await noteOrdered(shop.owner, { commandId: newCommandId(), id, rowVersion, onOrder: 500 });
  expect(await told(shop, '2026-03-02')).toEqual([]);
});

test('the day is the one on the wall: an evening in an American shop, and the new year', async () => {
  inZone('America/New_York');
  const shop = await testShop();
  // Nine in the evening of 31 December in the shop, the new year in UTC.
  shop.clock.advance(Date.parse('2027-01-01T02:00:00.000Z') - Date.parse('2026-03-02T09:00:00Z'));
  const { id } = await takeIn(shop, { promisedOn: '2026-12-31' });
  const flow = new Flow(shop, id);
  await flow.ask('price-and-scope');
  const { items } = await getToday(shop.owner, '2026-12-31');
  expect(items).toMatchObject([
    { group: 'today', kind: 'promised', dueOn: '2026-12-31' },
    { group: 'waiting', kind: 'consent', since: '2026-12-31' },
  ]);
  expect(await told(shop, '2027-01-02')).toEqual(['late promised', 'waiting consent']);
  expect(await told(shop, '2027-01-03')).toEqual(['late promised', 'today consent']);
});

test('what the list says fits the contract, however long the words', async () => {
  const shop = await testShop();
  const long = 'many words '.repeat(40).slice(0, 400);
  const { id } = await takeIn(shop, { promisedOn: '2026-03-01' });
  const flow = new Flow(shop, id);
  await holdOrder(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: (await flow.order()).card.rowVersion,
    kind: 'customer',
    reason: long,
    remindOn: '2026-03-01',
  });
  await addTask(shop.owner, {
    commandId: newCommandId(),
    orderId: id,
    what: long,
    dueOn: '2026-03-01',
    forPersonId: null,
  });
  const list = await getToday(shop.owner, '2026-06-30');
  expect(list.items.length).toBeGreaterThan(2);
  const schema = contract.today.get['~orpc'].outputSchema;
  expect(schema?.safeParse(list).success).toBe(true);
});
