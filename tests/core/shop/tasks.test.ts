import { expect, test } from 'vitest';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { editPerson } from '../../../core/shop/setup/people.ts';
import { addTask, changeTask, finishTask, reopenTask } from '../../../core/shop/tasks/tasks.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';

const fields = { what: 'Ask for the riser length', dueOn: '2026-03-09', forPersonId: null };

async function withTask(shop: TestShop) {
  const { id: orderId } = await takeIn(shop);
  const commandId = newCommandId();
  const added = await addTask(shop.as('bench'), { commandId, orderId, ...fields });
  const tasks = async () => (await getOrder(shop.owner, orderId)).tasks;
  const history = async () =>
    (await getOrder(shop.owner, orderId)).history
      .filter(({ kind }) => kind === 'task')
      .map(({ summary }) => summary);
  return { orderId, added, tasks, history };
}

test('a task stands on its order with who wrote it, and the history says so', async () => {
  const shop = await testShop();
  const { tasks, history } = await withTask(shop);
  expect(await tasks()).toMatchObject([
    {
      what: 'Ask for the riser length',
      dueOn: '2026-03-09',
      forPersonName: null,
      createdBy: 'Ben Marsh',
      doneAt: null,
    },
  ]);
  expect(await history()).toEqual(['Task for 2026-03-09: Ask for the riser length']);
});

test('it is changed, done with a note, and opened again', async () => {
  const shop = await testShop();
  const { added, tasks, history } = await withTask(shop);
  const forPersonId = shop.as('office').actor.personId;
  const changed = await changeTask(shop.owner, {
    commandId: newCommandId(),
    ...added,
    what: 'Call about the riser',
    dueOn: '2026-03-10',
    forPersonId,
  });
  expect(await tasks()).toMatchObject([
    { what: 'Call about the riser', forPersonName: 'Otto Reed' },
  ]);
  const done = await finishTask(shop.as('office'), {
    commandId: newCommandId(),
    ...changed,
    note: '23 in, bolted',
  });
  expect(await tasks()).toMatchObject([{ doneBy: 'Otto Reed', doneNote: '23 in, bolted' }]);
  await reopenTask(shop.owner, { commandId: newCommandId(), ...done });
  expect(await tasks()).toMatchObject([{ doneAt: null, doneBy: null, doneNote: '' }]);
  expect((await history()).toReversed().slice(1)).toEqual([
    'Task changed, for 2026-03-10: Call about the riser',
    'Task done: Call about the riser',
    'Task open again: Call about the riser',
  ]);
});

test('open tasks come first by their day, then what was done, newest first', async () => {
  const shop = await testShop();
  const { orderId, added, tasks } = await withTask(shop);
  const add = (what: string, dueOn: string) =>
    addTask(shop.owner, { commandId: newCommandId(), orderId, what, dueOn, forPersonId: null });
  const early = await add('early', '2026-03-01');
  await add('late', '2026-04-01');
  await finishTask(shop.owner, { commandId: newCommandId(), ...early, note: '' });
  await finishTask(shop.owner, { commandId: newCommandId(), ...added, note: '' });
  await add('middle', '2026-03-20');
  expect((await tasks()).map(({ what }) => what)).toEqual([
    'middle',
    'late',
    'Ask for the riser length',
    'early',
  ]);
});

test('what does not fit is refused in a sentence, and writes nothing', async () => {
  const shop = await testShop();
  const { orderId, added, tasks } = await withTask(shop);
  const commandId = newCommandId();
  await expect(
    changeTask(shop.owner, { commandId, ...added, rowVersion: 9, ...fields }),
  ).rejects.toMatchObject({ code: 'STALE' });
  await expect(
    reopenTask(shop.owner, { commandId: newCommandId(), ...added }),
  ).rejects.toMatchObject({ code: 'CONFLICT', message: 'This task is still open.' });
  await expect(
    addTask(shop.owner, { commandId: newCommandId(), ...fields, orderId: 'no-such-order' }),
  ).rejects.toMatchObject({ code: 'NOT_FOUND' });
  await editPerson(shop.owner, {
    commandId: newCommandId(),
    id: shop.as('bench').actor.personId,
    rowVersion: 1,
    name: 'Ben Marsh',
    initials: 'BM',
    role: 'bench',
    active: false,
  });
  await expect(
    addTask(shop.owner, {
      commandId: newCommandId(),
      ...fields,
      orderId,
      forPersonId: shop.as('bench').actor.personId,
    }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT', message: expect.stringContaining('has left') });
  expect(await tasks()).toHaveLength(1);
  const done = await finishTask(shop.owner, { commandId: newCommandId(), ...added, note: '' });
  await expect(
    finishTask(shop.owner, { commandId: newCommandId(), ...done, note: '' }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(
    changeTask(shop.owner, { commandId: newCommandId(), ...done, ...fields }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});
