import { Radio, Textarea, TextInput } from '@mantine/core';
import { useState } from 'react';
import {
  type IncidentKind,
  incidentKind,
  incidentKinds,
  incidentLabels,
} from '../../../../shared/incidents.ts';
import { api } from '../../../api/client.ts';
import { today } from '../../../parts/days.ts';
import { FieldGrid } from '../../../parts/fields.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { noPlace, placeErrors, placeLine } from '../findings/finding-place.ts';
import { FindingPlaceFields } from '../findings/finding-place-fields.tsx';
import classes from '../order-page.module.css';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { firstSteps, kindMeanings, needsPlace } from './incident-words.ts';

/** Writes down damage or loss; damage stops the bow with the same click. */
export function IncidentForm({ onDone }: { onDone: () => void }) {
  const { order } = useOrder();
  const [kind, setKind] = useState<IncidentKind | null>(null);
  const [happenedOn, setHappenedOn] = useState(today());
  const [what, setWhat] = useState('');
  const [place, setPlace] = useState(noPlace);
  const [claimWith, setClaimWith] = useState('');
  const [claimUntil, setClaimUntil] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.incidents.record, onDone);
  const { details } = command;
  const wrong = needsPlace(kind) ? placeErrors(place) : {};
  const isThin = what.trim().length < 3;
  const inTransit = kind !== null && kind !== 'damaged-here';
  return (
    <FormBox
      title="Record an incident"
      submitLabel="Record the incident"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (kind === null || isThin || happenedOn === '' || Object.keys(wrong).length > 0) return;
        void command.run({
          orderId: order.card.id,
          kind,
          happenedOn,
          what,
          place: needsPlace(kind) ? placeLine(place) : '',
          claimWith: inTransit ? claimWith : '',
          claimUntil: inTransit ? claimUntil || null : null,
        });
      }}
    >
      <Radio.Group
        size="md"
        label="What happened"
        required
        value={kind}
        error={isTried && kind === null ? 'Choose one.' : details.kind}
        onChange={(value) => setKind(incidentKind.parse(value))}
      >
        {incidentKinds.map((value) => (
          <Radio
            key={value}
            value={value}
            mt="sm"
            label={incidentLabels[value]}
            description={kindMeanings[value]}
          />
        ))}
      </Radio.Group>
      {kind === null ? null : (
        <ul className={classes.caution}>
          {firstSteps(kind).map((step) => (
            <li key={step}>{step}</li>
          ))}
          {needsPlace(kind) ? (
            <li>It becomes a stop finding: nobody strings or draws the bow.</li>
          ) : null}
        </ul>
      )}
      <TextInput
        type="date"
        label="On which day"
        required
        value={happenedOn}
        error={isTried && happenedOn === '' ? 'Give the day.' : details.happenedOn}
        onChange={(event) => setHappenedOn(event.currentTarget.value)}
      />
      <Textarea
        label="What happened, and what is seen"
        required
        autosize
        minRows={2}
        maxLength={2000}
        value={what}
        error={isTried && isThin ? 'Say what happened.' : details.what}
        onChange={(event) => setWhat(event.currentTarget.value)}
      />
      {needsPlace(kind) ? (
        <FindingPlaceFields
          place={place}
          onChange={setPlace}
          errors={{
            ...(details.place === undefined ? {} : { words: details.place }),
            ...(isTried ? wrong : {}),
          }}
        />
      ) : null}
      {inTransit ? (
        <FieldGrid>
          <TextInput
            label="Claim with"
            description="Empty for the carrier of the parcel"
            inputWrapperOrder={['label', 'input', 'description', 'error']}
            maxLength={200}
            value={claimWith}
            error={details.claimWith}
            onChange={(event) => setClaimWith(event.currentTarget.value)}
          />
          <TextInput
            type="date"
            label="Last day of the claim"
            description="Empty to take it from the carrier"
            inputWrapperOrder={['label', 'input', 'description', 'error']}
            value={claimUntil}
            error={details.claimUntil}
            onChange={(event) => setClaimUntil(event.currentTarget.value)}
          />
        </FieldGrid>
      ) : null}
    </FormBox>
  );
}
