import { Autocomplete, Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { Incident } from '../../../../shared/contract/incidents.ts';
import { api } from '../../../api/client.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { waysToReach } from '../ways-to-reach.ts';
import { fieldsOf, type IncidentFields, requestOf } from './incident-fields.ts';

type Details = Record<string, string>;

interface GroupProps {
  fields: IncidentFields;
  set: (part: Partial<IncidentFields>) => void;
  details: Details;
}

function OwnerFields({ fields, set, details }: GroupProps) {
  const { order } = useOrder();
  return (
    <>
      {order.card.customerId === null ? null : (
        <FieldGrid>
          <TextInput
            type="date"
            label="Customer told on"
            value={fields.ownerToldOn}
            error={details.ownerToldOn}
            onChange={(event) => set({ ownerToldOn: event.currentTarget.value })}
          />
          <Autocomplete
            size="md"
            label="How"
            maxLength={200}
            data={waysToReach(order.customer)}
            value={fields.ownerToldHow}
            error={details.ownerToldHow}
            onChange={(ownerToldHow) => set({ ownerToldHow })}
          />
        </FieldGrid>
      )}
      <Textarea
        label="Remedy agreed"
        description="What is done about it, and who pays."
        autosize
        minRows={2}
        maxLength={2000}
        value={fields.remedy}
        error={details.remedy}
        onChange={(event) => set({ remedy: event.currentTarget.value })}
      />
    </>
  );
}

function ClaimFields({ fields, set, details }: GroupProps) {
  return (
    <FieldGrid>
      <TextInput
        label="Claim with"
        maxLength={200}
        value={fields.claimWith}
        error={details.claimWith}
        onChange={(event) => set({ claimWith: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label="Last day of the claim"
        value={fields.claimUntil}
        error={details.claimUntil}
        onChange={(event) => set({ claimUntil: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label="Claim filed on"
        value={fields.claimFiledOn}
        error={details.claimFiledOn}
        onChange={(event) => set({ claimFiledOn: event.currentTarget.value })}
      />
      <TextInput
        label="Claim number"
        maxLength={120}
        value={fields.claimNumber}
        error={details.claimNumber}
        onChange={(event) => set({ claimNumber: event.currentTarget.value })}
      />
    </FieldGrid>
  );
}

/** How an incident goes on: owner told, remedy, claim. */
export function StoryForm({ incident, onDone }: { incident: Incident; onDone: () => void }) {
  const [fields, setFields] = useState(() => fieldsOf(incident));
  const command = useOrderCommand(api.incidents.edit, onDone);
  const [isTried, setTried] = useState(false);
  const isThin = fields.what.trim().length < 3;
  const group = {
    fields,
    set: (part: Partial<IncidentFields>) => setFields((now) => ({ ...now, ...part })),
    details: command.details,
  };
  return (
    <FormBox
      title="What was done about it"
      submitLabel="Keep it"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (!isThin) void command.run(requestOf(incident, fields));
      }}
    >
      <OwnerFields {...group} />
      <ClaimFields {...group} />
      <Textarea
        label="What happened"
        required
        autosize
        minRows={2}
        maxLength={2000}
        value={fields.what}
        error={isTried && isThin ? 'Say what happened.' : command.details.what}
        onChange={(event) => group.set({ what: event.currentTarget.value })}
      />
    </FormBox>
  );
}
