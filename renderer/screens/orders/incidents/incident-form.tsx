import { Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { IncidentKind } from '../../../../shared/incidents.ts';
import { api } from '../../../api/client.ts';
import { today } from '../../../parts/days.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { FindingPlaceFields } from '../findings/finding-place-fields.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { IncidentKindField } from './incident-kind-field.tsx';
import { needsPlace } from './incident-words.ts';
import {
  isInTransit,
  type NewIncident,
  newIncident,
  newIncidentErrors,
  newIncidentRequest,
} from './new-incident.ts';

interface FieldsProps {
  fields: NewIncident;
  set: (part: Partial<NewIncident>) => void;
  details: Record<string, string>;
}

function ClaimStart({ fields, set, details }: FieldsProps) {
  return (
    <FieldGrid>
      <TextInput
        label="Claim with"
        description="Empty for the carrier of the parcel"
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        maxLength={200}
        value={fields.claimWith}
        error={details.claimWith}
        onChange={(event) => set({ claimWith: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label="Last day of the claim"
        description="Empty to take it from the carrier"
        inputWrapperOrder={['label', 'input', 'description', 'error']}
        value={fields.claimUntil}
        error={details.claimUntil}
        onChange={(event) => set({ claimUntil: event.currentTarget.value })}
      />
    </FieldGrid>
  );
}

function WhatHappened({ fields, set, details, tried }: FieldsProps & { tried: boolean }) {
  const wrong = tried ? newIncidentErrors(fields) : {};
  return (
    <>
      <IncidentKindField
        kind={fields.kind}
        error={wrong.kind ?? details.kind}
        onChange={(kind) => set({ kind })}
      />
      <TextInput
        type="date"
        label="On which day"
        required
        value={fields.happenedOn}
        error={wrong.happenedOn ?? details.happenedOn}
        onChange={(event) => set({ happenedOn: event.currentTarget.value })}
      />
      <Textarea
        label="What happened, and what is seen"
        required
        autosize
        minRows={2}
        maxLength={2000}
        value={fields.what}
        error={wrong.what ?? details.what}
        onChange={(event) => set({ what: event.currentTarget.value })}
      />
      {needsPlace(fields.kind) ? (
        <FindingPlaceFields
          place={fields.place}
          onChange={(place) => set({ place })}
          errors={{
            ...(details.place === undefined ? {} : { words: details.place }),
            ...wrong.place,
          }}
        />
      ) : null}
    </>
  );
}

/** Writes down damage or loss; damage stops the bow with the same click. */
interface IncidentFormProps {
  /** What the form is opened for, where that is known. */
  kind: IncidentKind | null;
  onDone: () => void;
}

export function IncidentForm({ kind: first, onDone }: IncidentFormProps) {
  const { order } = useOrder();
  const [fields, setFields] = useState(() => newIncident(today(), first));
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.incidents.record, onDone);
  const group = {
    fields,
    set: (part: Partial<NewIncident>) => setFields((now) => ({ ...now, ...part })),
    details: command.details,
  };
  return (
    <FormBox
      title="Record an incident"
      submitLabel="Record the incident"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        const { kind } = fields;
        if (kind === null || Object.keys(newIncidentErrors(fields)).length > 0) return;
        void command.run(newIncidentRequest(order.card.id, kind, fields));
      }}
    >
      <WhatHappened {...group} tried={isTried} />
      {isInTransit(fields.kind) ? <ClaimStart {...group} /> : null}
    </FormBox>
  );
}
