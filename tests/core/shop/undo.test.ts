import { describe, expect, test } from 'vitest';
import { undoable } from '../../../core/shop/undo/undoable.ts';
import { bowFields, orderFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { undoShop } from '../../support/undo-shop.ts';
import { did, edit, latestLine, moved, orderAt, refused, undo } from '../../support/undo-steps.ts';

describe('what undoing leaves behind', () => {
  test('the history keeps the line and says that it was undone', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    await undo(kit, done);
    const { history } = await kit.flow.order();
    expect(history[0]).toMatchObject({ kind: 'undo', summary: 'Undone: Order changed' });
    expect(history[1]).toMatchObject({ kind: 'edit', summary: 'Order changed' });
  });

  test('row versions only grow, so that an older view is told', async () => {
    const kit = await undoShop();
    const seen = await orderAt(kit);
    const done = await edit(kit, { tillerTarget: 'even' });
    await undo(kit, done);
    expect(await kit.version()).toBe(seen.rowVersion + 2);
    const stale = kit.client.orders.edit({ commandId: newCommandId(), ...seen, ...orderFields });
    await expect(stale).rejects.toMatchObject({ code: 'STALE' });
  });

  test('a repeat of the same undo answers the same and writes nothing', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    const input = { commandId: newCommandId(), of: done };
    const first = await kit.client.undo.undo(input);
    const version = await kit.version();
    expect(await kit.client.undo.undo(input)).toEqual(first);
    expect(await kit.version()).toBe(version);
  });

  test('a move back is told with its stages', async () => {
    const kit = await undoShop();
    await undo(kit, await moved(kit, 'in-mail'));
    expect(await latestLine(kit)).toMatchObject({
      summary: 'Undone: Requested to In the mail',
      fromStage: 'in-mail',
      toStage: 'requested',
    });
  });

  test('a customer that was added by mistake is found no more', async () => {
    const kit = await undoShop();
    const done = await did(kit, 'customers.add');
    expect(await kit.client.customers.search({ text: 'Brandt' })).toHaveLength(1);
    await undo(kit, done);
    expect(await kit.client.customers.search({ text: 'Brandt' })).toEqual([]);
  });

  test('open orders of a customer hear of it, and their papers are out of date', async () => {
    const kit = await undoShop();
    const done = await did(kit, 'customers.edit');
    await undo(kit, done);
    expect((await latestLine(kit))?.summary).toBe('Undone: Customer details changed');
  });
});

describe('refused', () => {
  test('what is not there', async () => {
    const kit = await undoShop();
    expect((await refused(kit, 'no-such-id')).code).toBe('NOT_FOUND');
  });

  test('a second time', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    await undo(kit, done, kit.client);
    expect(await refused(kit, done)).toEqual({
      code: 'CONFLICT',
      message: 'Ida Penn undid this on 2026-03-02.',
    });
  });

  test('what says no in the table, with its sentence', async () => {
    const kit = await undoShop();
    const { read } = kit.shop.core.shop();
    const { id } = await read
      .selectFrom('command')
      .select('id')
      .where('name', '=', 'intake.submit')
      .executeTakeFirstOrThrow();
    expect(await refused(kit, id)).toEqual({
      code: 'CONFLICT',
      message: undoable['intake.submit'],
    });
    const answered = await kit.flow.grant('price-and-scope');
    const consent = await read
      .selectFrom('command')
      .select('id')
      .where('name', '=', 'consents.answer')
      .executeTakeFirstOrThrow();
    expect(answered.id).not.toBe('');
    expect((await refused(kit, consent.id)).message).toBe(undoable['consents.answer']);
  });

  test('an undo: what was undone is done again by hand', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    const commandId = newCommandId();
    await kit.client.undo.undo({ commandId, of: done });
    expect((await refused(kit, commandId)).message).toBe(undoable['undo.undo']);
  });

  test('a move that was refused itself: there is nothing to undo', async () => {
    const kit = await undoShop();
    const commandId = newCommandId();
    const tried = { commandId, ...(await orderAt(kit)), to: 'arrived' as const };
    expect((await kit.client.orders.move(tried)).outcome).toBe('refused');
    expect((await refused(kit, commandId)).message).toMatch(/changed nothing/);
  });

  test('what somebody else did, except by the owner', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' }, kit.as('office'));
    expect(await refused(kit, done, kit.as('bench'))).toEqual({
      code: 'NOT_ALLOWED',
      message: 'Otto Reed did this: only Otto Reed or the owner undoes it.',
    });
    await undo(kit, done, kit.as('owner'));
    const own = await edit(kit, { tillerTarget: 'odd' }, kit.as('office'));
    await undo(kit, own, kit.as('office'));
  });

  test('a row that somebody changed since: who and when', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    kit.shop.clock.advance(2 * 24 * 60 * 60 * 1000);
    const later = await edit(kit, { tillerTarget: 'odd' }, kit.as('office'));
    expect(await refused(kit, done)).toEqual({
      code: 'CONFLICT',
      message:
        'Otto Reed changed the order since, on 2026-03-04. Undo that first, or change it by hand.',
    });
    await undo(kit, later);
    await undo(kit, done);
    expect((await kit.flow.order()).tillerTarget).toBe(orderFields.tillerTarget);
  });

  test('not because of a later change that only touched the row', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { tillerTarget: 'even' });
    await did(kit, 'orders.hold');
    await undo(kit, done);
    expect((await kit.flow.order()).tillerTarget).toBe(orderFields.tillerTarget);
    expect((await kit.flow.order()).holds).toHaveLength(1);
  });

  test('a row that is referred to now', async () => {
    const kit = await undoShop();
    const { read } = kit.shop.core.shop();
    const added = await read
      .selectFrom('command')
      .select('id')
      .where('name', '=', 'customers.add')
      .executeTakeFirstOrThrow();
    expect(await refused(kit, added.id)).toMatchObject({
      code: 'CONFLICT',
      message: expect.stringMatching(/^The customer is used now by what was recorded since: /),
    });
  });
});

test('a row that would refer to what was taken out since is not put back', async () => {
  const kit = await undoShop();
  const { client, customerId } = kit;
  const first = newCommandId();
  const wrong = await client.bows.add({ commandId: first, customerId, ...bowFields });
  const right = await client.bows.add({ commandId: newCommandId(), customerId, ...bowFields });
  const identify = async (bowId: string) => {
    const commandId = newCommandId();
    await client.orders.identifyBow({ commandId, ...(await orderAt(kit)), bowId });
    return commandId;
  };
  await identify(wrong.id);
  const corrected = await identify(right.id);
  await undo(kit, first);
  expect(await refused(kit, corrected)).toEqual({
    code: 'CONFLICT',
    message: 'What this would put back refers to something that is no longer there.',
  });
});
