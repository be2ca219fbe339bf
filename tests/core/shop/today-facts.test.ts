import { type Kysely, type KyselyPlugin, sql } from 'kysely';
import { expect, test } from 'vitest';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { readFacts, readManyFacts } from '../../../core/shop/gates/facts.ts';
import type { GateFacts } from '../../../core/shop/gates/gate-facts.ts';
import { openOrders } from '../../../core/shop/today/read.ts';
import { getToday } from '../../../core/shop/today/today.ts';
import type { OpenShop } from '../../../core/storage/context.ts';
import type { Tables } from '../../../core/storage/tables.ts';
import { consentKinds } from '../../../shared/consents.ts';
import { entryItems } from '../../../shared/entries.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const override = { reason: 'seen on the table' };

/** Orders with different things on record: asked and answered, weighed, found, moved on, and none. */
async function busyShop(): Promise<TestShop> {
  const shop = await testShop();
  const scaleId = await checkedScale(shop);
  const flows = [];
  for (let i = 0; i < 5; i += 1) flows.push(new Flow(shop, (await takeIn(shop)).id));
  const [asked, weighed, found, far] = flows;
  await asked?.grant('price-and-scope');
  await asked?.ask('alteration-acknowledgement');
  await weighed?.move('arrived', { override });
  await weighed?.weigh(scaleId, 'arrival', 52.3);
  await weighed?.note('target-feasible', 'plenty of width');
  await found?.move('in-mail');
  if (found !== undefined) {
    await addFinding(shop.owner, {
      commandId: newCommandId(),
      orderId: found.orderId,
      grade: 'stop',
      place: 'upper fade',
      note: 'crack',
    });
  }
  await far?.note('plan-accepted', 'narrow both limbs');
  await takeIn(shop, {}, 'shop');
  return shop;
}

/** The same facts as plain values, with what their functions answer. */
function plain(facts: GateFacts) {
  return {
    ...facts,
    consent: consentKinds.map((kind) => [kind, facts.consent(kind)]),
    entry: entryItems.map((item) => [item, facts.entry(item)]),
  };
}

/** Counts what is asked of the real file. */
function counted(shop: OpenShop): { shop: OpenShop; queries(): number } {
  let queries = 0;
  const counter: KyselyPlugin = {
    transformQuery: ({ node }) => {
      queries += 1;
      return node;
    },
    transformResult: async ({ result }) => result,
  };
  return { shop: { ...shop, read: shop.read.withPlugin(counter) }, queries: () => queries };
}

/** Every order again so many times, with everything noted of it. */
async function multiply(db: Kysely<Tables>, times: number): Promise<void> {
  const copy = async (table: string, own: readonly string[]) => {
    const columns = await sql<{
      name: string;
    }>`SELECT name FROM pragma_table_info(${table})`.execute(db);
    const names = columns.rows.map(({ name }) => name);
    const taken = names.map((name) =>
      own.includes(name)
        ? sql`${sql.ref(`t.${name}`)} || '-' || n.i`
        : sql`${sql.ref(`t.${name}`)}`,
    );
    await sql`
      INSERT INTO ${sql.table(table)} (${sql.join(names.map((name) => sql.ref(name)))})
      WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ${times})
      SELECT ${sql.join(taken)} FROM ${sql.table(table)} t, n`.execute(db);
  };
  await copy('shop_order', ['id', 'number']);
  for (const table of ['entry', 'finding', 'consent', 'reading']) {
    await copy(table, ['id', 'order_id']);
  }
  await copy('consent_answer', ['id', 'consent_id']);
  await copy('reading_pull', ['id', 'reading_id']);
}

test('facts read for many orders are those the gates read one by one', async () => {
  const { owner } = await busyShop();
  const orders = await openOrders(owner.read);
  const now = owner.now();
  const many = await readManyFacts(owner.read, orders, now);
  expect(orders).toHaveLength(6);
  for (const order of orders) {
    const one = plain(await readFacts(owner.read, order, now));
    const of = many.get(order.id);
    expect(of && plain(of.facts), order.number).toEqual(one);
  }
});

test('three hundred open orders take as many queries as six', async () => {
  const { owner } = await busyShop();
  const few = counted(owner);
  await getToday(few.shop, '2026-03-02');
  await multiply(owner.write, 49);
  const many = counted(owner);
  const { items, ordersInWork } = await getToday(many.shop, '2026-03-02');
  expect(ordersInWork).toBe(300);
  expect(many.queries()).toBe(few.queries());
  expect(many.queries()).toBeLessThan(50);
  expect(items.filter(({ kind }) => kind === 'stop-finding').length).toBe(50);
});
