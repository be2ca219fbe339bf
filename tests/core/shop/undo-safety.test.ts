import { describe, expect, test } from 'vitest';
import { undoable } from '../../../core/shop/undo/undoable.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { undoCases } from '../../support/undo-cases.ts';
import { arrivalFields, limbs } from '../../support/undo-preparing.ts';
import { type UndoShop, undoShop } from '../../support/undo-shop.ts';
import { did, edit, editBow, find, orderAt, refused, undo } from '../../support/undo-steps.ts';

describe('stop findings', () => {
  test('one that was noted stays', async () => {
    const kit = await undoShop();
    const { commandId } = await find(kit, 'stop');
    expect(await refused(kit, commandId)).toEqual({
      code: 'CONFLICT',
      message: 'A stop finding stays: resolve it with what was done and seen.',
    });
    const [item] = await kit.client.undo.recent({ of: commandId });
    expect(item).toMatchObject({
      canUndo: false,
      why: expect.stringMatching(/stop finding stays/),
    });
  });

  test('one whose resolving is undone stands again, and whoever is about to move is told', async () => {
    const kit = await undoShop();
    const { id, rowVersion } = await find(kit, 'stop');
    const commandId = newCommandId();
    await kit.client.findings.resolve({ commandId, id, rowVersion, how: 'glued and looked over' });
    const seen = await orderAt(kit);
    await undo(kit, commandId);
    const { findings } = await kit.flow.order();
    expect(findings[0]).toMatchObject({ grade: 'stop', resolvedAt: null, resolvedHow: null });
    const stale = kit.client.orders.move({ commandId: newCommandId(), ...seen, to: 'in-mail' });
    await expect(stale).rejects.toMatchObject({ code: 'STALE' });
  });

  test('one that was noted before the bow was known keeps stopping that bow', async () => {
    const kit = await undoShop();
    const { client, bowId, customerId } = kit;
    const { id, rowVersion } = await client.intake.submit({
      commandId: newCommandId(),
      draftId: null,
      customer: { is: 'known', id: customerId },
      bow: { is: 'later' },
      order: orderFields,
      startsAt: 'requested',
      cameBy: 'parcel',
    });
    const commandId = newCommandId();
    await client.orders.identifyBow({ commandId, id, rowVersion, bowId });
    const { write } = kit.shop.core.shop();
    const finding = { orderId: id, grade: 'stop' as const, place: 'lower tip', note: 'a crack' };
    await client.findings.add({ commandId: newCommandId(), ...finding });
    // As it is where the box was opened before anybody knew which bow was in it.
    await write.updateTable('finding').set({ bow_id: null }).execute();
    expect((await refused(kit, commandId)).message).toBe(
      'A stop finding stands on this bow: lower tip.',
    );
  });

  test('damage done here stays, with its stop', async () => {
    const kit = await undoShop();
    await undoCases['incidents.edit']?.(kit);
    const { read } = kit.shop.core.shop();
    const { id } = await read
      .selectFrom('command')
      .select('id')
      .where('name', '=', 'incidents.record')
      .executeTakeFirstOrThrow();
    expect((await refused(kit, id)).message).toBe(undoable['incidents.record']);
  });

  test('a failed check stays until somebody says why it does not count', async () => {
    const kit = await undoShop();
    const commandId = newCommandId();
    await kit.client.bench.checkGlass({
      commandId,
      orderId: kit.orderId,
      showThrough: false,
      strands: true,
      runOut: false,
      exposedCore: false,
      note: '',
    });
    expect((await refused(kit, commandId)).message).toMatch(/strike it out with a reason/);
  });

  test('a bow with a stop is not said to be strung by an undo', async () => {
    const kit = await undoShop();
    const { client, orderId } = kit;
    const first = { commandId: newCommandId(), orderId, rowVersion: null, ...arrivalFields };
    const { rowVersion } = await client.arrival.record(first);
    const commandId = newCommandId();
    await client.arrival.record({
      commandId,
      orderId,
      rowVersion,
      ...arrivalFields,
      strung: 'not-strung',
      notStrungBecause: 'it creaks',
    });
    await find(kit, 'stop');
    expect((await refused(kit, commandId)).message).toMatch(/^Do not string it/);
  });
});

