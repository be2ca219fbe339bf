import { api } from '../../../api/client.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { ReasonForm } from '../../../parts/reason-form.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import classes from './next-step.module.css';

interface ReasonDialogProps {
  title: string;
  label: string;
  submitLabel: string;
  /** What happens, one sentence each. */
  happens: readonly string[];
  fn: typeof api.orders.cancel;
  onDone: () => void;
}

function ReasonDialog({ title, label, submitLabel, happens, fn, onDone }: ReasonDialogProps) {
  const { id, rowVersion } = useOrder().order.card;
  const command = useOrderCommand(fn, onDone);
  return (
    <Dialog onClose={onDone} size="lg" title={title}>
      <p className={classes.text}>What happens:</p>
      <ul className={classes.happens} style={{ marginBottom: 16 }}>
        {happens.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <ReasonForm
        inDialog
        title={title}
        label={label}
        submitLabel={submitLabel}
        command={command}
        onCancel={onDone}
        onSubmit={(reason) => void command.run({ id, rowVersion, reason })}
      />
    </Dialog>
  );
}

export function CancelDialog({ onDone }: { onDone: () => void }) {
  const { hold } = useOrder().order.card;
  return (
    <ReasonDialog
      title="Cancel the request"
      label="Why does the bow not come?"
      submitLabel="Cancel the request"
      happens={[
        'The order is closed. Nothing is deleted, and its number is not used again.',
        'Should the bow come after all, the request can be taken up again.',
        ...(hold === null ? [] : ['The hold is released.']),
      ]}
      fn={api.orders.cancel}
      onDone={onDone}
    />
  );
}

export function TakeUpDialog({ onDone }: { onDone: () => void }) {
  const { stage } = useOrder().order.card;
  return (
    <ReasonDialog
      title="Take it up again"
      label="Why does the work go on?"
      submitLabel="Take it up again"
      happens={
        stage === 'cancelled'
          ? ['The request is open again, at its first stage.']
          : [
              'The order is back on its route of work, with every gate before it as usual.',
              stage === 'packed'
                ? 'It goes back to Arrived: unpack it and look at it anew.'
                : 'It stays in the stage it stands in.',
              'Consents that were declined or withdrawn stay so: ask again.',
            ]
      }
      fn={api.orders.takeUpAgain}
      onDone={onDone}
    />
  );
}
