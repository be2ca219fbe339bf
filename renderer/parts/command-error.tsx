import { ErrorNote } from './notes.tsx';

interface FailedCommand {
  error: string | null;
  unanswered: boolean;
  busy: boolean;
  again(): Promise<unknown>;
}

/** What a command failed with. A lost answer may be sent again: the core carries it out once. */
export function CommandError({ command }: { command: FailedCommand }) {
  if (command.error === null) return null;
  return (
    <ErrorNote
      error={command.error}
      busy={command.busy}
      onAgain={command.unanswered ? () => void command.again() : undefined}
    />
  );
}
