import { describe, expect, test } from 'vitest';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { limbSet, weighing } from '../../support/undo-preparing.ts';
import { type UndoShop, undoShop } from '../../support/undo-shop.ts';
import { did, find, moved, orderAt, refused, undo } from '../../support/undo-steps.ts';

test('a hold is taken back whatever was done meanwhile', async () => {
  const kit = await undoShop();
  await kit.flow.grant('alteration-acknowledgement');
  await kit.place('weight-work');
  const held = await did(kit, 'orders.hold');
  await kit.flow.bite('upper, 1/64 per side');
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
    const bite = await kit.flow.bite('upper, 1/64 per side');
    if (bite.outcome !== 'recorded') throw new Error('the bite was refused');
    expect((await refused(kit, noted)).message).toMatch(/^The order has gone on since: Bite taken/);
    await kit.client.bench.strikeOutRemoval({
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

describe('what belongs to another bow, other limbs or another owner', () => {
  test('a strike-out is undone once the exchange in between is undone too', async () => {
    const kit = await undoShop();
    const struck = await did(kit, 'readings.strikeOut');
    const exchanged = await did(kit, 'orders.identifyBow');
    await undo(kit, exchanged);
    await undo(kit, struck);
    expect((await kit.flow.order()).readings[0]?.struckReason).toBeNull();
  });

  test('a bow that was weighed on the order stays on it', async () => {
    const kit = await undoShop();
    const exchanged = await did(kit, 'orders.identifyBow');
    await kit.flow.weigh(kit.scaleId, 'arrival', 52);
    expect((await refused(kit, exchanged)).message).toMatch(/already weighed or looked over/);
  });

  test('limbs that were weighed stay the limbs of the order', async () => {
    const kit = await undoShop();
    const { id: limbSetId } = await limbSet(kit);
    const commandId = newCommandId();
    const chosen = { limbSetId, cameAs: 'whole-bow' as const };
    await kit.client.orders.setLimbSet({ commandId, ...(await orderAt(kit)), ...chosen });
    const { orderId, scaleId } = kit;
    const weighed = { commandId: newCommandId(), orderId, scaleId, ...weighing, limbSetId };
    await kit.client.readings.add(weighed);
    expect((await refused(kit, commandId)).message).toMatch(/limbs on this order were already/);
  });

  test('an owner stays with a bow that is on another order by now', async () => {
    const kit = await undoShop();
    const given = await did(kit, 'orders.identifyCustomer');
    const { card } = await kit.flow.order();
    await kit.client.intake.submit({
      commandId: newCommandId(),
      draftId: null,
      customer: { is: 'known', id: card.customerId ?? '' },
      bow: { is: 'known', id: kit.bowId },
      order: orderFields,
      startsAt: 'requested',
      cameBy: 'phone',
    });
    expect((await refused(kit, given)).message).toMatch(/has the same bow/);
  });
});

describe('moves', () => {
  test('a step back is judged by its gates, not by what was done meanwhile', async () => {
    const kit = await undoShop();
    await kit.place('strip-sand');
    await kit.flow.grant('alteration-acknowledgement');
    const commandId = newCommandId();
    const back = { to: 'weight-work' as const, reason: 'a little more' };
    await kit.client.orders.move({ commandId, ...(await orderAt(kit)), ...back });
    const bite = await kit.flow.bite('upper, 1/64 per side');
    expect(bite.outcome).toBe('recorded');
    expect((await refused(kit, commandId)).message).toMatch(/cannot go back to "Strip & sand": /);
  });

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
