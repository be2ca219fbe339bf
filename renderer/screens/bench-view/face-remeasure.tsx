import { decimal } from '../../../shared/measure.ts';
import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { faceKey, faceText, waitingFace, withFace } from './remeasure-entry.ts';
import type { RemeasureStepProps } from './remeasure-step.tsx';
import { Faces, Widths } from './remeasure-tiles.tsx';
import { Stepper } from './stepper.tsx';
import { steps } from './stepping.ts';
import { useNumberKeys } from './use-number-keys.ts';

const wanted: Wanted = { quantity: 'thou', min: 0, max: 40, name: 'amount off this face' };

/** What came off each face, in thousandths, where somebody measured it; Enter lets it stand. */
export function FaceRemeasure({ places, faces, entry, onChange }: RemeasureStepProps) {
  const waiting = waitingFace(faces, entry);
  const given = faces.filter((face) => entry.facesThou[faceKey(face)] !== undefined);
  const measured = waiting === null ? null : (entry.facesThou[faceKey(waiting)] ?? null);
  const take = (thou: number | null) => {
    if (waiting !== null) onChange(withFace(entry, waiting, thou));
  };
  const step = (thou: number) => {
    if (waiting !== null) onChange({ ...withFace(entry, waiting, thou), at: faceKey(waiting) });
  };
  const keys = useNumberKeys({
    wanted,
    value: waiting === null ? null : (measured ?? waiting.plannedThou),
    step: steps.thou[0],
    onStep: step,
    onEntered: take,
    onConfirm: () => {
      if (waiting !== null) take(measured);
      else onChange({ ...entry, isReading: true });
    },
    onBack: () => {
      const last = given.at(-1);
      if (last !== undefined) onChange({ ...entry, at: faceKey(last) });
    },
  });
  const go = (at: string) => onChange({ ...entry, at });
  const isTaken = keys.text !== '' || measured !== null;
  return (
    <NumberEntry
      trouble={keys.trouble}
      onKey={keys.press}
      main={
        <BigButton kind="main" keyHint="Enter" onClick={() => keys.press('Enter')}>
          {waiting === null ? 'Read back' : isTaken ? 'Take this number' : 'Not measured'}
        </BigButton>
      }
    >
      {waiting === null ? (
        <p className={classes.words}>All faces are there.</p>
      ) : (
        <>
          <h2 className={classes.title}>{faceText(waiting)}: thousandths off</h2>
          <p className={classes.quiet}>
            By loupe at an edge, or the thickness before less the thickness now. Not measured: it
            counts as it was meant.
          </p>
          <Stepper
            label="Off this face"
            quantity="thou"
            value={measured ?? waiting.plannedThou}
            shown={keys.text === '' ? thouText(measured) : `${keys.text} thou`}
            note={`${decimal(waiting.plannedThou, 2)} thou meant`}
            steps={steps.thou}
            min={wanted.min}
            max={wanted.max}
            isWaiting
            onChange={step}
          />
        </>
      )}
      <Widths places={places} entry={entry} onGo={go} />
      <Faces faces={faces} entry={entry} onGo={go} />
    </NumberEntry>
  );
}

const thouText = (thou: number | null) => (thou === null ? '–' : `${decimal(thou, 2)} thou`);
