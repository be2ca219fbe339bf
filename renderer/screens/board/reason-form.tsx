import { Button, Group, Stack, Textarea } from '@mantine/core';
import { useState } from 'react';

interface ReasonFormProps {
  label: string;
  action: string;
  busy: boolean;
  onReason: (reason: string) => void;
  onCancel: () => void;
}

/** Asks for a reason in a few words; it goes into the history. */
export function ReasonForm({ label, action, busy, onReason, onCancel }: ReasonFormProps) {
  const [reason, setReason] = useState('');
  const [tried, setTried] = useState(false);
  const text = reason.replace(/\s+/g, ' ').trim();
  const tooShort = text.length < 3;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (!tooShort) onReason(text);
      }}
    >
      <Stack>
        <Textarea
          label={label}
          description="It is kept in the history of the order."
          data-autofocus
          maxLength={400}
          value={reason}
          error={tried && tooShort ? 'Give the reason in a few words.' : null}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
        <Group>
          <Button type="submit" loading={busy}>
            {action}
          </Button>
          <Button variant="default" onClick={onCancel}>
            Cancel
          </Button>
        </Group>
      </Stack>
    </form>
  );
}
