import { TextInput } from '@mantine/core';
import { type KeyboardEvent, useState } from 'react';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { PlanStationInput } from '../../../shared/plan-input.ts';
import { numberFrom } from '../../parts/numbers.ts';
import { stepped } from '../bows/geometry/station-rows.ts';
import { useDesk } from './desk-context.tsx';
import { withStation } from './draft.ts';
import { stationText } from './limb-places.ts';
import { orderTrouble, stationRows } from './station-rows.ts';
import classes from './station-table.module.css';

interface CellProps {
  label: string;
  value: number;
  /** Shown per stored value. */
  times: number;
  /** In the unit shown. */
  step: number;
  digits: number;
  error: string | undefined;
  onChange: (value: number) => void;
}

/** A number in a table: typed, or stepped with the up and down keys. */
function Cell({ label, value, times, step, digits, error, onChange }: CellProps) {
  const shown = Number.isNaN(value) ? Number.NaN : Number((value * times).toFixed(digits));
  const [typed, setTyped] = useState(Number.isNaN(shown) ? '' : String(shown));
  const given = numberFrom(typed) ?? Number.NaN;
  const isMine = Number.isNaN(shown) || Number(given.toFixed(digits)) === shown;
  const text = isMine ? typed : String(shown);
  const set = (next: number) => onChange(next / times);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    set(stepped(shown, step, event.key === 'ArrowUp' ? 1 : -1));
  };
  return (
    <TextInput
      aria-label={label}
      inputMode="decimal"
      autoComplete="off"
      value={text}
      error={error}
      onKeyDown={onKeyDown}
      onChange={(event) => {
        setTyped(event.currentTarget.value);
        set(numberFrom(event.currentTarget.value) ?? Number.NaN);
      }}
    />
  );
}

const limbNames: Record<Limb, string> = { upper: 'Upper', lower: 'Lower' };
const columns = [
  {
    field: 'backWidthIn',
    head: 'back (in)',
    name: 'back width',
    times: 1,
    step: 1 / 64,
    digits: 4,
  },
  {
    field: 'bellyWidthIn',
    head: 'belly (in)',
    name: 'belly width',
    times: 1,
    step: 1 / 64,
    digits: 4,
  },
  {
    field: 'thicknessIn',
    head: 'thick (thou)',
    name: 'thickness',
    times: 1000,
    step: 1,
    digits: 3,
  },
] as const satisfies readonly { field: keyof PlanStationInput; [key: string]: unknown }[];

/** Every station of both limbs, each size its own field. */
export function StationTable() {
  const { input, change, errors } = useDesk();
  const trouble = orderTrouble(input.bow);
  const missing = limbs.map((limb) => errors[`bow.${limb}.stations`]).find(Boolean);
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the panel scrolls by keyboard. */}
      <section className={classes.scroll} aria-label="Stations of both limbs" tabIndex={0}>
        <table className={classes.table}>
          <thead>
            <tr>
              <th scope="col">From the fade</th>
              {limbs.flatMap((limb) =>
                columns.map(({ field, head }) => (
                  <th scope="col" key={`${limb} ${field}`}>
                    {limbNames[limb]} {head}
                  </th>
                )),
              )}
            </tr>
          </thead>
          <tbody>
            {stationRows(input.bow).map((row, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row has no other name while it is typed.
              <tr key={place}>
                <th scope="row">{stationText(row.fromFadeIn)}"</th>
                {limbs.flatMap((limb) =>
                  columns.map(({ field, name, times, step, digits }) => {
                    const index = row[limb];
                    const station = index === null ? undefined : input.bow[limb].stations[index];
                    if (index === null || station === undefined) {
                      return <td key={`${limb} ${field}`}>–</td>;
                    }
                    return (
                      <td key={`${limb} ${field}`}>
                        <Cell
                          label={`${limbNames[limb]} ${name} at ${stationText(row.fromFadeIn)} in`}
                          value={station[field]}
                          times={times}
                          step={step}
                          digits={digits}
                          error={errors[`bow.${limb}.stations.${index}.${field}`]}
                          onChange={(value) =>
                            change(withStation(input, { limb, index }, { [field]: value }))
                          }
                        />
                      </td>
                    );
                  }),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {trouble === null && missing === undefined ? null : (
        <p className={classes.error} role="alert">
          {missing ?? trouble}
        </p>
      )}
    </>
  );
}
