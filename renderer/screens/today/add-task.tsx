import { notifications } from '@mantine/notifications';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { queryClient } from '../../api/queries.ts';
import { TaskForm } from '../orders/tasks/task-form.tsx';
import { laterText } from './words.ts';

interface AddTaskProps {
  day: string;
  times: number;
  onClose: () => void;
}

/** A task that is of no order; those of an order are added on its page. */
export function AddTask({ day, times, onClose }: AddTaskProps) {
  const command = useCommand(api.tasks.add, {
    onDone: () => {
      void queryClient.invalidateQueries({ queryKey: orpc.today.key() });
      onClose();
    },
  });
  return (
    <TaskForm
      title="Add a task"
      submitLabel="Add the task"
      initial={{ what: '', dueOn: day, forPersonId: null }}
      command={command}
      times={times}
      onCancel={onClose}
      onSubmit={async (fields) => {
        const added = await command.run({ orderId: null, ...fields });
        const later = laterText(fields.dueOn);
        if (added !== undefined && later !== null) notifications.show({ message: later });
      }}
    />
  );
}
