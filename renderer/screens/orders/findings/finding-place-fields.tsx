import { TextInput } from '@mantine/core';
import { ChoiceButtons } from '../../../parts/choice-buttons.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import {
  bowFaces,
  bowParts,
  type FindingPlace,
  isLimb,
  type PlaceErrors,
  placeLine,
} from './finding-place.ts';
import classes from './findings.module.css';

interface FindingPlaceFieldsProps {
  place: FindingPlace;
  onChange: (place: FindingPlace) => void;
  errors: PlaceErrors;
}

/** Limb, face and distance, written as one plain line that is shown as it will read. */
export function FindingPlaceFields({ place, onChange, errors }: FindingPlaceFieldsProps) {
  const set = (part: Partial<FindingPlace>) => onChange({ ...place, ...part });
  const line = placeLine(place);
  return (
    <>
      <ChoiceButtons
        label="Where"
        options={bowParts}
        value={place.part}
        onChange={(part) => set({ part })}
      />
      <ChoiceButtons
        label="Face"
        options={bowFaces}
        value={place.face}
        onChange={(face) => set({ face })}
      />
      {isLimb(place.part) ? (
        <NumberField
          label="Distance from the fade, in"
          unit="in"
          placeholder="9 or 9 1/4"
          value={place.fromFadeIn}
          error={errors.fromFadeIn}
          onChange={(fromFadeIn) => set({ fromFadeIn })}
        />
      ) : null}
      <TextInput
        label="Place on the bow, in own words"
        description="More exactly, or where the choices do not fit."
        placeholder="at the tip overlay"
        maxLength={120}
        autoComplete="off"
        value={place.more}
        error={errors.words}
        onChange={(event) => set({ more: event.currentTarget.value })}
      />
      <div aria-live="polite" className={line === '' ? classes.silent : undefined}>
        {line === '' ? null : <p className={classes.line}>Reads: {line}</p>}
      </div>
    </>
  );
}
