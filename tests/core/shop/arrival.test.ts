import { expect, test } from 'vitest';
import { completeArrival, recordArrival } from '../../../core/shop/arrival/arrival.ts';
import {
  addBelongings,
  correctBelonging,
  tickBack,
  untick,
} from '../../../core/shop/arrival/belongings.ts';
import { addBow } from '../../../core/shop/bows/bows.ts';
import { addFinding, resolveFinding } from '../../../core/shop/findings/findings.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { identifyBow } from '../../../core/shop/orders/orders.ts';
import { workOrderData } from '../../../core/shop/papers/work-order-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import type { ArrivalFields } from '../../../shared/contract/arrival.ts';
import { bowFields } from '../../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';

const opened: ArrivalFields = {
  openedOn: '2026-03-02',
  cameBy: 'parcel',
  packaging: 'Stiff tube, both caps taped',
  packagingKept: true,
  packagingDamaged: false,
  condition: '',
  nothingCameAlong: false,
  restingSince: null,
  lookedOver: false,
  strung: 'not-yet',
  notStrungBecause: '',
  alignment: '',
  braceIn: null,
  tillerIn: null,
  stringTrack: '',
  note: '',
};

const wholeCheck: ArrivalFields = {
  ...opened,
  condition: 'Dry, two scuffs on the riser',
  lookedOver: true,
  strung: 'strung',
  alignment: 'Limbs in line with the riser',
  braceIn: 7.25,
  tillerIn: 0.125,
  stringTrack: 'Down the middle of both limbs',
};

/** The unpacking table of one order. */
function table(shop: TestShop, orderId: string) {
  const order = () => getOrder(shop.owner, orderId);
  return {
    order,
    record: async (fields: ArrivalFields, ctx = shop.as('bench')) =>
      recordArrival(ctx, {
        commandId: newCommandId(),
        orderId,
        rowVersion: (await order()).arrival?.rowVersion ?? null,
        ...fields,
      }),
    list: (...what: string[]) =>
      addBelongings(shop.as('bench'), { commandId: newCommandId(), orderId, what }),
    complete: async () =>
      completeArrival(shop.as('bench'), {
        commandId: newCommandId(),
        orderId,
        rowVersion: (await order()).arrival?.rowVersion ?? 1,
      }),
    find: (grade: 'stop' | 'watch', place: string) =>
      addFinding(shop.as('bench'), {
        commandId: newCommandId(),
        orderId,
        grade,
        place,
        note: '',
      }),
  };
}

async function openTable() {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  return { shop, id, ...table(shop, id) };
}

test('the record is kept as given, with who wrote it, and grows step by step', async () => {
  const { order, record } = await openTable();
  expect((await order()).arrival).toBeNull();
  await record(opened);
  await record({ ...opened, condition: 'Dry', restingSince: '2026-03-02T09:10:00.000Z' });
  const { arrival, history } = await order();
  expect(arrival).toMatchObject({
    ...opened,
    condition: 'Dry',
    restingSince: '2026-03-02T09:10:00.000Z',
    rowVersion: 2,
    personName: 'Ben Marsh',
    completedAt: null,
    completedBy: null,
  });
  expect(history.filter((line) => line.kind === 'arrival').map((line) => line.summary)).toEqual([
    'Arrival: condition: Dry, out of the box to rest',
    'Box opened 2026-03-02',
  ]);
});

test('two people at one table: the second is told, and nothing is overwritten', async () => {
  const { shop, id, order, record } = await openTable();
  await record(opened);
  const late = (rowVersion: number | null) =>
    recordArrival(shop.owner, {
      commandId: newCommandId(),
      orderId: id,
      rowVersion,
      ...opened,
      condition: 'written over',
    });
  await expect(late(null)).rejects.toMatchObject({ code: 'STALE' });
  await expect(late(7)).rejects.toMatchObject({ code: 'STALE' });
  expect((await order()).arrival?.condition).toBe('');
});

