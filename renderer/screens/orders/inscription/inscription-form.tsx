import { Button, Textarea } from '@mantine/core';
import { useState } from 'react';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { VoidsNote } from '../consents/voids-note.tsx';
import type { Opening } from '../open-forms.ts';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { ComposeButtons } from './compose-buttons.tsx';

/** Changes the lines. Somebody else's change in the meantime is shown, never written over unseen. */
export function InscriptionForm({ opening }: { opening: Opening }) {
  const { order, close } = useOrder();
  const [base, setBase] = useState(order.inscription);
  const [lines, setLines] = useState(order.inscription);
  const command = useOrderCommand(api.orders.setInscription, () => close('inscription'));
  const isOvertaken = order.inscription !== base;
  const { id, rowVersion } = order.card;
  return (
    <FormBox
      title="Lines to be written on the bow"
      submitLabel="Save the lines"
      command={command}
      times={opening.times}
      onCancel={() => close('inscription')}
      onSubmit={() => {
        if (!isOvertaken) void command.run({ id, rowVersion, inscription: lines });
      }}
    >
      <ComposeButtons
        onAdd={(line) =>
          setLines((now) => (now.trim() === '' ? line : `${now.trimEnd()}\n${line}`))
        }
      />
      <Textarea
        label="Exactly as it shall read, line by line"
        description={'For example AMO 66" on one line and 45# @ 28" on the next.'}
        maxLength={400}
        minRows={3}
        value={lines}
        error={command.details.inscription}
        onChange={(event) => setLines(event.currentTarget.value)}
      />
      <VoidsNote orderId={id} change={{ inscription: lines }} />
      {isOvertaken ? (
        <div role="alert">
          <Mark kind="attention">Somebody changed the lines meanwhile; they stand above.</Mark>
          <Button variant="default" mt="xs" onClick={() => setBase(order.inscription)}>
            Use mine instead
          </Button>
        </div>
      ) : null}
    </FormBox>
  );
}
