import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { Belonging } from '../../../shared/contract/arrival.ts';
import { api } from '../../api/client.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { useOrderCommand } from '../orders/use-order-command.ts';
import classes from './unpacking.module.css';

/** One thing on the list. A slip is corrected; nothing is taken off, for it may have been there. */
export function BelongingLine({ belonging }: { belonging: Belonging }) {
  const { id, rowVersion, what, backAt } = belonging;
  const [typed, setTyped] = useState<string | null>(null);
  const command = useOrderCommand(api.arrival.correctBelonging, () => setTyped(null));
  if (typed === null) {
    return (
      <li className={classes.thing}>
        <span>{what}</span>
        {backAt === null ? (
          <Button variant="subtle" aria-label={`Correct: ${what}`} onClick={() => setTyped(what)}>
            Correct
          </Button>
        ) : (
          <Mark kind="done">Back in the box, {momentText(backAt)}</Mark>
        )}
      </li>
    );
  }
  return (
    <li className={classes.thing}>
      <form
        className={classes.step}
        aria-label={`Correct: ${what}`}
        onSubmit={(event) => {
          event.preventDefault();
          if (typed.trim() !== '') void command.run({ id, rowVersion, what: typed.trim() });
        }}
      >
        <TextInput
          label={`Instead of "${what}"`}
          data-autofocus
          maxLength={1000}
          autoComplete="off"
          value={typed}
          error={typed.trim() === '' ? 'This may not be empty.' : command.details.what}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
        <CommandError command={command} />
        <div className={classes.buttons}>
          <Button type="submit" loading={command.busy}>
            Correct it
          </Button>
          <Button variant="default" onClick={() => setTyped(null)}>
            Cancel
          </Button>
        </div>
      </form>
    </li>
  );
}
