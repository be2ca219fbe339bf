import { Button, Radio, Textarea } from '@mantine/core';
import { type KeyboardEvent, useRef, useState } from 'react';
import { type Limb, limbs } from '../../../../shared/bows.ts';
import type { GeometryVersion } from '../../../../shared/contract/geometry.ts';
import { api } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { FormBox } from '../../../parts/form-box.tsx';
import {
  fieldName,
  rowErrors,
  type SizeField,
  type StationRow,
  type Surface,
  startRows,
  stationErrors,
  stationsOf,
  withRow,
} from './station-rows.ts';
import classes from './stations.module.css';
import { StepField } from './step-field.tsx';

export interface Measured {
  bowId: string;
  limbSetId: string | null;
  orderId: string | null;
}

interface StationsFormProps {
  of: Measured;
  /** The version to compare with: its places are offered again. */
  last: GeometryVersion | null;
  times?: number;
  onClose: () => void;
}

const limbNames: Record<Limb, string> = { upper: 'Upper', lower: 'Lower' };
const isNumberInput = (input: HTMLElement) => input.getAttribute('inputmode') === 'decimal';

/** Enter goes on to the next number, as in a list read off a limb; from the last one to a new row. */
function useEnterGoesOn(addRow: () => void) {
  const box = useRef<HTMLDivElement>(null);
  const inputs = () => [...(box.current?.querySelectorAll('input') ?? [])].filter(isNumberInput);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || event.ctrlKey || !(event.target instanceof HTMLInputElement)) {
      return;
    }
    const at = inputs().indexOf(event.target);
    if (at === -1) return;
    event.preventDefault();
    if (at === inputs().length - 1) addRow();
    requestAnimationFrame(() => inputs()[at + 1]?.focus());
  };
  return { box, onKeyDown };
}

/** Widths and thicknesses along both limbs, side by side. */
export function StationsForm({ of, last, times = 1, onClose }: StationsFormProps) {
  const [rows, setRows] = useState(() => startRows(last));
  const [surface, setSurface] = useState<Surface>(last?.stations[0]?.surface ?? 'over-finish');
  const [note, setNote] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useCommand(api.geometry.record, { onDone: onClose });
  const add = () => setRows(withRow);
  const { box, onKeyDown } = useEnterGoesOn(add);
  const wrong = stationErrors(rows, surface);
  const errors = { ...rowErrors(command.details, rows, surface), ...(isTried ? wrong : {}) };
  return (
    <FormBox
      title="Measure the limbs"
      submitLabel="Record as a new version"
      command={command}
      times={times}
      onCancel={onClose}
      onSubmit={() => {
        setTried(true);
        if (Object.keys(wrong).length > 0) return;
        void command.run({ ...of, note, stations: stationsOf(rows, surface) });
      }}
    >
      <p className={classes.quiet}>
        Distances run along the limb from the fade line. Enter goes to the next number; the up and
        down keys change one by a step. Leave out what was not measured.
      </p>
      <Radio.Group
        label="Thickness was read"
        value={surface}
        onChange={(value) => setSurface(value === 'bare' ? 'bare' : 'over-finish')}
      >
        <Radio value="over-finish" label="Over the finish, which counts in" />
        <Radio value="bare" label="On the bare limb" />
      </Radio.Group>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter is heard for all the numbers at once. */}
      <div className={classes.rows} ref={box} onKeyDown={onKeyDown}>
        {rows.map((row, index) => (
          <Row
            key={row.key}
            row={row}
            place={index + 1}
            errors={errors}
            onChange={(changed) =>
              setRows((now) => now.map((one) => (one.key === row.key ? changed : one)))
            }
            onRemove={() => setRows((now) => now.filter((one) => one.key !== row.key))}
          />
        ))}
      </div>
      {errors.stations === undefined ? null : (
        <p className={classes.error} role="alert">
          {errors.stations}
        </p>
      )}
      <Button variant="default" style={{ justifySelf: 'start' }} onClick={add}>
        Add a station
      </Button>
      <Textarea
        label="Note"
        maxLength={1000}
        value={note}
        error={errors.note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
    </FormBox>
  );
}

interface RowProps {
  row: StationRow;
  place: number;
  errors: Record<string, string>;
  onChange: (row: StationRow) => void;
  onRemove: () => void;
}

function Row({ row, place, errors, onChange, onRemove }: RowProps) {
  const size = (limb: Limb, field: SizeField) => {
    const isWidth = field === 'widthIn';
    return (
      <StepField
        label={`${limbNames[limb]} ${isWidth ? 'width' : 'thickness'}`}
        unit={isWidth ? 'in' : 'thou'}
        step={isWidth ? 1 / 64 : 1}
        value={row[limb][field]}
        error={errors[fieldName(row.key, limb, field)]}
        onChange={(value) => onChange({ ...row, [limb]: { ...row[limb], [field]: value } })}
      />
    );
  };
  return (
    <fieldset className={classes.row} aria-label={`Station ${place}`}>
      <div className={classes.fade}>
        <StepField
          label="From the fade"
          unit="in"
          step={0.5}
          value={row.fromFadeIn}
          error={errors[fieldName(row.key, null, 'fromFadeIn')]}
          onChange={(fromFadeIn) => onChange({ ...row, fromFadeIn })}
        />
        <Button
          variant="subtle"
          color="gray"
          c="dimmed"
          px={0}
          aria-label={`Take out station ${place}`}
          onClick={onRemove}
        >
          Take out
        </Button>
      </div>
      {limbs.map((limb) => (
        <div key={limb} className={classes.limb}>
          {size(limb, 'widthIn')}
          {size(limb, 'thicknessIn')}
        </div>
      ))}
    </fieldset>
  );
}