test('a check is complete only when every part is there; each missing part is one sentence', async () => {
  const { record, list, complete, order } = await openTable();
  expect(await complete()).toMatchObject({
    outcome: 'incomplete',
    missing: expect.arrayContaining(['Not noted when the box was opened.']),
  });
  await record(opened);
  expect(await complete()).toEqual({
    outcome: 'incomplete',
    missing: [
      'Condition on arrival not noted.',
      'What came along is not listed.',
      'Not looked over yet.',
      'Not noted whether it was strung, or why not.',
    ],
  });
  await list('String');
  await record({ ...wholeCheck, alignment: ' ', braceIn: null, tillerIn: null, stringTrack: '' });
  expect(await complete()).toEqual({
    outcome: 'incomplete',
    missing: [
      'Alignment not noted.',
      'Brace height not measured.',
      'Tiller not measured.',
      'String track not noted.',
    ],
  });
  await record(wholeCheck);
  expect(await complete()).toMatchObject({ outcome: 'completed' });
  expect((await order()).arrival).toMatchObject({ completedBy: 'Ben Marsh' });
});

test('"not strung because ..." completes the check; without the reason it does not', async () => {
  const { record, complete, order } = await openTable();
  const unstrung: ArrivalFields = {
    ...opened,
    condition: 'Limbs only, dry',
    nothingCameAlong: true,
    lookedOver: true,
    strung: 'not-strung',
  };
  await record(unstrung);
  expect(await complete()).toEqual({
    outcome: 'incomplete',
    missing: ['No reason given why it was not strung.'],
  });
  await record({ ...unstrung, notStrungBecause: 'no riser came with the limbs' });
  expect(await complete()).toMatchObject({ outcome: 'completed' });
  expect((await order()).history[0]?.summary).toBe(
    'Arrival check complete, not strung because no riser came with the limbs',
  );
});

test('a stop finding forbids to string the bow, and no role may pass', async () => {
  const { shop, record, find, order } = await openTable();
  await record({ ...opened, lookedOver: true });
  const stop = await find('stop', 'Upper limb, belly, 4 in from the fade');
  for (const role of ['owner', 'office', 'bench'] as const) {
    await expect(record(wholeCheck, shop.as(role))).rejects.toMatchObject({
      code: 'CONFLICT',
      message: 'Do not string it: a stop finding is open (Upper limb, belly, 4 in from the fade).',
    });
  }
  expect((await order()).arrival?.strung).toBe('not-yet');
  await resolveFinding(shop.as('bench'), {
    commandId: newCommandId(),
    id: stop.id,
    rowVersion: stop.rowVersion,
    how: 'Only a line in the finish, looked at under the loupe',
  });
  await record(wholeCheck);
  expect((await order()).arrival?.strung).toBe('strung');
});

test('a stop seen only once it was strung does not lock what was written before', async () => {
  const { record, find, order } = await openTable();
  await record(wholeCheck);
  await find('stop', 'Lower limb, glue line at the fade');
  await record({ ...wholeCheck, alignment: 'Lower limb twists to the left' });
  expect((await order()).arrival?.alignment).toBe('Lower limb twists to the left');
});

test('a stop finding of another order of the same bow forbids it too', async () => {
  const { shop, record, order } = await openTable();
  const bowId = (await order()).card.bowId;
  const shopOwn = shop.owner.write;
  const second = await takeIn(shop);
  await shopOwn
    .updateTable('shop_order')
    .set({ bow_id: bowId })
    .where('id', '=', second.id)
    .execute();
  await table(shop, second.id).find('stop', 'Tip overlay lifted');
  await expect(record(wholeCheck)).rejects.toMatchObject({
    message: 'Do not string it: a stop finding is open (Tip overlay lifted).',
  });
});

