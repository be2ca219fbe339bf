import { describe, expect, test } from 'vitest';
import { recordFinalCheck } from '../../../core/shop/final-check/record.ts';
import { resolveFinding } from '../../../core/shop/findings/findings.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import type { BowRow } from '../../../core/storage/tables.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { Service, Stage } from '../../../shared/stages.ts';
import { biteOnRecord } from '../../support/bite-on-record.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

type Check = ContractInputs['finalCheck']['record']['checks'][number];

const inOrder = (item: Check['item']): Check => ({
  item,
  outcome: 'ok',
  note: '',
  finding: null,
});

interface Setting {
  services?: Service[];
  stage?: Stage;
  bow?: Partial<BowRow>;
}

/** The order is put straight into its stage: the way there is tested with the gates. */
async function bench(setting: Setting = {}) {
  const shop = await testShop();
  const { id: orderId } = await takeIn(shop, { services: setting.services ?? ['new-string'] });
  const db = shop.core.shop().write;
  const place = (stage: Stage) =>
    db.updateTable('shop_order').set({ stage }).where('id', '=', orderId).execute();
  await place(setting.stage ?? 'final-check');
  if (setting.bow !== undefined) await db.updateTable('bow').set(setting.bow).execute();
  const record = (checks: Check[]) =>
    recordFinalCheck(shop.as('bench'), {
      commandId: newCommandId(),
      orderId,
      doneOn: '2026-03-02',
      checks,
    });
  const rows = async () => (await getOrder(shop.owner, orderId)).finalCheck;
  const row = async (item: Check['item']) => (await rows()).find((each) => each.item === item);
  return { shop, orderId, record, rows, row, place, flow: new Flow(shop, orderId) };
}

test('the list of an order fits its bow and its work', async () => {
  const { rows } = await bench({ bow: { take_down: 'sleeve', belly_facing: 'bamboo' } });
  expect((await rows()).map((row) => row.item)).toEqual([
    'check-flexed',
    'check-glass',
    'check-belly',
    'check-nocks',
    'check-sleeve',
    'check-string',
    'check-alignment',
    'check-brace-and-tiller',
    'check-straightness',
  ]);
  expect((await rows()).every((row) => row.entry === null && !row.outdated)).toBe(true);
});

test('everything ticked is recorded at once, with one line of history', async () => {
  const { record, rows, shop, orderId } = await bench();
  const before = (await getOrder(shop.owner, orderId)).history.length;
  const items = (await rows()).map((row) => row.item);
  await record(items.map(inOrder));
  for (const row of await rows()) {
    expect(row.entry, row.item).toMatchObject({
      item: row.item,
      outcome: 'ok',
      doneOn: '2026-03-02',
      personName: 'Ben Marsh',
    });
  }
  const { history } = await getOrder(shop.owner, orderId);
  expect(history).toHaveLength(before + 1);
  expect(history[0]?.summary).toBe(`Final check: ${items.length} in order`);
});

test('the last look counts', async () => {
  const { record, row, shop } = await bench();
  await record([
    { item: 'check-nocks', outcome: 'not-ok', note: 'burr in a groove', finding: null },
  ]);
  expect((await row('check-nocks'))?.entry?.outcome).toBe('not-ok');
  shop.clock.advance(60_000);
  await record([inOrder('check-nocks')]);
  expect((await row('check-nocks'))?.entry?.outcome).toBe('ok');
});

describe('refused, and nothing is written', () => {
  test.each([
    ['not in order without words', { outcome: 'not-ok', note: '  ' }],
    ['in order with a finding', { finding: { grade: 'watch', place: 'upper tip' } }],
    ['a check that this bow does not get', { item: 'check-sleeve' }],
    ['a check named twice', { item: 'check-flexed' }],
  ] as const)('%s', async (_what, change) => {
    const { record, rows } = await bench();
    const odd: Check = { ...inOrder('check-nocks'), ...change };
    await expect(record([inOrder('check-flexed'), odd])).rejects.toMatchObject({
      code: 'BAD_INPUT',
    });
    expect((await rows()).every((row) => row.entry === null)).toBe(true);
  });

  test('before the order stands in Final check: the finish may not bear stringing yet', async () => {
    const { record, rows } = await bench({ stage: 'cure' });
    await expect(record([inOrder('check-flexed')])).rejects.toMatchObject({ code: 'CONFLICT' });
    expect((await rows()).every((row) => row.entry === null)).toBe(true);
  });

  test('weighed, where no final weighing was written down', async () => {
    const { record, flow, shop } = await bench({ services: ['reduce-weight'] });
    await expect(record([inOrder('check-weighed')])).rejects.toMatchObject({ code: 'CONFLICT' });
    await flow.weigh(await checkedScale(shop), 'final', 45);
    await record([inOrder('check-weighed')]);
  });
});

describe('a safety item that is not in order', () => {
  const lifted: Check = {
    item: 'check-glass',
    outcome: 'not-ok',
    note: 'strand lifted, 2 in long',
    finding: { grade: 'stop', place: 'upper limb, belly, 4 in from the fade' },
  };

  test('writes its stop finding with it, and from then on nothing is flexed', async () => {
    const { record, shop, orderId, row } = await bench();
    const { rowVersion } = (await getOrder(shop.owner, orderId)).card;
    expect((await record([lifted])).rowVersion).toBe(rowVersion + 1);
    const order = await getOrder(shop.owner, orderId);
    expect(order.findings).toMatchObject([
      { grade: 'stop', place: lifted.finding?.place, note: lifted.note },
    ]);
    expect((await row('check-glass'))?.entry?.outcome).toBe('not-ok');
    await expect(record([inOrder('check-flexed')])).rejects.toMatchObject({ code: 'CONFLICT' });
  });

  test('is looked at again once the stop is resolved', async () => {
    const { record, shop, orderId, row } = await bench();
    await record([lifted]);
    const [finding] = (await getOrder(shop.owner, orderId)).findings;
    await resolveFinding(shop.as('bench'), {
      commandId: newCommandId(),
      id: finding?.id ?? '',
      rowVersion: finding?.rowVersion ?? 0,
      how: 'glued down, flexed on the tree, looked at again',
    });
    shop.clock.advance(60_000);
    await record([inOrder('check-glass')]);
    expect((await row('check-glass'))?.entry?.outcome).toBe('ok');
  });
});

test('what was looked at before a later bite is outdated', async () => {
  const { record, row, shop, orderId, place } = await bench({ services: ['overlay-nock'] });
  await record([inOrder('check-flexed')]);
  expect(await row('check-flexed')).toMatchObject({ outdated: false });
  await place('strip-sand');
  shop.clock.advance(60_000);
  // A bite has a gate of its own, tested elsewhere; here only its instant matters.
  await biteOnRecord(shop, orderId);
  expect(await row('check-flexed')).toMatchObject({ outdated: true, entry: { outcome: 'ok' } });
  await place('final-check');
  shop.clock.advance(60_000);
  await record([inOrder('check-flexed')]);
  expect(await row('check-flexed')).toMatchObject({ outdated: false });
  expect((await getOrder(shop.owner, orderId)).finalCheck.map((each) => each.item)).toContain(
    'check-weighed',
  );
});

test('a repeat of the same command records once', async () => {
  const { shop, orderId } = await bench();
  const input = {
    commandId: newCommandId(),
    orderId,
    doneOn: '2026-03-02',
    checks: [inOrder('check-flexed')],
  };
  expect(await recordFinalCheck(shop.owner, input)).toEqual(
    await recordFinalCheck(shop.owner, input),
  );
  expect((await getOrder(shop.owner, orderId)).entries).toHaveLength(1);
});
