import { TextInput } from '@mantine/core';
import { type KeyboardEventHandler, type ReactNode, useState } from 'react';
import { numberFrom } from './numbers.ts';

interface NumberFieldProps {
  label: string;
  value: number | null;
  /** NaN while the text is no number: the contract's schema refuses it. */
  onChange: (value: number | null) => void;
  /** Unit at the right edge: `lb`, `in`. Name it in the label too. */
  unit?: string;
  error?: ReactNode;
  description?: string;
  required?: boolean;
  disabled?: boolean;
  placeholder?: string;
  onKeyDown?: KeyboardEventHandler<HTMLInputElement>;
}

/** A measured number as people write it: decimals or a fraction of an inch (`28 1/4`). */
export function NumberField({ value, onChange, unit, error, ...rest }: NumberFieldProps) {
  const [typed, setTyped] = useState(value === null || Number.isNaN(value) ? '' : String(value));
  const given = numberFrom(typed);
  const fits = Object.is(given, value) || (Number.isNaN(given) && value === null);
  const shown = fits ? typed : value === null ? '' : String(value);
  const bad = Number.isNaN(numberFrom(shown)) ? 'Write a number, like 28 or 28 1/4.' : null;
  return (
    <TextInput
      {...rest}
      inputMode="decimal"
      autoComplete="off"
      value={shown}
      error={bad ?? error}
      rightSection={unit}
      onChange={(event) => {
        setTyped(event.currentTarget.value);
        onChange(numberFrom(event.currentTarget.value));
      }}
    />
  );
}
