import type { ReactNode } from 'react';
import { decimal } from '../../../shared/measure.ts';
import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { Stepper } from './stepper.tsx';
import { steps } from './stepping.ts';
import { useNumberKeys } from './use-number-keys.ts';
import { nextPull, type WeighEntry, weighSaid } from './weigh-entry.ts';
import { Conditions, Pulls } from './weigh-parts.tsx';

const wanted: Wanted = { quantity: 'pounds', min: 5, max: 200, name: 'pull' };
/** Pulls of one bow at one draw that lie farther apart are worth a look (common practice), lbf. */
const wideLbf = 0.6;

interface WeighStepProps {
  entry: WeighEntry;
  onChange: (entry: WeighEntry) => void;
  /** The draw of the job; others are taken for the curve. */
  jobDrawIn: number;
  draws: readonly number[];
  scaleName: string | null;
  busy: boolean;
  /** Why it was not saved. */
  notice: ReactNode;
  onSave: () => void;
  onRig: () => void;
}

/**
 * Pulls are read off the scale and keyed in. What is expected is not shown here: a reader who knows
 * it sees it. It is told once the weight was read back and saved.
 */
export function WeighStep(props: WeighStepProps) {
  const { entry, onChange, jobDrawIn, draws, scaleName, busy, notice, onSave, onRig } = props;
  const said = weighSaid(entry, jobDrawIn);
  const canSave = said !== null && scaleName !== null;
  const last = entry.pulls.at(-1) ?? null;
  const add = (forceLbf: number) => {
    if (!entry.isReading && entry.pulls.length < 40) {
      onChange({ ...entry, pulls: [...entry.pulls, { drawIn: entry.drawIn, forceLbf }] });
    }
  };
  const keys = useNumberKeys({
    wanted,
    value: last?.forceLbf ?? null,
    step: steps.pull[0],
    onStep: (forceLbf) => {
      if (!entry.isReading) onChange({ ...entry, pulls: correctLast(entry, forceLbf) });
    },
    onEntered: add,
    onConfirm: () => {
      if (entry.isReading) onSave();
      else if (canSave) onChange({ ...entry, isReading: true });
    },
    onBack: () => {
      if (entry.isReading) onChange({ ...entry, isReading: false });
      else onChange({ ...entry, pulls: entry.pulls.slice(0, -1) });
    },
  });
  if (entry.isReading && said !== null) {
    return (
      <ReadBack
        said={said.said}
        more={<Conditions entry={entry} scaleName={scaleName} wide={said.rangeLbf > wideLbf} />}
        notice={notice}
        busy={busy}
        onYes={onSave}
        onNo={() => onChange({ ...entry, isReading: false })}
      />
    );
  }
  const ready = keys.text === '';
  return (
    <NumberEntry
      trouble={keys.trouble}
      notice={notice}
      onKey={keys.press}
      main={
        <BigButton
          kind="main"
          keyHint="Enter"
          disabled={ready && !canSave}
          onClick={() => keys.press('Enter')}
        >
          {ready ? 'Read back' : 'Take this pull'}
        </BigButton>
      }
    >
      <p className={classes.words}>{nextPull(entry, scaleName !== null)}</p>
      {last === null || !ready ? (
        <output className={classes.keyed} aria-label="Pull keyed in">
          {ready ? '–' : keys.text} lb
        </output>
      ) : (
        <Stepper
          label={`Pull ${entry.pulls.length}`}
          quantity="pounds"
          value={last.forceLbf}
          shown={`${decimal(last.forceLbf, 2)} lb`}
          steps={steps.pull}
          min={wanted.min}
          max={wanted.max}
          isWaiting
          onChange={(forceLbf) => onChange({ ...entry, pulls: correctLast(entry, forceLbf) })}
        />
      )}
      <Pulls entry={entry} />
      {draws.length > 1 ? (
        <div className={classes.row}>
          {draws.map((drawIn) => (
            <BigButton
              key={drawIn}
              pressed={drawIn === entry.drawIn}
              onClick={() => onChange({ ...entry, drawIn })}
            >
              {decimal(drawIn, 2)} in
            </BigButton>
          ))}
        </div>
      ) : null}
      <div className={classes.row}>
        <BigButton onClick={onRig}>
          <Conditions entry={entry} scaleName={scaleName} wide={false} /> Change
        </BigButton>
      </div>
    </NumberEntry>
  );
}

const correctLast = (entry: WeighEntry, forceLbf: number) =>
  entry.pulls.map((pull, at) => (at === entry.pulls.length - 1 ? { ...pull, forceLbf } : pull));
