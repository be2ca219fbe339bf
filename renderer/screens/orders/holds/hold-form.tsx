import { Select, Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import { type Hold, holdKinds } from '../../../../shared/contract/holds.ts';
import { api } from '../../../api/client.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { holdLabels } from './hold-words.ts';

const kinds = holdKinds.map((value) => ({ value, label: holdLabels[value] }));

export function HoldForm({ onDone }: { onDone: () => void }) {
  const { order } = useOrder();
  const [kind, setKind] = useState<Hold['kind']>('customer');
  const [reason, setReason] = useState('');
  const [remindOn, setRemindOn] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.orders.hold, onDone);
  const isThin = reason.trim().length < 3;
  return (
    <FormBox
      title="Put on hold"
      submitLabel="Put on hold"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (isThin) return;
        const { id, rowVersion } = order.card;
        void command.run({ id, rowVersion, kind, reason, remindOn: remindOn || null });
      }}
    >
      <FieldGrid>
        <Select
          label="Why it waits"
          data={kinds}
          value={kind}
          onChange={(value) => value && setKind(value)}
        />
        <TextInput
          type="date"
          label="Remind on"
          description={
            kind === 'customer' ? "Empty for the shop's reminder days" : 'Empty for no reminder'
          }
          inputWrapperOrder={['label', 'input', 'description', 'error']}
          value={remindOn}
          error={command.details.remindOn}
          onChange={(event) => setRemindOn(event.currentTarget.value)}
        />
      </FieldGrid>
      <Textarea
        label="Reason"
        required
        maxLength={400}
        value={reason}
        error={isTried && isThin ? 'Give the reason in a few words.' : command.details.reason}
        onChange={(event) => setReason(event.currentTarget.value.replaceAll('\n', ' '))}
      />
    </FormBox>
  );
}
