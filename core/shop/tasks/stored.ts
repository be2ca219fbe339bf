import type { Task } from '../../../shared/contract/tasks.ts';
import type { OpenShop } from '../../storage/context.ts';

/** Tasks of one order: open ones first, by their day, then what was done, newest first. */
export async function tasksOf(shop: OpenShop, orderId: string): Promise<Task[]> {
  const rows = await shop.read
    .selectFrom('task')
    .innerJoin('person as maker', 'maker.id', 'task.created_by')
    .leftJoin('person as worker', 'worker.id', 'task.for_person_id')
    .leftJoin('person as doer', 'doer.id', 'task.done_by')
    .selectAll('task')
    .select(['maker.name as maker', 'worker.name as worker', 'doer.name as doer'])
    .where('order_id', '=', orderId)
    .orderBy((eb) => eb('done_at', 'is not', null))
    .orderBy('done_at', 'desc')
    .orderBy('due_on')
    .orderBy('task.id')
    .limit(500)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    rowVersion: row.row_version,
    orderId: row.order_id,
    what: row.what,
    dueOn: row.due_on,
    forPersonId: row.for_person_id,
    forPersonName: row.worker,
    createdAt: row.created_at,
    createdBy: row.maker,
    doneAt: row.done_at,
    doneBy: row.doer,
    doneNote: row.done_note,
  }));
}
