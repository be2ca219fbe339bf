import { type StringTrack, stringTracks } from '../../../shared/bench.ts';
import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { Stepper } from './stepper.tsx';
import { steps } from './stepping.ts';
import { type TillerEntry, tillerReadText, waitingField } from './tiller-entry.ts';
import { tillerSaid } from './tiller-words.ts';
import { useNumberKeys } from './use-number-keys.ts';

const wanted: Wanted = { quantity: 'inches', min: -2, max: 2, name: 'tiller' };

interface TillerStepProps {
  entry: TillerEntry;
  onChange: (entry: TillerEntry) => void;
  busy: boolean;
  onSave: () => void;
}

/** Tiller by the rule, and where the string runs over each limb; read back before it is saved. */
export function TillerStep({ entry, onChange, busy, onSave }: TillerStepProps) {
  const field = waitingField(entry);
  const confirm = () => {
    if (entry.isReading) onSave();
    else if (field === 'tiller') onChange({ ...entry, isTaken: true });
    else if (field === 'done') onChange({ ...entry, isReading: true });
  };
  const keys = useNumberKeys({
    wanted,
    value: entry.tillerIn,
    step: steps.tiller[0],
    onStep: (tillerIn) => onChange({ ...entry, tillerIn }),
    onEntered: (value) => {
      if (!entry.isReading) onChange({ ...entry, tillerIn: value, isTaken: true });
    },
    takes: (entered) => {
      if (entry.isReading) return true;
      const track = /^[123]$/.test(entered) ? stringTracks[Number(entered) - 1] : undefined;
      if (track === undefined || field === 'tiller' || field === 'done') return false;
      onChange({ ...entry, [field]: track });
      return true;
    },
    onConfirm: confirm,
    onBack: () => onChange({ ...entry, isReading: false }),
  });
  if (entry.isReading) {
    return (
      <ReadBack
        said={tillerReadText(entry)}
        busy={busy}
        onYes={onSave}
        onNo={() => onChange({ ...entry, isReading: false })}
      />
    );
  }
  return (
    <NumberEntry
      trouble={keys.trouble}
      onKey={keys.press}
      main={
        <BigButton
          kind="main"
          keyHint="Enter"
          disabled={(field === 'upperTrack' || field === 'lowerTrack') && keys.text === ''}
          onClick={() => keys.press('Enter')}
        >
          {field === 'tiller' || keys.text !== '' ? 'Take this number' : 'Tiller read'}
        </BigButton>
      }
    >
      <p className={classes.quiet}>Upper minus lower string distance, at the fades.</p>
      <Stepper
        label="Tiller"
        quantity="inches"
        value={entry.tillerIn}
        shown={keys.text === '' ? tillerSaid(entry.tillerIn) : `${keys.text} in`}
        steps={steps.tiller}
        min={wanted.min}
        max={wanted.max}
        isWaiting={field === 'tiller'}
        onChange={(tillerIn) => onChange({ ...entry, tillerIn, isTaken: true })}
        onWait={() => onChange({ ...entry, isTaken: false })}
      />
      <p className={classes.quiet}>Where the string runs, seen from the belly with the tip up.</p>
      {(['upper', 'lower'] as const).map((limb) => (
        <Track
          key={limb}
          limb={limb}
          isWaiting={field === `${limb}Track`}
          value={limb === 'upper' ? entry.upperTrack : entry.lowerTrack}
          onChange={(track) =>
            onChange({ ...entry, [limb === 'upper' ? 'upperTrack' : 'lowerTrack']: track })
          }
        />
      ))}
    </NumberEntry>
  );
}

interface TrackProps {
  limb: 'upper' | 'lower';
  value: StringTrack | null;
  isWaiting: boolean;
  onChange: (track: StringTrack) => void;
}

function Track({ limb, value, isWaiting, onChange }: TrackProps) {
  return (
    <fieldset className={classes.tracks} aria-label={`String over the ${limb} limb`}>
      <span className={classes.ask}>{limb === 'upper' ? 'Upper' : 'Lower'}</span>
      {stringTracks.map((track, index) => (
        <BigButton
          key={track}
          pressed={value === track}
          keyHint={isWaiting ? `${index + 1} Enter` : undefined}
          onClick={() => onChange(track)}
        >
          {track === 'left' ? 'Left' : track === 'right' ? 'Right' : 'Centre'}
        </BigButton>
      ))}
    </fieldset>
  );
}
