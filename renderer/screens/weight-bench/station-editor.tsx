import { Button, Checkbox } from '@mantine/core';
import { useState } from 'react';
import { StepField } from '../bows/geometry/step-field.tsx';
import { useDesk } from './desk-context.tsx';
import { withLimb, withStation } from './draft.ts';
import type { ChosenStation } from './limb-panel.tsx';
import { stationText } from './limb-places.ts';
import { fewestStations, mostStations, withoutStation, withStationAfter } from './station-rows.ts';
import classes from './weight-bench.module.css';

interface SizeProps {
  chosen: ChosenStation;
  fields: readonly ('fromFadeIn' | 'backWidthIn' | 'bellyWidthIn' | 'thicknessIn')[];
  label: string;
  step: number;
  unit: 'in' | 'thou';
}

/** One size of the chosen station; both faces at once where they are alike. */
function Size({ chosen, fields, label, step, unit }: SizeProps) {
  const { input, change, errors } = useDesk();
  const [field = 'backWidthIn'] = fields;
  const station = input.bow[chosen.limb].stations[chosen.index];
  if (station === undefined) return null;
  const value = station[field];
  return (
    <StepField
      label={label}
      unit={unit}
      step={step}
      value={Number.isNaN(value) ? null : Number(value.toFixed(5))}
      error={errors[`bow.${chosen.limb}.stations.${chosen.index}.${field}`]}
      onChange={(next) => {
        const size = next ?? Number.NaN;
        const part = Object.fromEntries(fields.map((name) => [name, size]));
        change(withStation(input, chosen, part));
      }}
    />
  );
}

function Widths({ chosen }: { chosen: ChosenStation }) {
  const { input } = useDesk();
  const station = input.bow[chosen.limb].stations[chosen.index];
  const differs = station !== undefined && station.backWidthIn !== station.bellyWidthIn;
  const [isApart, setApart] = useState(differs);
  const step = 1 / 64;
  return (
    <>
      {isApart || differs ? (
        <>
          <Size chosen={chosen} fields={['backWidthIn']} label="Back width" step={step} unit="in" />
          <Size
            chosen={chosen}
            fields={['bellyWidthIn']}
            label="Belly width"
            step={step}
            unit="in"
          />
        </>
      ) : (
        <Size
          chosen={chosen}
          fields={['backWidthIn', 'bellyWidthIn']}
          label="Width"
          step={step}
          unit="in"
        />
      )}
      <Size chosen={chosen} fields={['thicknessIn']} label="Thickness" step={1} unit="thou" />
      <Checkbox
        className={classes.apart}
        label="Back and belly differ here"
        checked={isApart || differs}
        disabled={differs}
        onChange={(event) => setApart(event.currentTarget.checked)}
      />
    </>
  );
}

interface StationEditorProps {
  chosen: ChosenStation | null;
  onClose: () => void;
}

/** The station that was taken hold of, to be typed or stepped. */
export function StationEditor({ chosen, onClose }: StationEditorProps) {
  const { input, change } = useDesk();
  const station = chosen === null ? undefined : input.bow[chosen.limb].stations[chosen.index];
  if (chosen === null || station === undefined) {
    return <p className={classes.quiet}>Take hold of a station to change it.</p>;
  }
  const { limb, index } = chosen;
  const count = input.bow[limb].stations.length;
  const name = `${limb === 'upper' ? 'Upper' : 'Lower'} limb, ${stationText(station.fromFadeIn)} in from the fade`;
  return (
    <fieldset className={classes.station} aria-label={name}>
      <strong className={classes.stationName}>{name}</strong>
      <div className={classes.sizes} key={`${limb} ${index}`}>
        <Size chosen={chosen} fields={['fromFadeIn']} label="From the fade" step={0.5} unit="in" />
        <Widths chosen={chosen} />
      </div>
      <div className={classes.stationButtons}>
        <Button
          variant="default"
          disabled={count >= mostStations}
          onClick={() => change(withLimb(input, limb, withStationAfter(input.bow[limb], index)))}
        >
          Add a station after it
        </Button>
        <Button
          variant="default"
          disabled={count <= fewestStations}
          onClick={() => {
            change(withLimb(input, limb, withoutStation(input.bow[limb], index)));
            onClose();
          }}
        >
          Take this station out
        </Button>
        <Button variant="subtle" color="gray" c="dimmed" onClick={onClose}>
          Done
        </Button>
      </div>
    </fieldset>
  );
}
