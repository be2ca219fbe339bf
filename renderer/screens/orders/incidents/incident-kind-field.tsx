import { Radio } from '@mantine/core';
import {
  type IncidentKind,
  incidentKind,
  incidentKinds,
  incidentLabels,
} from '../../../../shared/incidents.ts';
import classes from '../order-page.module.css';
import { firstSteps, kindMeanings, needsPlace } from './incident-words.ts';

interface IncidentKindFieldProps {
  kind: IncidentKind | null;
  onChange: (kind: IncidentKind) => void;
  error: string | undefined;
}

/** What happened, with what to do at once while it can still be done. */
export function IncidentKindField({ kind, onChange, error }: IncidentKindFieldProps) {
  return (
    <>
      <Radio.Group
        size="md"
        label="What happened"
        required
        value={kind}
        error={error}
        onChange={(value) => onChange(incidentKind.parse(value))}
      >
        {incidentKinds.map((value) => (
          <Radio
            key={value}
            value={value}
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
    </>
  );
}
