import { Textarea } from '@mantine/core';
import { useState } from 'react';
import type { Incident } from '../../../../shared/contract/incidents.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { stillOpen } from './incident-words.ts';

/** Ends an incident once the owner knows and a remedy is agreed. */
export function SettleForm({ incident, onDone }: { incident: Incident; onDone: () => void }) {
  const { order } = useOrder();
  const [how, setHow] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.incidents.settle, onDone);
  const isThin = how.trim().length < 3;
  return (
    <FormBox
      title="Settle the incident"
      submitLabel="Settle it"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (isThin) return;
        void command.run({ id: incident.id, rowVersion: incident.rowVersion, how });
      }}
    >
      {stillOpen(incident, order.card.customerId === null).map((sentence) => (
        <Mark key={sentence} kind="attention">
          {sentence}
        </Mark>
      ))}
      <Textarea
        label="How it ended"
        description={
          incident.findingId === null
            ? undefined
            : 'The stop finding stays open until the bow is repaired and looked at again.'
        }
        required
        autosize
        minRows={2}
        maxLength={2000}
        value={how}
        error={isTried && isThin ? 'Say how it ended.' : command.details.how}
        onChange={(event) => setHow(event.currentTarget.value)}
      />
    </FormBox>
  );
}
