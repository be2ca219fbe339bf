import { BigButton } from './big-button.tsx';
import { amountOf, type BiteEntry, biteSaid, withAmount } from './bite-entry.ts';
import { CutCard } from './cut-card.tsx';
import type { LimbWork } from './cut-words.ts';
import { OtherAmounts } from './other-amounts.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { useBenchKeys } from './use-bench-keys.ts';

export interface Work {
  upper: LimbWork;
  lower: LimbWork;
}

export interface BiteStepProps {
  work: Work;
  entry: BiteEntry;
  onChange: (entry: BiteEntry) => void;
  /** Smallest step of the hand, in the unit of the work. */
  step: number;
  doneLabel: string;
  /** Where most such bites end. */
  band: string;
  busy: boolean;
  /** Null: cut as the card shows. */
  onSave: (other: { upper: number; lower: number } | null) => void;
}

/** The cut card; then what was cut, as shown or otherwise, read back. */
export function BiteStep(props: BiteStepProps) {
  const { work, entry, onChange, doneLabel, band, busy, onSave } = props;
  const done: Work =
    entry.other === null
      ? work
      : {
          upper: withAmount(work.upper, entry.other.upper, work.lower),
          lower: withAmount(work.lower, entry.other.lower, work.upper),
        };
  const confirm = () => {
    if (entry.phase === 'card') onChange({ ...entry, phase: 'read-back' });
    if (entry.phase === 'read-back' && !busy) onSave(entry.other);
  };
  const back = () => {
    if (entry.phase !== 'card') onChange({ ...entry, other: null, phase: 'card' });
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
            ...entry,
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
      <p className={classes.quiet}>{band}</p>
      <BigButton kind="main" keyHint="Enter" onClick={confirm}>
        {doneLabel}
      </BigButton>
    </>
  );
}