describe('safe draw', () => {
  test('a target past what the bow can take is not put back', async () => {
    const kit = await undoShop();
    const done = await edit(kit, { targetDrawIn: 26, targetWeightLbf: 40 });
    await editBow(kit, { maxSafeDrawIn: 27, markedDrawIn: 27 });
    expect(await refused(kit, done)).toEqual({
      code: 'CONFLICT',
      message: 'The target draw of 28" is past the bow\'s maximum safe draw of 27".',
    });
  });

  test('a safe draw under what an order plans is not put back', async () => {
    const kit = await undoShop({ maxSafeDrawIn: 28 });
    const done = await editBow(kit, { maxSafeDrawIn: 30 });
    await edit(kit, { targetDrawIn: 29.5 });
    expect((await refused(kit, done)).message).toMatch(/plans a draw of 29.5"/);
  });

  test('a cancelled request is not taken up again past what the bow can take by now', async () => {
    const kit = await undoShop();
    const cancelled = await did(kit, 'orders.cancel');
    await editBow(kit, { maxSafeDrawIn: 27, markedDrawIn: 27 });
    expect((await refused(kit, cancelled)).message).toMatch(/28" is past the bow's maximum/);
  });

  test('a weighing past it does not count again', async () => {
    const kit = await undoShop();
    const { id, rowVersion } = await kit.flow.weigh(kit.scaleId, 'arrival', 52, { drawIn: 30 });
    const commandId = newCommandId();
    const struck = { commandId, id, rowVersion, reason: 'another bow' };
    await kit.client.readings.strikeOut(struck);
    await editBow(kit, { maxSafeDrawIn: 28 });
    expect((await refused(kit, commandId)).message).toMatch(/A pull of 30" is past/);
  });

  test('limbs that come off are not left on a one-piece bow', async () => {
    const kit = await undoShop();
    const done = await editBow(kit, { takeDown: 'bolted three-piece' });
    await kit.client.limbSets.add({
      commandId: newCommandId(),
      bowId: kit.bowId,
      name: 'Short limbs',
      upperSerial: '',
      lowerSerial: '',
      amoLengthIn: null,
      markedWeightLbf: null,
      markedDrawIn: null,
      markedDrawReference: 'amo',
      riserName: '',
      riserLengthIn: null,
      riserPadDeg: null,
      notes: '',
    });
    expect((await refused(kit, done)).message).toMatch(/limbs that come off/);
  });
});

describe('one at a time', () => {
  test('a hold is not opened beside another', async () => {
    const kit = await undoShop();
    const released = await did(kit, 'orders.release');
    await did(kit, 'orders.hold');
    expect((await refused(kit, released)).message).toMatch(/on hold again by now/);
  });

  test('a parcel is not taken up beside another', async () => {
    const kit = await undoShop();
    const struck = await did(kit, 'shipments.strikeOut');
    await did(kit, 'shipments.record');
    expect((await refused(kit, struck)).message).toMatch(/Another parcel goes out/);
  });

  test('two carriers of one name could not be told apart', async () => {
    const kit = await undoShop();
    const renamed = await did(kit, 'carriers.edit');
    await kit.client.carriers.addUsual({ commandId: newCommandId() });
    expect((await refused(kit, renamed)).message).toMatch(/another carrier named/);
  });

  test('two limb sets of one name could not be told apart', async () => {
    const kit = await undoShop();
    const renamed = await did(kit, 'limbSets.edit');
    await kit.client.limbSets.add({ commandId: newCommandId(), bowId: kit.bowId, ...limbs });
    expect((await refused(kit, renamed)).message).toMatch(/another limb set named "Medium limbs"/);
  });

  test('a list that came along and nothing that came along do not both stand', async () => {
    const kit = await undoShop();
    const { client, orderId } = kit;
    await client.arrival.record({
      commandId: newCommandId(),
      orderId,
      rowVersion: null,
      ...arrivalFields,
      nothingCameAlong: true,
    });
    const listed = await did(kit, 'arrival.addBelongings');
    await did(kit, 'arrival.addBelongings');
    expect((await refused(kit, listed)).message).toMatch(/list of what came along/);
  });

  test('a complete check keeps the list it rests on', async () => {
    const kit = await undoShop();
    const listed = await did(kit, 'arrival.addBelongings');
    const { client, orderId } = kit;
    const made = { commandId: newCommandId(), orderId, rowVersion: null, ...arrivalFields };
    const { rowVersion } = await client.arrival.record(made);
    const done = { commandId: newCommandId(), orderId, rowVersion };
    expect((await client.arrival.complete(done)).outcome).toBe('completed');
    expect((await refused(kit, listed)).message).toMatch(/check is complete and rests on this/);
  });
});

describe('consents', () => {
  const state = async (kit: UndoShop, kind: string) =>
    (await kit.flow.order()).consents.find((consent) => consent.kind === kind)?.state;

  test('one that a change outdated stands again only when the subject is the same again', async () => {
    const kit = await undoShop();
    await kit.flow.grant('price-and-scope');
    const done = await edit(kit, { estimateCents: 30_000 });
    expect(await state(kit, 'price-and-scope')).toBe('outdated');
    await undo(kit, done);
    expect(await state(kit, 'price-and-scope')).toBe('granted');
  });

  test('one that was given for another bow never counts for the bow that comes back', async () => {
    const kit = await undoShop();
    const exchanged = await did(kit, 'orders.identifyBow');
    await kit.flow.grant('alteration-acknowledgement');
    expect(await state(kit, 'alteration-acknowledgement')).toBe('granted');
    await undo(kit, exchanged);
    expect(await state(kit, 'alteration-acknowledgement')).toBe('outdated');
  });

  test('one given by another customer neither: the answer keeps the order with them', async () => {
    const kit = await undoShop();
    const given = await did(kit, 'orders.identifyCustomer');
    await kit.flow.grant('price-and-scope');
    expect((await refused(kit, given)).message).toMatch(/answered a consent already/);
  });
});
