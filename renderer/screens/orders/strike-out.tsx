import { Button } from '@mantine/core';
import { useState } from 'react';
import { ReasonForm } from '../../parts/reason-form.tsx';
import { useOrderCommand } from './use-order-command.ts';

interface StrikeOutInput {
  commandId: string;
  id: string;
  rowVersion: number;
  reason: string;
}

interface StrikeOutProps {
  /** What is struck out, for the button's name: `the weighing of 12 Dec`. */
  what: string;
  record: { id: string; rowVersion: number };
  fn: (input: StrikeOutInput) => Promise<unknown>;
}

/** Takes a record out of the count. It stays readable, with the reason. */
export function StrikeOut({ what, record, fn }: StrikeOutProps) {
  const [isOpen, setOpen] = useState(false);
  const command = useOrderCommand(fn, () => setOpen(false));
  if (!isOpen) {
    return (
      <Button
        variant="subtle"
        color="gray"
        c="dimmed"
        px={0}
        aria-label={`Strike out ${what}`}
        onClick={() => setOpen(true)}
      >
        Strike out
      </Button>
    );
  }
  return (
    <ReasonForm
      title={`Strike out ${what}`}
      label="Why does it not count?"
      submitLabel="Strike out"
      command={command}
      onCancel={() => setOpen(false)}
      onSubmit={(reason) =>
        void command.run({ id: record.id, rowVersion: record.rowVersion, reason })
      }
    />
  );
}
