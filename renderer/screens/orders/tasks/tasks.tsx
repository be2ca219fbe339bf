import { Button } from '@mantine/core';
import { useState } from 'react';
import { api } from '../../../api/client.ts';
import { useWho } from '../../../api/who.ts';
import { today } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { OrderSection } from '../order-section.tsx';
import { tasksState } from '../section-states.ts';
import { useOrderCommand } from '../use-order-command.ts';
import { TaskForm } from './task-form.tsx';
import { DoneTask, OpenTask } from './task-item.tsx';

function AddForm({ onClose }: { onClose: () => void }) {
  const { order } = useOrder();
  const me = useWho();
  const command = useOrderCommand(api.tasks.add, onClose);
  return (
    <TaskForm
      title="Add a task"
      submitLabel="Add a task"
      initial={{ what: '', dueOn: today(), forPersonId: me?.id ?? null }}
      command={command}
      onCancel={onClose}
      onSubmit={(fields) => void command.run({ orderId: order.card.id, ...fields })}
    />
  );
}

/** What is to be done for this order by a day; it shows on Today when its day comes near. */
export function OrderTasks() {
  const { order } = useOrder();
  const [isAdding, setAdding] = useState(false);
  const open = order.tasks.filter(({ doneAt }) => doneAt === null);
  const done = order.tasks.filter(({ doneAt }) => doneAt !== null);
  return (
    <OrderSection
      place="tasks"
      title="Tasks"
      state={tasksState(order)}
      isBusy={isAdding}
      actions={
        isAdding ? null : (
          <Button variant="default" onClick={() => setAdding(true)}>
            Add a task
          </Button>
        )
      }
    >
      {isAdding || order.tasks.length > 0 ? (
        <>
          {isAdding ? <AddForm onClose={() => setAdding(false)} /> : null}
          <ul className={classes.list}>
            {open.map((task) => (
              <OpenTask key={task.id} task={task} />
            ))}
          </ul>
          {done.length === 0 ? null : (
            <Fold title={`Done (${done.length})`}>
              <ul className={classes.list}>
                {done.map((task) => (
                  <DoneTask key={task.id} task={task} />
                ))}
              </ul>
            </Fold>
          )}
        </>
      ) : null}
    </OrderSection>
  );
}
