import { Autocomplete, Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { HoldDetail } from '../../../../shared/contract/holds.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { waysToReach } from '../ways-to-reach.ts';

/** Writes down a reminder that went out, and when the next is due. */
export function RemindForm({ hold, onDone }: { hold: HoldDetail; onDone: () => void }) {
  const { order } = useOrder();
  const [how, setHow] = useState('');
  const [note, setNote] = useState('');
  const [nextOn, setNextOn] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.orders.remind, onDone);
  const isThin = how.trim() === '';
  const usual =
    hold.kind === 'customer'
      ? "Empty for the next of the shop's days"
      : 'Empty for a week from now';
  return (
    <FormBox
      title="Record a reminder"
      submitLabel="Record the reminder"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (isThin) return;
        const { id, rowVersion } = order.card;
        const next = nextOn === '' ? {} : { nextOn };
        void command.run({ id, rowVersion, how: how.trim(), note, ...next });
      }}
    >
      <Autocomplete
        size="md"
        label="How"
        description="The program sends nothing by itself."
        required
        maxLength={120}
        data={hold.kind === 'customer' ? waysToReach(order.customer) : []}
        value={how}
        error={isTried && isThin ? 'Say how.' : command.details.how}
        onChange={setHow}
      />
      <Textarea
        label="What was said"
        maxLength={1000}
        value={note}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <TextInput
        type="date"
        label="Remind again on"
        description={usual}
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        value={nextOn}
        error={command.details.nextOn}
        onChange={(event) => setNextOn(event.currentTarget.value)}
      />
    </FormBox>
  );
}
