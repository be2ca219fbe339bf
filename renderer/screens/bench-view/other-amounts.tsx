import { useState } from 'react';
import { decimal } from '../../../shared/measure.ts';
import { BigButton } from './big-button.tsx';
import { amountOf, type BiteEntry } from './bite-entry.ts';
import type { Work } from './bite-step.tsx';
import { cutText } from './cut-words.ts';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import { Stepper } from './stepper.tsx';
import { useNumberKeys } from './use-number-keys.ts';

interface OtherAmountsProps {
  work: Work;
  entry: BiteEntry;
  onChange: (entry: BiteEntry) => void;
  step: number;
}

/** What was cut where it was not what the card shows: one amount a limb, its places in proportion. */
export function OtherAmounts({ work, entry, onChange, step }: OtherAmountsProps) {
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
    onChange({ ...entry, phase: 'other', other: { ...other, [at]: value } });
  const isNothing = other.upper + other.lower === 0;
  const readBack = () => {
    if (!isNothing) onChange({ ...entry, phase: 'read-back' });
  };
  const keys = useNumberKeys({
    wanted,
    value: other[limb],
    step,
    onStep: (value) => put(limb, value),
    onEntered: (value) => {
      put(limb, value);
      if (limb === 'upper') setLimb('lower');
    },
    onConfirm: () => (limb === 'upper' ? setLimb('lower') : readBack()),
    onBack: () => onChange({ ...entry, other: null, phase: 'card' }),
  });
  return (
    <NumberEntry
      trouble={keys.trouble}
      onKey={keys.press}
      main={
        <BigButton
          kind="main"
          disabled={isNothing}
          {...(limb === 'lower' ? { keyHint: 'Enter' } : {})}
          onClick={readBack}
        >
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
                ? cutText(other[at])
                : `${decimal(other[at], 2)} thou`
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
