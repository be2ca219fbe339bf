import { Button, Textarea } from '@mantine/core';
import { Link } from 'wouter';
import { arrivalMissing } from '../../../shared/arrival.ts';
import { api } from '../../api/client.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { useOrderCommand } from '../orders/use-order-command.ts';
import { SavedForm, TableStep } from './part.tsx';
import classes from './unpacking.module.css';
import { useUnsavedParts } from './unsaved.tsx';
import { useArrivalPart } from './use-arrival-part.ts';

const title = '7  Arrival check complete';

/** What is still missing, in one list, and the button that closes the check. */
export function CompleteStep() {
  const { order } = useOrder();
  const { arrival, belongings, card } = order;
  const note = useArrivalPart();
  const unsaved = useUnsavedParts().filter((part) => part !== title);
  const command = useOrderCommand(api.arrival.complete);
  const missing = arrivalMissing(arrival, belongings.length);
  const isComplete = arrival !== null && arrival.completedAt !== null;
  return (
    <TableStep title={title}>
      <SavedForm title={title} saveLabel="Save the note" part={note}>
        <Textarea
          label="Note, for the shop"
          maxLength={4000}
          value={note.value.note}
          error={note.errors.note}
          onChange={(event) => note.set({ note: event.currentTarget.value })}
        />
      </SavedForm>
      {unsaved.length === 0 ? null : (
        <Mark kind="attention">Typed and not saved yet: {unsaved.join('; ')}.</Mark>
      )}
      {arrival !== null && arrival.completedAt !== null ? (
        <Mark kind="done">
          Complete since {momentText(arrival.completedAt)}, {arrival.completedBy}. A change opens it
          again.
        </Mark>
      ) : (
        <MissingParts missing={missing} />
      )}
      <CommandError command={command} />
      {isComplete ? (
        <div className={classes.buttons}>
          <Button component={Link} href={`/orders/${card.id}`} h={56} size="md">
            Go on with the order
          </Button>
        </div>
      ) : (
        <div className={classes.buttons}>
          <Button
            h={56}
            size="md"
            disabled={missing.length > 0}
            loading={command.busy}
            onClick={() =>
              void command.run({ orderId: card.id, rowVersion: arrival?.rowVersion ?? 1 })
            }
          >
            The arrival check is complete
          </Button>
        </div>
      )}
    </TableStep>
  );
}

function MissingParts({ missing }: { missing: readonly string[] }) {
  if (missing.length === 0) return <Mark kind="done">Everything is there.</Mark>;
  return (
    <ul className={classes.missing} aria-label="Still missing" aria-live="polite">
      {missing.map((sentence) => (
        <li key={sentence}>
          <Mark kind="attention">{sentence}</Mark>
        </li>
      ))}
    </ul>
  );
}
