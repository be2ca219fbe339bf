import { describe, expect, test } from 'vitest';
import { customerFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { undoShop } from '../../support/undo-shop.ts';
import { did, edit, find, moved, undo } from '../../support/undo-steps.ts';

describe('recent', () => {
  test('tells what was done on an order, newest first, and what can be taken back', async () => {
    const kit = await undoShop();
    const edited = await edit(kit, { tillerTarget: 'even' }, kit.as('office'));
    const stop = await find(kit, 'stop');
    await undo(kit, edited, kit.as('office'));
    const items = await kit.client.undo.recent({ orderId: kit.orderId });
    expect(items.map(({ what, canUndo }) => [what, canUndo])).toEqual([
      ['Finding (stop): upper fade', false],
      ['Order changed', false],
      ['Request taken in (phone)', false],
    ]);
    const [latest, third] = items;
    expect(latest).toMatchObject({ commandId: stop.commandId, personName: 'Ida Penn' });
    expect(third).toMatchObject({
      personName: 'Otto Reed',
      why: null,
      undoneAt: expect.any(String),
    });
    const { history } = await kit.flow.order();
    expect(third?.historyIds).toEqual([
      history.find((line) => line.summary === 'Order changed')?.id,
    ]);
  });

  test('reads by customer, by bow and over the whole shop, at most fifty', async () => {
    const kit = await undoShop();
    await did(kit, 'customers.edit');
    await did(kit, 'bows.edit');
    const names = async (of: Parameters<typeof kit.client.undo.recent>[0]) =>
      (await kit.client.undo.recent(of)).map((item) => item.what);
    expect(await names({ customerId: kit.customerId })).toContain('Customer details changed');
    expect(await names({ bowId: kit.bowId })).toContain('Bow details changed');
    for (let i = 0; i < 50; i += 1) await did(kit, 'customers.add');
    expect(await names({})).toEqual(Array.from({ length: 50 }, () => 'Customer added'));
    await expect(kit.client.undo.recent({ orderId: 'nowhere' })).rejects.toMatchObject({
      code: 'NOT_FOUND',
    });
    expect(await kit.client.undo.recent({ of: 'nowhere' })).toEqual([]);
  });

  test('what the list offers is what may be done by whoever asks', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' }, kit.as('office'));
    const seen = async (role: 'owner' | 'office' | 'bench') =>
      (await kit.as(role).undo.recent({ of: done }))[0]?.canUndo;
    expect([await seen('owner'), await seen('office'), await seen('bench')]).toEqual([
      true,
      true,
      false,
    ]);
  });

  test('names a move by where it went, not by what the owner let pass', async () => {
    const kit = await undoShop();
    await moved(kit, 'in-mail');
    const [item] = await kit.client.undo.recent({ of: await moved(kit, 'arrived') });
    expect(item?.what).toBe('In the mail to Arrived');
    expect(item?.historyIds.length).toBeGreaterThan(1);
  });

  test('says in words what taking it back does', async () => {
    const kit = await undoShop();
    const effect = async (of: string) => (await kit.client.undo.recent({ of }))[0]?.effect;
    expect(await effect(await moved(kit, 'in-mail'))).toBe('Puts the order back to "Requested".');
    expect(await effect(await did(kit, 'readings.add'))).toBe('Takes out the weighing.');
    expect(await effect(await did(kit, 'orders.setInscription'))).toBe(
      'Puts back what the order said before.',
    );
  });

  test('a customer added by the office alone may be taken back', async () => {
    const kit = await undoShop();
    const commandId = newCommandId();
    await kit.as('office').customers.add({ commandId, ...customerFields, name: 'Ola Brandt' });
    await undo(kit, commandId, kit.as('office'));
  });
});
