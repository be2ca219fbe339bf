import { Mark } from '../../parts/mark.tsx';
import classes from './bench-command-error.module.css';
import { BigButton } from './big-button.tsx';

export interface FailedCommand {
  error: string | null;
  details: Record<string, string>;
  unanswered: boolean;
  busy: boolean;
  again(): Promise<unknown>;
  reset(): void;
}

/** What a command of the bench failed with. An answer that got lost is asked for again by itself. */
export function BenchCommandError({ command }: { command: FailedCommand }) {
  if (command.error === null) return null;
  const details = Object.values(command.details).filter((text) => text !== command.error);
  return (
    <div className={classes.error} role="alert">
      <Mark kind="stop">
        {command.unanswered
          ? 'The program does not answer. Your entry is kept here and is sent as soon as it does.'
          : [command.error, ...details].join(' ')}
      </Mark>
      {command.unanswered ? (
        <BigButton disabled={command.busy} onClick={() => void command.again()}>
          Send again
        </BigButton>
      ) : (
        <BigButton onClick={command.reset}>I have seen it</BigButton>
      )}
    </div>
  );
}
