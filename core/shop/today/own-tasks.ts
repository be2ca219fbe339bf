import type { TodayItem } from '../../../shared/contract/today.ts';
import type { Room } from '../../../shared/stages.ts';
import type { TaskRow } from '../../storage/tables.ts';
import { oneLine } from '../orders/history.ts';
import { dueGroup } from './calendar.ts';
import { about, type TodayOrder } from './item.ts';

/** A task, with the name of the person it is for. */
export interface NamedTask extends TaskRow {
  personName: string | null;
}

/** Room of a task that belongs to no order. */
const orderlessRoom: Room = 'office';

/** Reminders that people wrote themselves; a task of a closed order counts as any other. */
export function ownTask(task: NamedTask, order: TodayOrder | null, day: string): TodayItem[] {
  const group = task.done_at === null ? dueGroup(task.due_on, day) : null;
  if (group === null) return [];
  const own = {
    forPersonId: task.for_person_id,
    forPersonName: task.personName,
    taskId: task.id,
    taskRowVersion: task.row_version,
  };
  const said = { kind: 'task', group, what: task.what, dueOn: task.due_on } as const;
  if (order !== null) return [{ ...about(order, { ...said, opens: 'tasks' }), ...own }];
  const what = oneLine(task.what, 600);
  const nobody = {
    orderId: null,
    number: null,
    who: '',
    since: null,
    consumableId: null,
    opens: null,
  };
  return [{ ...said, ...nobody, what, forRoom: orderlessRoom, ...own }];
}
