import { describe, expect, test } from 'vitest';
import { newCommandId } from '../../support/test-shop.ts';
import { type UndoShop, undoShop } from '../../support/undo-shop.ts';
import { did, find, moved, orderAt, refused, undo } from '../../support/undo-steps.ts';

test('a hold is taken back whatever was done meanwhile', async () => {
  const kit = await undoShop();
  await kit.flow.grant('alteration-acknowledgement');
  await kit.place('weight-work');
  const held = await did(kit, 'orders.hold');
  await kit.flow.note('removal', 'upper, 1/64 per side');
  await undo(kit, held);
  expect((await kit.flow.order()).holds).toEqual([]);
});

describe('the order has gone on', () => {
  test('a gate was passed since; after a step back it may be undone again', async () => {
    const kit = await undoShop();
    await moved(kit, 'in-mail');
    const noted = await did(kit, 'entries.record');
    await moved(kit, 'arrived');
    expect(await refused(kit, noted)).toMatchObject({
      code: 'CONFLICT',
      message: expect.stringMatching(
        /^The order has gone on since: .* Move it back first, or strike it out with a reason\.$/,
      ),
    });
    await moved(kit, 'in-mail');
    await undo(kit, noted);
  });

  test('a step with a gate of its own was done since; struck out, it holds nothing back', async () => {
    const kit = await undoShop();
    await kit.flow.grant('alteration-acknowledgement');
    await kit.place('weight-work');
    const noted = await did(kit, 'entries.record');
    const bite = await kit.flow.note('removal', 'upper, 1/64 per side');
    if (bite.outcome !== 'recorded') throw new Error('the bite was refused');
    expect((await refused(kit, noted)).message).toMatch(/^The order has gone on since: Bite taken/);
    await kit.client.entries.strikeOut({
      commandId: newCommandId(),
      id: bite.id,
      rowVersion: bite.rowVersion,
      reason: 'another bow',
    });
    await undo(kit, noted);
  });

  test('tasks go their own way', async () => {
    const kit = await undoShop();
    const task = await did(kit, 'tasks.add');
    await moved(kit, 'in-mail');
    await undo(kit, task);
  });

  test('what was weighed of one bow does not come to count for another', async () => {
    const kit = await undoShop();
    const struck = await did(kit, 'readings.strikeOut');
    await did(kit, 'orders.identifyBow');
    expect((await refused(kit, struck)).message).toMatch(/gone on since: Bow identified/);
  });
});

describe('moves', () => {
  const back = async (kit: UndoShop) => {
    await moved(kit, 'in-mail');
    await moved(kit, 'arrived');
    return moved(kit, 'in-mail');
  };

  test('a step back is undone through the gates: what is missing is said', async () => {
    const kit = await undoShop();
    const done = await back(kit);
    const answer = await refused(kit, done);
    expect(answer.code).toBe('CONFLICT');
    expect(answer.message).toMatch(/^Order \d\d-\d+ cannot go back to "Arrived": /);
  });

  test('a step back is undone where every gate is open', async () => {
    const kit = await undoShop();
    await moved(kit, 'in-mail');
    const done = await moved(kit, 'requested');
    await undo(kit, done);
    expect((await kit.flow.order()).card.stage).toBe('in-mail');
  });

  test('a held order stays where it is', async () => {
    const kit = await undoShop();
    await moved(kit, 'in-mail');
    const done = await moved(kit, 'requested');
    await did(kit, 'orders.hold');
    expect((await refused(kit, done)).message).toMatch(/is on hold: finish is out/);
  });

  test('a stop finding stands before it', async () => {
    const kit = await undoShop();
    await kit.place('final-check');
    const sent = await kit.client.orders.move({
      commandId: newCommandId(),
      ...(await orderAt(kit)),
      to: 'agreed',
      reason: 'looked odd',
    });
    expect(sent.outcome).toBe('moved');
    const { read } = kit.shop.core.shop();
    const { id } = await read
      .selectFrom('command')
      .select('id')
      .where('name', '=', 'orders.move')
      .executeTakeFirstOrThrow();
    await find(kit, 'stop');
    expect((await refused(kit, id)).message).toMatch(/Final check/);
    expect((await kit.flow.order()).card.stage).toBe('agreed');
  });

  test('only the owner takes back that a bow left the shop', async () => {
    const kit = await undoShop();
    await kit.place('packed');
    await did(kit, 'orders.setHandover');
    await kit.flow.note('handed-to', 'Nora Hale');
    const commandId = newCommandId();
    const left = { commandId, ...(await orderAt(kit)), to: 'collected' as const };
    expect((await kit.as('office').orders.move(left)).outcome).toBe('moved');
    expect(await refused(kit, commandId, kit.as('office'))).toEqual({
      code: 'NOT_ALLOWED',
      message: 'Only the owner reopens an order that has left the shop.',
    });
    await undo(kit, commandId);
    expect((await kit.flow.order()).card.stage).toBe('packed');
  });

  test('whoever cancelled a request takes it up again by undoing it', async () => {
    const kit = await undoShop();
    const commandId = newCommandId();
    const ended = { commandId, ...(await orderAt(kit)), reason: 'never sent' };
    await kit.as('office').orders.cancel(ended);
    await undo(kit, commandId, kit.as('office'));
    expect((await kit.flow.order()).card.stage).toBe('requested');
  });

  test('a bow on its way home is not sent there again past its gates', async () => {
    const kit = await undoShop();
    await kit.place('arrived');
    const declined = { kind: 'declined' as const, reason: 'too dear' };
    await kit.client.orders.sendHome({
      commandId: newCommandId(),
      ...(await orderAt(kit)),
      ...declined,
    });
    await kit.place('packed');
    const taken = newCommandId();
    const again = { commandId: taken, ...(await orderAt(kit)), reason: 'they want it after all' };
    await kit.client.orders.takeUpAgain(again);
    expect((await refused(kit, taken)).message).toMatch(/cannot go back to "Packed"/);
  });
});
