import { inchFraction } from '../../../shared/measure.ts';
import { Mark } from '../../parts/mark.tsx';
import { BigButton } from './big-button.tsx';
import type { Wanted } from './device-reading.ts';
import { NumberEntry } from './number-entry.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import {
  type CutPlace,
  limbWord,
  placeKey,
  placeText,
  type RemeasureEntry,
  waitingPlace,
  widthTrouble,
  withWidth,
} from './remeasure-entry.ts';
import { Stepper } from './stepper.tsx';
import { bothWays, steps } from './stepping.ts';
import { useNumberKeys } from './use-number-keys.ts';

const wanted: Wanted = { quantity: 'inches', min: 0.1, max: 4, name: 'width' };

interface RemeasureStepProps {
  places: readonly CutPlace[];
  entry: RemeasureEntry;
  onChange: (entry: RemeasureEntry) => void;
  busy: boolean;
  onSave: () => void;
}

/** The widths after the cut, one place after another, with a calliper or by hand. */
export function RemeasureStep({ places, entry, onChange, busy, onSave }: RemeasureStepProps) {
  const waiting = waitingPlace(places, entry);
  const given = places.filter((place) => entry.widthsIn[placeKey(place)] !== undefined);
  const value = waiting === null ? null : (entry.widthsIn[placeKey(waiting)] ?? waiting.expectedIn);
  const take = (widthIn: number) => {
    if (waiting !== null && !entry.isReading) onChange(withWidth(entry, waiting, widthIn));
  };
  const keys = useNumberKeys({
    wanted,
    value,
    step: steps.width[0],
    onStep: (widthIn) => {
      if (waiting === null || entry.isReading) return;
      onChange({ ...withWidth(entry, waiting, widthIn), at: placeKey(waiting) });
    },
    onEntered: take,
    onConfirm: () => {
      if (entry.isReading) onSave();
      else if (value !== null) take(value);
      else onChange({ ...entry, isReading: true });
    },
    onBack: () => {
      const last = given.at(-1);
      if (entry.isReading) onChange({ ...entry, isReading: false });
      else if (last !== undefined) onChange({ ...entry, at: placeKey(last) });
    },
  });
  if (entry.isReading) {
    return (
      <ReadBack
        said={`${places.length} widths re-measured.`}
        more={<Widths places={places} entry={entry} onGo={null} />}
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
            onChange={(widthIn) =>
              onChange({ ...withWidth(entry, waiting, widthIn), at: placeKey(waiting) })
            }
          />
        </>
      )}
      <Widths
        places={places}
        entry={entry}
        onGo={(place) => onChange({ ...entry, at: placeKey(place) })}
      />
    </NumberEntry>
  );
}

interface WidthsProps {
  places: readonly CutPlace[];
  entry: RemeasureEntry;
  onGo: ((place: CutPlace) => void) | null;
}

function Widths({ places, entry, onGo }: WidthsProps) {
  const waiting = onGo === null ? null : waitingPlace(places, entry);
  return (
    <ul className={classes.widths} aria-label="Widths">
      {places.map((place) => (
        <li key={placeKey(place)}>
          <Tile
            place={place}
            widthIn={entry.widthsIn[placeKey(place)]}
            isWaiting={place === waiting}
            onGo={onGo}
          />
        </li>
      ))}
    </ul>
  );
}

interface TileProps {
  place: CutPlace;
  widthIn: number | undefined;
  isWaiting: boolean;
  onGo: WidthsProps['onGo'];
}

function Tile({ place, widthIn, isWaiting, onGo }: TileProps) {
  const trouble = widthIn === undefined ? null : widthTrouble(place, widthIn);
  const shown = (
    <span className={classes.tile}>
      <span className={classes.quiet}>
        {limbWord(place.limb)} {inchFraction(place.fromFadeIn)}
      </span>
      <span>{widthIn === undefined ? '–' : widthIn.toFixed(3)}</span>
      {trouble === null ? null : <Mark kind="attention">{trouble}</Mark>}
    </span>
  );
  if (onGo === null) return shown;
  const name = `${limbWord(place.limb)} ${inchFraction(place.fromFadeIn)}`;
  const said = widthIn === undefined ? '–, to be measured' : bothWays(widthIn);
  return (
    <BigButton
      pressed={isWaiting}
      label={[
        `${name} ${said}`,
        'inches from the fade',
        ...(trouble === null ? [] : [trouble]),
      ].join(', ')}
      onClick={() => onGo(place)}
    >
      {shown}
    </BigButton>
  );
}
