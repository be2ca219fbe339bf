import { type ReactNode, useState } from 'react';
import { CommandError } from './command-error.tsx';
import { EditButtons } from './edit-buttons.tsx';

interface SaveCommand {
  busy: boolean;
  error: string | null;
  unanswered: boolean;
  details: Record<string, string>;
  again(): Promise<unknown>;
}

interface RecordFormProps<Value> {
  initial: Value;
  /** What is wrong, by field path; nothing is sent while there is something. */
  check: (value: Value) => Record<string, string>;
  command: SaveCommand;
  onSave: (value: Value) => void;
  onCancel?: (() => void) | undefined;
  action: string;
  children: (
    value: Value,
    onChange: (value: Value) => void,
    errors: Record<string, string>,
  ) => ReactNode;
}

/**
 * A form over one record. Errors show from the first try to save, beside their fields; what the
 * core refuses by field shows there too.
 */
export function RecordForm<Value>(props: RecordFormProps<Value>) {
  const { initial, check, command, onSave, onCancel, action, children } = props;
  const [value, setValue] = useState(initial);
  const [tried, setTried] = useState(false);
  const wrong = check(value);
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (Object.keys(wrong).length === 0) onSave(value);
        else focusFirstError(event.currentTarget);
      }}
    >
      {children(value, setValue, tried ? { ...command.details, ...wrong } : {})}
      <div style={{ marginTop: 16 }}>
        <CommandError command={command} />
      </div>
      <EditButtons action={action} busy={command.busy} onCancel={onCancel} />
    </form>
  );
}

/** The errors appear with the next paint; then the first field that has one takes the focus. */
function focusFirstError(form: HTMLFormElement): void {
  requestAnimationFrame(() => {
    form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  });
}
