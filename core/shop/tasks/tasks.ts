import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { TaskRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';

type Inputs = ContractInputs['tasks'];

async function readTask(trx: CommandTransaction, id: string): Promise<TaskRow> {
  const row = await trx.db.selectFrom('task').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('task', id);
  trx.about({ orderId: row.order_id });
  return row;
}

/** A task is for somebody who works here. @throws ShopError NOT_FOUND or BAD_INPUT. */
async function refuseOddPerson(trx: CommandTransaction, personId: string | null): Promise<void> {
  if (personId === null) return;
  const person = await trx.db
    .selectFrom('person')
    .select(['name', 'active'])
    .where('id', '=', personId)
    .executeTakeFirst();
  if (person === undefined) throw notFound('person', personId);
  if (person.active === 0) {
    const sentence = `${person.name} has left. Choose somebody who works here.`;
    throw new ShopError('BAD_INPUT', sentence, { forPersonId: sentence });
  }
}

async function tell(
  trx: CommandTransaction,
  ctx: ShopContext,
  task: TaskRow,
  summary: string,
  reason = '',
): Promise<void> {
  if (task.order_id === null) return;
  await note(trx, ctx, task.order_id, {
    kind: 'task',
    summary: `${summary}: ${task.what}`,
    reason: reason === '' ? null : reason,
  });
}

export function addTask(ctx: ShopContext, input: Inputs['add']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'tasks.add' }, async (trx) => {
    if (input.orderId !== null) await readOrder(trx.db, input.orderId);
    trx.about({ orderId: input.orderId });
    await refuseOddPerson(trx, input.forPersonId);
    const row = await trx.insert('task', {
      id: ctx.newId(),
      order_id: input.orderId,
      what: input.what,
      due_on: input.dueOn,
      for_person_id: input.forPersonId,
      created_at: trx.at,
      created_by: ctx.actor.personId,
      done_at: null,
      done_by: null,
      done_note: '',
    });
    await tell(trx, ctx, row, `Task for ${row.due_on}`);
    return changedOf(row);
  });
}

export function changeTask(ctx: ShopContext, input: Inputs['change']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'tasks.change' }, async (trx) => {
    const before = await readTask(trx, input.id);
    if (before.done_at !== null) {
      throw new ShopError('CONFLICT', 'This task is done. Open it again to change it.');
    }
    if (input.forPersonId !== before.for_person_id) await refuseOddPerson(trx, input.forPersonId);
    const row = await trx.update('task', before.id, input.rowVersion, {
      what: input.what,
      due_on: input.dueOn,
      for_person_id: input.forPersonId,
    });
    await tell(trx, ctx, row, `Task changed, for ${row.due_on}`);
    return changedOf(row);
  });
}

export function finishTask(ctx: ShopContext, input: Inputs['done']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'tasks.done' }, async (trx) => {
    const before = await readTask(trx, input.id);
    if (before.done_at !== null) throw new ShopError('CONFLICT', 'This task is already done.');
    const row = await trx.update('task', before.id, input.rowVersion, {
      done_at: trx.at,
      done_by: ctx.actor.personId,
      done_note: input.note,
    });
    await tell(trx, ctx, row, 'Task done', input.note);
    return changedOf(row);
  });
}

export function reopenTask(ctx: ShopContext, input: Inputs['reopen']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'tasks.reopen' }, async (trx) => {
    const before = await readTask(trx, input.id);
    if (before.done_at === null) throw new ShopError('CONFLICT', 'This task is still open.');
    const row = await trx.update('task', before.id, input.rowVersion, {
      done_at: null,
      done_by: null,
      done_note: '',
    });
    await tell(trx, ctx, row, 'Task open again');
    return changedOf(row);
  });
}
