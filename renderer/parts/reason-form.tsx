import { Textarea } from '@mantine/core';
import { useState } from 'react';
import type { CommandError } from './command-error.tsx';
import { FormBox } from './form-box.tsx';

interface ReasonFormProps {
  title: string;
  label: string;
  submitLabel: string;
  command: Parameters<typeof CommandError>[0]['command'] & { details: Record<string, string> };
  /** Inside a dialog that bears the title. */
  inDialog?: boolean;
  onSubmit: (reason: string) => void;
  onCancel: () => void;
}

const shortest = 3;

/** Asks for a reason in a few words, as every step back, strike-out and exception needs one. */
export function ReasonForm(props: ReasonFormProps) {
  const { title, label, submitLabel, command, inDialog = false, onSubmit, onCancel } = props;
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const missing = reason.trim().length < shortest ? 'Give the reason in a few words.' : undefined;
  return (
    <FormBox
      title={title}
      plain={inDialog}
      hideTitle={inDialog}
      submitLabel={submitLabel}
      command={command}
      onCancel={onCancel}
      onSubmit={() => {
        setTried(true);
        if (missing === undefined) onSubmit(reason.trim());
      }}
    >
      <Textarea
        label={label}
        description="It is kept in the history of the order."
        required
        maxLength={400}
        value={reason}
        error={(isTried ? missing : undefined) ?? command.details.reason}
        onChange={(event) => setReason(event.currentTarget.value.replaceAll('\n', ' '))}
      />
    </FormBox>
  );
}
