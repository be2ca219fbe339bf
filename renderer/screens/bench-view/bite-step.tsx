import { useState } from 'react';
import { inchFraction } from '../../../shared/measure.ts';
import { BigButton } from './big-button.tsx';
import { amountOf, type BiteEntry, biteSaid, withAmount } from './bite-entry.ts';
import { CutCard } from './cut-card.tsx';
import type { LimbWork } from './cut-words.ts';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import { ReadBack } from './read-back.tsx';
import { Stepper } from './stepper.tsx';
import { useBenchKeys } from './use-bench-keys.ts';
import { useNumberKeys } from './use-number-keys.ts';

export interface Work {
  upper: LimbWork;
  lower: LimbWork;
}

interface BiteStepProps {
  work: Work;
  entry: BiteEntry;
  onChange: (entry: BiteEntry) => void;
  /** Smallest step of the hand, in the unit of the work. */
  step: number;
  doneLabel: string;
  busy: boolean;
  /** Null: cut as the card shows. */
  onSave: (other: { upper: number; lower: number } | null) => void;
}

/** The cut card; then what was cut, as shown or otherwise, read back. */
export function BiteStep(props: BiteStepProps) {
  const { work, entry, onChange, doneLabel, busy, onSave } = props;
  const done: Work =
    entry.other === null
      ? work
      : {
          upper: withAmount(work.upper, entry.other.upper),
          lower: withAmount(work.lower, entry.other.lower),
        };
  const confirm = () => {
    if (entry.phase === 'card') onChange({ ...entry, phase: 'read-back' });
    if (entry.phase === 'read-back' && !busy) onSave(entry.other);
  };
  const back = () => {
    if (entry.phase !== 'card') onChange({ other: null, phase: 'card' });
  };
  useBenchKeys(entry.phase === 'other' ? {} : { onConfirm: confirm, onBack: back });
  if (entry.phase === 'other') return <OtherAmounts {...props} />;
  if (entry.phase === 'read-back') {
    return (
      <ReadBack
        said={biteSaid(done.upper, done.lower)}
        question={entry.other === null ? 'Cut as shown?' : 'Right?'}
        yes="Yes, that is off"
        no="No, otherwise"
        more={<BigButton onClick={back}>Not cut yet: back to the card</BigButton>}
        busy={busy}
        onYes={confirm}
        onNo={() =>
          onChange({
            phase: 'other',
            other: { upper: amountOf(done.upper).value, lower: amountOf(done.lower).value },
          })
        }
      />
    );
  }
  return (
    <>
      <CutCard upper={work.upper} lower={work.lower} />
      <BigButton kind="main" keyHint="Enter" onClick={confirm}>
        {doneLabel}
      </BigButton>
    </>
  );
}

function OtherAmounts({ work, entry, onChange, step }: BiteStepProps) {
  const [limb, setLimb] = useState<'upper' | 'lower'>('upper');
  const other = entry.other ?? { upper: 0, lower: 0 };
  const unit = [work.upper, work.lower].some((one) => amountOf(one).unit === 'inches')
    ? 'inches'
    : 'thou';
  const wanted: Wanted = {
    quantity: unit,
    min: 0,
    max: unit === 'inches' ? 0.25 : 20,
    name: unit === 'inches' ? 'cut per side' : 'amount off each face',
  };
  const put = (at: 'upper' | 'lower', value: number) =>
    onChange({ phase: 'other', other: { ...other, [at]: value } });
  const keys = useNumberKeys({
    wanted,
    value: other[limb],
    step,
    onStep: (value) => put(limb, value),
    onEntered: (value) => {
      put(limb, value);
      if (limb === 'upper') setLimb('lower');
    },
    onConfirm: () =>
      limb === 'upper' ? setLimb('lower') : onChange({ ...entry, phase: 'read-back' }),
    onBack: () => onChange({ other: null, phase: 'card' }),
  });
  return (
    <NumberEntry
      trouble={keys.trouble}
      onKey={keys.press}
      main={
        <BigButton kind="main" onClick={() => onChange({ ...entry, phase: 'read-back' })}>
          Read back
        </BigButton>
      }
    >
      {(['upper', 'lower'] as const).map((at) => (
        <Stepper
          key={at}
          label={`${at === 'upper' ? 'Upper' : 'Lower'} ${unit === 'inches' ? 'per side' : 'per face'}`}
          quantity={unit}
          value={other[at]}
          shown={
            keys.text !== '' && at === limb
              ? keys.text
              : unit === 'inches'
                ? `${inchFraction(other[at], 64)} in`
                : `${other[at]} thou`
          }
          steps={[step]}
          min={wanted.min}
          max={wanted.max}
          isWaiting={at === limb}
          onWait={() => setLimb(at)}
          onChange={(value) => {
            setLimb(at);
            put(at, value);
          }}
        />
      ))}
    </NumberEntry>
  );
}
