import { Select, TextInput } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { orpc } from '../../../api/client.ts';
import type { CommandError } from '../../../parts/command-error.tsx';
import { FieldGrid, WideField } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { type TaskFields, taskErrors } from './task-fields.ts';

const nobody = { value: '', label: 'Whoever is there' };

interface TaskFormProps {
  title: string;
  submitLabel: string;
  initial: TaskFields;
  command: Parameters<typeof CommandError>[0]['command'] & { details: Record<string, string> };
  onSubmit: (fields: TaskFields) => void;
  onCancel: () => void;
  times?: number;
}

/** Words, a day, and for whom: the same for a task of an order and for one of none. */
export function TaskForm(props: TaskFormProps) {
  const { title, submitLabel, initial, command, onSubmit, onCancel, times = 1 } = props;
  const [fields, setFields] = useState(initial);
  const [isTried, setTried] = useState(false);
  const people = useQuery(orpc.people.list.queryOptions());
  const set = (part: Partial<TaskFields>) => setFields({ ...fields, ...part });
  const wrong = taskErrors(fields);
  const errors = isTried ? { ...command.details, ...wrong } : command.details;
  const choices = (people.data ?? [])
    .filter(({ id, active }) => active || id === initial.forPersonId)
    .map(({ id, name }) => ({ value: id, label: name }));
  return (
    <FormBox
      title={title}
      submitLabel={submitLabel}
      command={command}
      times={times}
      onCancel={onCancel}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length === 0) onSubmit({ ...fields, what: fields.what.trim() });
      }}
    >
      <FieldGrid>
        <WideField>
          <TextInput
            label="What"
            placeholder="Call about the riser"
            required
            maxLength={400}
            autoComplete="off"
            value={fields.what}
            error={errors.what}
            onChange={(event) => set({ what: event.currentTarget.value })}
          />
        </WideField>
        <TextInput
          type="date"
          label="On"
          required
          value={fields.dueOn}
          error={errors.dueOn}
          onChange={(event) => set({ dueOn: event.currentTarget.value })}
        />
        <Select
          label="For"
          data={[nobody, ...choices]}
          value={fields.forPersonId ?? ''}
          error={errors.forPersonId}
          onChange={(value) => set({ forPersonId: value === null || value === '' ? null : value })}
        />
      </FieldGrid>
    </FormBox>
  );
}
