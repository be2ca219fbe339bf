import { Button } from '@mantine/core';
import { useState } from 'react';
import type { Command } from '../api/command.ts';
import { ReasonForm } from './reason-form.tsx';

export interface StrikeOutInput {
  commandId: string;
  id: string;
  rowVersion: number;
  reason: string;
}

interface StrikeOutButtonProps {
  /** What is struck out, for the button's name: `the weighing of 12 Dec`. */
  what: string;
  record: { id: string; rowVersion: number };
  command: Command<StrikeOutInput, unknown>;
}

/** Takes a record out of the count. It stays readable, with the reason. */
export function StrikeOutButton({ what, record, command }: StrikeOutButtonProps) {
  const [isOpen, setOpen] = useState(false);
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
      onSubmit={async (reason) => {
        const { id, rowVersion } = record;
        if ((await command.run({ id, rowVersion, reason })) !== undefined) setOpen(false);
      }}
    />
  );
}
