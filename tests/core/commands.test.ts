import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { editCustomer } from '../../core/shop/customers/customers.ts';
import { runCommand } from '../../core/storage/commands.ts';
import { customerFields } from '../support/fixtures.ts';
import { newCommandId, takeIn, testShop } from '../support/test-shop.ts';

async function changesOf(shop: Awaited<ReturnType<typeof testShop>>, commandId: string) {
  const rows = await shop.core
    .shop()
    .read.selectFrom('command_change')
    .selectAll()
    .where('command_id', '=', commandId)
    .orderBy('seq')
    .execute();
  return rows.map((row) => ({
    table: row.table_name,
    before: row.before_json === null ? null : JSON.parse(row.before_json),
    after: row.after_json === null ? null : JSON.parse(row.after_json),
  }));
}

test('a command keeps every row before and after, with who and where', async () => {
  const shop = await testShop();
  await takeIn(shop);
  const { read } = shop.core.shop();
  const customer = await read.selectFrom('customer').selectAll().executeTakeFirstOrThrow();
  const commandId = newCommandId();
  await editCustomer(shop.as('office'), {
    commandId,
    id: customer.id,
    rowVersion: 1,
    ...customerFields,
    phone: '555 0199',
  });
  const [change] = await changesOf(shop, commandId);
  expect(change).toMatchObject({
    table: 'customer',
    before: { phone: '555 0142', row_version: 1 },
    after: { phone: '555 0199', row_version: 2 },
  });
  const command = await read
    .selectFrom('command')
    .selectAll()
    .where('id', '=', commandId)
    .executeTakeFirstOrThrow();
  expect(command).toMatchObject({
    name: 'customers.edit',
    person_id: shop.as('office').actor.personId,
    device: 'test',
    customer_id: customer.id,
  });
});

test('a command that fails in the middle leaves nothing behind', async () => {
  const shop = await testShop();
  const commandId = newCommandId();
  const failing = runCommand(shop.owner, { id: commandId, name: 'test.fail' }, async (trx) => {
    await trx.insert('scale', { id: 'half', name: 'half', resolution_lbf: 0.1, active: 1 });
    throw new Error('in the middle');
  });
  await expect(failing).rejects.toThrow('in the middle');
  const { read } = shop.core.shop();
  expect(await read.selectFrom('scale').selectAll().execute()).toEqual([]);
  expect(
    await read.selectFrom('command').selectAll().where('id', '=', commandId).execute(),
  ).toEqual([]);
});

test('twenty commands at once are carried out one after the other, each once', async () => {
  const shop = await testShop();
  const orders = await Promise.all(Array.from({ length: 20 }, () => takeIn(shop)));
  expect(new Set(orders.map((order) => order.number)).size).toBe(20);
});

test.each(['command', 'command_change', 'order_history', 'consent', 'consent_answer', 'paper'])(
  '%s cannot be changed or deleted, by anybody',
  async (table) => {
    const shop = await testShop();
    const { write } = shop.core.shop();
    const triggers = await sql<{ name: string }>`
      SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = ${table}`.execute(write);
    expect(triggers.rows.map((row) => row.name).sort()).toEqual([
      `${table}_no_delete`,
      `${table}_no_update`,
    ]);
    if (table !== 'command' && table !== 'command_change' && table !== 'order_history') return;
    await takeIn(shop);
    await expect(sql`DELETE FROM ${sql.table(table)}`.execute(write)).rejects.toThrow(
      'append-only',
    );
  },
);

test('a removed row is kept as it was, and the row that stays behind is none', async () => {
  const shop = await testShop();
  const scale = { id: 'loose', name: 'spring scale', resolution_lbf: 0.5, active: 1 as const };
  const added = newCommandId();
  await runCommand(shop.owner, { id: added, name: 'test.add' }, async (trx) => {
    await trx.insert('scale', scale);
    return null;
  });
  const removed = newCommandId();
  const remove = (expected: number | null) =>
    runCommand(shop.owner, { id: removed, name: 'test.remove', undoes: added }, async (trx) => {
      await trx.remove('scale', 'loose', expected);
      return null;
    });
  await expect(remove(7)).rejects.toMatchObject({ code: 'STALE' });
  await remove(1);
  const { read } = shop.core.shop();
  expect(await read.selectFrom('scale').selectAll().execute()).toEqual([]);
  expect(await changesOf(shop, removed)).toEqual([
    { table: 'scale', before: { ...scale, row_version: 1 }, after: null },
  ]);
  const change = await read
    .selectFrom('command_change')
    .select('row_version')
    .where('command_id', '=', removed)
    .executeTakeFirstOrThrow();
  expect(change.row_version).toBe(2);
  const kept = await read
    .selectFrom('command')
    .select('undoes_id')
    .where('id', '=', removed)
    .executeTakeFirstOrThrow();
  expect(kept.undoes_id).toBe(added);
});

test('removing what is not there is told so, and what is referred to stays', async () => {
  const shop = await testShop();
  await takeIn(shop);
  const { read } = shop.core.shop();
  const customer = await read.selectFrom('customer').select('id').executeTakeFirstOrThrow();
  const remove = (id: string) =>
    runCommand(shop.owner, { id: newCommandId(), name: 'test.remove' }, async (trx) => {
      await trx.remove('customer', id, null);
      return null;
    });
  await expect(remove('nobody')).rejects.toMatchObject({ code: 'NOT_FOUND' });
  await expect(remove(customer.id)).rejects.toThrow(/FOREIGN KEY/);
  expect(await read.selectFrom('customer').select('id').execute()).toEqual([customer]);
});

test('a command is taken back once: a second that names it writes nothing', async () => {
  const shop = await testShop();
  const added = newCommandId();
  await runCommand(shop.owner, { id: added, name: 'test.add' }, async (trx) => {
    await trx.insert('scale', { id: 'one', name: 'one', resolution_lbf: 0.1, active: 1 });
    return null;
  });
  const takeBack = (name: string) =>
    runCommand(
      shop.owner,
      { id: newCommandId(), name: 'test.undo', undoes: added },
      async (trx) => {
        await trx.update('scale', 'one', null, { name });
        return null;
      },
    );
  await takeBack('two');
  await expect(takeBack('three')).rejects.toThrow(/UNIQUE/);
  const { read } = shop.core.shop();
  expect(await read.selectFrom('scale').select('name').execute()).toEqual([{ name: 'two' }]);
});

test('a query cannot write: its connection refuses', async () => {
  const shop = await testShop();
  await expect(shop.core.shop().read.deleteFrom('person').execute()).rejects.toThrow(
    /readonly|read-only|query_only/i,
  );
});
