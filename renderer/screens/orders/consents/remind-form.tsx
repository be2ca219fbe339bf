import { Autocomplete, Textarea } from '@mantine/core';
import { useState } from 'react';
import { consentLabels } from '../../../../shared/consents.ts';
import type { Consent } from '../../../../shared/contract/consents.ts';
import { api } from '../../../api/client.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { waysToReach } from '../ways-to-reach.ts';

/** Writes down that the customer was reminded of what has no answer. */
export function RemindForm({ consent, onDone }: { consent: Consent; onDone: () => void }) {
  const { order } = useOrder();
  const [how, setHow] = useState('');
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.consents.remind, onDone);
  const missing = how.trim() === '' ? 'Say how.' : undefined;
  return (
    <FormBox
      title={`Reminder: ${consentLabels[consent.kind].toLowerCase()}`}
      submitLabel="Record the reminder"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (missing === undefined) void command.run({ consentId: consent.id, how, note });
      }}
    >
      <Autocomplete
        size="md"
        label="How the customer was reminded"
        required
        maxLength={200}
        data={waysToReach(order.customer)}
        value={how}
        error={isTried ? (missing ?? command.details.how) : undefined}
        onChange={setHow}
      />
      <Textarea
        label="What was said"
        maxLength={1000}
        value={note}
        error={command.details.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}
