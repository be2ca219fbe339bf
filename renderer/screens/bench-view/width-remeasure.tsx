import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { placeKey, placeText, waitingPlace, withWidth } from './remeasure-entry.ts';
import type { RemeasureStepProps } from './remeasure-step.tsx';
import { Faces, Widths } from './remeasure-tiles.tsx';
import { Stepper } from './stepper.tsx';
import { bothWays, steps } from './stepping.ts';
import { useNumberKeys } from './use-number-keys.ts';

const wanted: Wanted = { quantity: 'inches', min: 0.1, max: 4, name: 'width' };

/** The widths after the cut, one place after another, with a calliper or by hand. */
export function WidthRemeasure({ places, faces, entry, onChange }: RemeasureStepProps) {
  const waiting = waitingPlace(places, entry);
  const given = places.filter((place) => entry.widthsIn[placeKey(place)] !== undefined);
  const value = waiting === null ? null : (entry.widthsIn[placeKey(waiting)] ?? waiting.expectedIn);
  const take = (widthIn: number) => {
    if (waiting !== null) onChange(withWidth(entry, waiting, widthIn));
  };
  const step = (widthIn: number) => {
    if (waiting === null) return;
    onChange({ ...withWidth(entry, waiting, widthIn), at: placeKey(waiting) });
  };
  const keys = useNumberKeys({
    wanted,
    value,
    step: steps.width[0],
    onStep: step,
    onEntered: take,
    onConfirm: () => {
      if (value !== null) take(value);
      else onChange({ ...entry, isReading: true });
    },
    onBack: () => {
      const last = given.at(-1);
      if (last !== undefined) onChange({ ...entry, at: placeKey(last) });
    },
  });
  const go = (at: string) => onChange({ ...entry, at });
  return (
    <NumberEntry
      trouble={keys.trouble}
      onKey={keys.press}
      main={
        <BigButton kind="main" keyHint="Enter" onClick={() => keys.press('Enter')}>
          {waiting === null && keys.text === '' ? 'Read back' : 'Take this width'}
        </BigButton>
      }
    >
      {waiting === null || value === null ? (
        <p className={classes.words}>All widths are there.</p>
      ) : (
        <>
          <h2 className={classes.title}>{placeText(waiting)}</h2>
          <Stepper
            label="Width"
            quantity="inches"
            value={value}
            shown={keys.text === '' ? bothWays(value) : `${keys.text} in`}
            note={`was ${waiting.beforeIn.toFixed(3)}, wanted ${waiting.expectedIn.toFixed(3)}`}
            steps={steps.width}
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
