import { expect, test } from 'vitest';
import { type NamedTask, ownTask } from '../../../core/shop/today/own-tasks.ts';
import { order } from './rows.ts';

const task = (change: Partial<NamedTask> = {}): NamedTask => ({
  id: 'task-1',
  row_version: 3,
  order_id: null,
  what: 'Order leather',
  due_on: '2026-11-25',
  for_person_id: null,
  personName: null,
  created_at: '2026-11-20T15:00:00.000Z',
  created_by: 'person-1',
  done_at: null,
  done_by: null,
  done_note: '',
  ...change,
});
const day = '2026-11-25';

test('a task of no order is for the office and carries what "Done" needs', () => {
  expect(ownTask(task(), null, day)).toEqual([
    {
      kind: 'task',
      group: 'today',
      orderId: null,
      number: null,
      who: '',
      what: 'Order leather',
      dueOn: day,
      since: null,
      forRoom: 'office',
      forPersonId: null,
      forPersonName: null,
      taskId: 'task-1',
      taskRowVersion: 3,
      consumableId: null,
      opens: null,
    },
  ]);
});

test('a task of an order is for the room that has the bow, even after it left', () => {
  const mine = task({ order_id: 'order-1', for_person_id: 'person-2', personName: 'Ben Marsh' });
  expect(ownTask(mine, order(), day)).toMatchObject([
    { orderId: 'order-1', forRoom: 'bench', forPersonName: 'Ben Marsh', opens: 'tasks' },
  ]);
  expect(ownTask(mine, order({ stage: 'shipped' }), day)).toHaveLength(1);
});

test('done, or more than a week ahead, it is not told', () => {
  expect(ownTask(task({ done_at: '2026-11-25T10:00:00.000Z' }), null, day)).toEqual([]);
  expect(ownTask(task({ due_on: '2026-12-03' }), null, day)).toEqual([]);
  expect(ownTask(task({ due_on: '2026-12-02' }), null, day)).toMatchObject([{ group: 'soon' }]);
  expect(ownTask(task({ due_on: '2026-11-01' }), null, day)).toMatchObject([{ group: 'late' }]);
});
