import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { Task } from '../../../../shared/contract/tasks.ts';
import { api } from '../../../api/client.ts';
import { CommandError } from '../../../parts/command-error.tsx';
import { daysUntil, dueText, momentText } from '../../../parts/days.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import classes from '../order-page.module.css';
import { useOrderCommand } from '../use-order-command.ts';
import { TaskForm } from './task-form.tsx';

type Doing = 'change' | 'done' | null;

function DoneForm({ task, onClose }: { task: Task; onClose: () => void }) {
  const [note, setNote] = useState('');
  const command = useOrderCommand(api.tasks.done, onClose);
  return (
    <FormBox
      title={`Done: ${task.what}`}
      submitLabel="Done"
      command={command}
      onCancel={onClose}
      onSubmit={() => void command.run({ id: task.id, rowVersion: task.rowVersion, note })}
    >
      <TextInput
        label="What came of it"
        description="May stay empty."
        maxLength={400}
        autoComplete="off"
        value={note}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}

function ChangeForm({ task, onClose }: { task: Task; onClose: () => void }) {
  const { id, rowVersion, what, dueOn, forPersonId } = task;
  const command = useOrderCommand(api.tasks.change, onClose);
  return (
    <TaskForm
      title="Change the task"
      submitLabel="Save"
      initial={{ what, dueOn, forPersonId }}
      command={command}
      onCancel={onClose}
      onSubmit={(fields) => void command.run({ id, rowVersion, ...fields })}
    />
  );
}

/** One task that is still to be done. */
export function OpenTask({ task }: { task: Task }) {
  const [doing, setDoing] = useState<Doing>(null);
  const close = () => setDoing(null);
  const due = dueText(task.dueOn);
  return (
    <li className={classes.item}>
      {daysUntil(task.dueOn) < 0 ? <Mark kind="attention">{due}</Mark> : <strong>{due}</strong>}
      <p className={classes.words}>{task.what}</p>
      {task.forPersonName === null ? null : (
        <p className={classes.quiet}>For {task.forPersonName}</p>
      )}
      {doing === 'change' ? <ChangeForm task={task} onClose={close} /> : null}
      {doing === 'done' ? <DoneForm task={task} onClose={close} /> : null}
      {doing === null ? (
        <div className={classes.buttons} style={{ marginTop: 8 }}>
          <Button
            variant="default"
            aria-label={`Done: ${task.what}`}
            onClick={() => setDoing('done')}
          >
            Done
          </Button>
          <Button
            variant="subtle"
            aria-label={`Change: ${task.what}`}
            onClick={() => setDoing('change')}
          >
            Change
          </Button>
        </div>
      ) : null}
    </li>
  );
}

/** One task that was done, by whom and when. */
export function DoneTask({ task }: { task: Task }) {
  const command = useOrderCommand(api.tasks.reopen);
  const { id, rowVersion } = task;
  return (
    <li className={classes.item}>
      <Mark kind="done">{task.what}</Mark>
      <p className={classes.quiet}>
        {momentText(task.doneAt ?? task.createdAt)}, {task.doneBy}
        {task.doneNote === '' ? '' : `: ${task.doneNote}`}
      </p>
      <CommandError command={command} />
      <Button
        variant="subtle"
        loading={command.busy}
        aria-label={`Open again: ${task.what}`}
        onClick={() => void command.run({ id, rowVersion })}
      >
        Open again
      </Button>
    </li>
  );
}
