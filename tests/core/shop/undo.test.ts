import { describe, expect, test } from 'vitest';
import { undoable } from '../../../core/shop/undo/undoable.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { recordRows } from '../../support/table-rows.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { arrivalFields, undoCases } from '../../support/undo-cases.ts';
import { type UndoShop, undoShop } from '../../support/undo-shop.ts';

const undo = (kit: UndoShop, of: string, as = kit.client) =>
  as.undo.undo({ commandId: newCommandId(), of });

/** The refusal, with the proof that nothing was written by it. */
async function refused(kit: UndoShop, of: string, as = kit.client) {
  const before = await recordRows(kit.shop);
  const error = await undo(kit, of, as).then(
    () => null,
    (thrown: { code: string; message: string }) => thrown,
  );
  expect(await recordRows(kit.shop)).toEqual(before);
  return { code: error?.code, message: error?.message ?? 'it was undone' };
}

async function did(kit: UndoShop, name: string): Promise<string> {
  const act = await undoCases[name]?.(kit);
  const commandId = newCommandId();
  await act?.(commandId);
  return commandId;
}

const orderAt = async (kit: UndoShop) => ({ id: kit.orderId, rowVersion: await kit.version() });

async function edit(kit: UndoShop, change: Partial<typeof orderFields>, as = kit.client) {
  const commandId = newCommandId();
  await as.orders.edit({ commandId, ...(await orderAt(kit)), ...orderFields, ...change });
  return commandId;
}

async function moved(kit: UndoShop, to: 'in-mail' | 'arrived' | 'agreed' | 'requested') {
  const commandId = newCommandId();
  const result = await kit.client.orders.move({
    commandId,
    ...(await orderAt(kit)),
    to,
    reason: 'as it is',
    override: { reason: 'as it is' },
  });
  expect(result.outcome).toBe('moved');
  return commandId;
}

async function editBow(kit: UndoShop, change: Partial<typeof bowFields>) {
  const { bow } = await kit.client.bows.get({ id: kit.bowId });
  const commandId = newCommandId();
  const { rowVersion } = bow;
  await kit.client.bows.edit({ commandId, id: kit.bowId, rowVersion, ...bowFields, ...change });
  return commandId;
}

async function find(kit: UndoShop, grade: 'cosmetic' | 'watch' | 'stop', as = kit.client) {
  const commandId = newCommandId();
  const fields = { orderId: kit.orderId, grade, place: 'upper fade', note: 'a fine line' };
  return { commandId, ...(await as.findings.add({ commandId, ...fields })) };
}

const latestLine = async (kit: UndoShop) => (await kit.flow.order()).history[0];

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
    await kit.client.entries.record({
      commandId,
      orderId: kit.orderId,
      item: 'glass-check',
      outcome: 'not-ok',
      doneOn: '2026-03-02',
      note: 'strands lifted',
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
