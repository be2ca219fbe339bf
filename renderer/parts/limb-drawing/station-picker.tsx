import { Button, NativeSelect } from '@mantine/core';
import classes from './limb-drawing.module.css';
import type { StationHandle } from './station-handles.ts';

interface StationPickerProps {
  /** Of which limb. */
  title: string;
  handles: readonly StationHandle[];
  onChoose: (index: number) => void;
}

/** Stations that lie too close for a button each: one list, and a step to either side. */
export function StationPicker({ title, handles, onChoose }: StationPickerProps) {
  const chosen = handles.findIndex(({ isChosen }) => isChosen);
  const last = handles.length - 1;
  return (
    <div className={classes.picker}>
      <Button
        variant="default"
        aria-label={`${title}: the station before`}
        disabled={chosen <= 0}
        onClick={() => onChoose(chosen - 1)}
      >
        ‹
      </Button>
      <NativeSelect
        aria-label={`Station of the ${title} limb`}
        value={chosen === -1 ? '' : String(chosen)}
        onChange={(event) => {
          if (event.currentTarget.value !== '') onChoose(Number(event.currentTarget.value));
        }}
      >
        <option value="">Choose one of {handles.length} stations</option>
        {handles.map(({ fromFadeIn, text }, i) => (
          <option key={fromFadeIn} value={i}>
            {text} in
          </option>
        ))}
      </NativeSelect>
      <Button
        variant="default"
        aria-label={`${title}: the station after`}
        disabled={chosen === last}
        onClick={() => onChoose(chosen + 1)}
      >
        ›
      </Button>
    </div>
  );
}