test('a changed record opens the check again; a changed note does not', async () => {
  const { record, list, complete, order } = await openTable();
  await list('String');
  await record(wholeCheck);
  await complete();
  await record({ ...wholeCheck, note: 'Customer rang: the sock is a gift.' });
  expect((await order()).arrival?.completedAt).not.toBeNull();
  await record({ ...wholeCheck, braceIn: 7.5 });
  expect((await order()).arrival).toMatchObject({ completedAt: null, completedBy: null });
  expect((await order()).history[0]?.summary).toBe(
    'Arrival record changed; the check is open again',
  );
});

test('what came along is listed, corrected, ticked back and unticked, with a line each', async () => {
  const { shop, list, order } = await openTable();
  await list('String', 'Quiver');
  await list('Sock');
  const bench = shop.as('bench');
  const [string, quiver, sock] = (await order()).belongings;
  expect([string?.what, quiver?.what, sock?.what]).toEqual(['String', 'Quiver', 'Sock']);
  if (string === undefined || quiver === undefined) throw new Error('not listed');
  await correctBelonging(bench, {
    commandId: newCommandId(),
    id: quiver.id,
    rowVersion: quiver.rowVersion,
    what: 'Bow quiver, five arrows',
  });
  const back = await tickBack(bench, {
    commandId: newCommandId(),
    id: string.id,
    rowVersion: string.rowVersion,
    note: 'in the sock',
  });
  await expect(
    tickBack(bench, { commandId: newCommandId(), ...back, note: '' }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
  expect((await order()).belongings).toMatchObject([
    { what: 'String', backBy: 'Ben Marsh', backNote: 'in the sock' },
    { what: 'Bow quiver, five arrows', backAt: null },
    { what: 'Sock', backAt: null },
  ]);
  await untick(bench, { commandId: newCommandId(), ...back });
  const after = await order();
  expect(after.belongings[0]).toMatchObject({ backAt: null, backBy: null, backNote: '' });
  expect(
    after.history.filter((line) => line.kind.startsWith('belonging')).map((line) => line.summary),
  ).toEqual([
    'Not in the box after all: String',
    'Back in the box: String (in the sock)',
    'List corrected: "Quiver" now reads "Bow quiver, five arrows"',
    'Came along: Sock',
    'Came along: String, Quiver',
  ]);
});

test('nothing came along and a list exclude each other', async () => {
  const { record, list, order } = await openTable();
  await record({ ...opened, nothingCameAlong: true });
  await list('Stringer');
  expect((await order()).arrival?.nothingCameAlong).toBe(false);
  await expect(record({ ...opened, nothingCameAlong: true })).rejects.toMatchObject({
    code: 'CONFLICT',
  });
});

test('a check of one bow does not pass to another that is put on the order', async () => {
  const { shop, id, record, order } = await openTable();
  const { customerId } = (await order()).card;
  const other = await addBow(shop.owner, { commandId: newCommandId(), customerId, ...bowFields });
  const exchange = async () =>
    identifyBow(shop.owner, {
      commandId: newCommandId(),
      id,
      rowVersion: (await order()).card.rowVersion,
      bowId: other.id,
    });
  await record(wholeCheck);
  await expect(exchange()).rejects.toMatchObject({ code: 'CONFLICT' });
  await record({ ...wholeCheck, lookedOver: false, strung: 'not-yet' });
  await exchange();
  expect((await order()).card.bowId).toBe(other.id);
});

test('the work order lists what came along, or that nothing did', async () => {
  const { shop, record, list, order } = await openTable();
  const choice = { format: 'letter', copy: 'office', printedAt: '2026-03-02' } as const;
  const printed = async () =>
    workOrderData(await order(), await getShop(shop.owner), null, choice).belongings;
  expect(await printed()).toBe('');
  await record({ ...opened, nothingCameAlong: true });
  expect(await printed()).toBe('none');
  await list('String', 'Bow quiver, five arrows');
  expect(await printed()).toBe('String, Bow quiver, five arrows');
});
