import { ActionIcon } from '@mantine/core';
import { IconMinus, IconPlus } from '@tabler/icons-react';
import type { KeyboardEvent } from 'react';
import { NumberField } from '../../../parts/number-field.tsx';
import { stepped } from './station-rows.ts';
import classes from './stations.module.css';

interface StepFieldProps {
  label: string;
  /** Inches. */
  value: number | null;
  onChange: (inches: number | null) => void;
  /** One step, in the unit shown. */
  step: number;
  unit: 'in' | 'thou';
  error?: string | undefined;
}

const perInch = { in: 1, thou: 1000 };
const scaled = (value: number | null, by: number) =>
  value === null ? null : Number((value * by).toFixed(6));

/** A measured number with steps: by its buttons, or by the up and down keys. */
export function StepField({ label, value, onChange, step, unit, error }: StepFieldProps) {
  const shown = scaled(value, perInch[unit]);
  const change = (next: number | null) => onChange(scaled(next, 1 / perInch[unit]));
  const move = (direction: 1 | -1) => change(stepped(shown, step, direction));
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    move(event.key === 'ArrowUp' ? 1 : -1);
  };
  return (
    <div className={classes.step}>
      <ActionIcon
        variant="default"
        aria-label={`${label}: less`}
        tabIndex={-1}
        onClick={() => move(-1)}
      >
        <IconMinus size={18} aria-hidden="true" />
      </ActionIcon>
      <NumberField
        label={label}
        unit={unit}
        value={shown}
        error={error}
        onKeyDown={onKeyDown}
        onChange={change}
      />
      <ActionIcon
        variant="default"
        aria-label={`${label}: more`}
        tabIndex={-1}
        onClick={() => move(1)}
      >
        <IconPlus size={18} aria-hidden="true" />
      </ActionIcon>
    </div>
  );
}
