import { useQuery } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { decimal, inchFraction } from '../../../shared/measure.ts';
import { orpc } from '../../api/client.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { Stepper } from './stepper.tsx';
import { steps } from './stepping.ts';
import { useNumberKeys } from './use-number-keys.ts';
import type { WeighEntry } from './weigh-entry.ts';

const fields = {
  braceIn: { quantity: 'inches', min: 3, max: 12, name: 'brace height' },
  rigZeroLbf: { quantity: 'pounds', min: -10, max: 10, name: 'rig zero' },
} as const satisfies Record<string, Wanted>;
const stepOf = { braceIn: steps.brace, rigZeroLbf: [0.1] } as const;

interface RigStepProps {
  entry: WeighEntry;
  onChange: (entry: WeighEntry) => void;
  strings: readonly string[];
  /** A scale that may be used is chosen already. */
  hasScale: boolean;
  /** Why the weighing was not saved. */
  notice: ReactNode;
  onClose: () => void;
}

/** Brace, rig zero, string and scale of a weighing, without a word typed. */
export function RigStep(props: RigStepProps) {
  const { entry, onChange, strings, hasScale, notice, onClose } = props;
  // It comes first where it is missing, and stays there: nothing moves under the hand that chose it.
  const [isScaleFirst] = useState(!hasScale);
  const [field, setField] = useState<keyof typeof fields>('braceIn');
  const scales = useQuery(orpc.scales.list.queryOptions());
  const put = (value: number) => onChange({ ...entry, [field]: value });
  const keys = useNumberKeys({
    wanted: fields[field],
    value: entry[field],
    step: stepOf[field][0],
    onStep: put,
    onEntered: put,
    onConfirm: () => (field === 'braceIn' ? setField('rigZeroLbf') : onClose()),
    onBack: onClose,
  });
  const scaleChoice = (
    <>
      {scales.error === null ? null : (
        <ErrorNote error={scales.error} onAgain={() => void scales.refetch()} />
      )}
      {scales.data === undefined && scales.error === null ? <BusyNote /> : null}
      <Choices
        label="Scale"
        options={(scales.data ?? [])
          .filter(({ active }) => active)
          .map(({ id, name, usable, reason }) => ({
            id,
            text: usable ? name : `${name}: ${reason}`,
            disabled: !usable,
          }))}
        chosen={entry.scaleId}
        onChoose={(scaleId) => onChange({ ...entry, scaleId })}
      />
    </>
  );
  return (
    <NumberEntry
      trouble={keys.trouble}
      notice={notice}
      onKey={keys.press}
      main={
        <BigButton kind="main" onClick={onClose}>
          Back to the pulls
        </BigButton>
      }
    >
      {isScaleFirst ? scaleChoice : null}
      {(['braceIn', 'rigZeroLbf'] as const).map((name) => (
        <Stepper
          key={name}
          label={name === 'braceIn' ? 'Brace height' : 'Rig zero'}
          quantity={fields[name].quantity}
          value={entry[name]}
          shown={
            keys.text !== '' && field === name
              ? keys.text
              : name === 'braceIn'
                ? `${inchFraction(entry.braceIn)} in`
                : `${decimal(entry.rigZeroLbf)} lb`
          }
          steps={stepOf[name]}
          min={fields[name].min}
          max={fields[name].max}
          isWaiting={field === name}
          onWait={() => setField(name)}
          onChange={(value) => {
            setField(name);
            onChange({ ...entry, [name]: value });
          }}
        />
      ))}
      <Choices
        label="String"
        options={strings.map((text) => ({ id: text, text }))}
        chosen={entry.stringNote}
        onChoose={(stringNote) => onChange({ ...entry, stringNote })}
      />
      {isScaleFirst ? null : scaleChoice}
    </NumberEntry>
  );
}

interface ChoicesProps {
  label: string;
  options: readonly { id: string; text: string; disabled?: boolean }[];
  chosen: string | null;
  onChoose: (id: string) => void;
}

function Choices({ label, options, chosen, onChoose }: ChoicesProps) {
  if (options.length === 0) return null;
  return (
    <fieldset className={classes.choices} aria-label={label}>
      <span className={classes.quiet}>{label}</span>
      {options.map(({ id, text, disabled = false }) => (
        <BigButton
          key={id}
          pressed={chosen === id}
          disabled={disabled}
          onClick={() => onChoose(id)}
        >
          <span className={classes.small}>{text}</span>
        </BigButton>
      ))}
    </fieldset>
  );
}
