import { TextInput } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import { centsFrom } from '../../../parts/days.ts';

interface MoneyFieldProps {
  label: string;
  /** Cents; NaN while the text is no amount, which the contract's schema refuses. */
  value: number | null;
  onChange: (cents: number | null) => void;
  error?: ReactNode;
}

const typedFrom = (cents: number | null): string =>
  cents === null || Number.isNaN(cents) ? '' : (cents / 100).toFixed(cents % 100 === 0 ? 0 : 2);

const read = (typed: string): number | null =>
  typed.trim() === '' ? null : (centsFrom(typed) ?? Number.NaN);

/** An amount in dollars as people write it: `180`, `$1,250.50`. */
export function MoneyField({ label, value, onChange, error }: MoneyFieldProps) {
  const [typed, setTyped] = useState(typedFrom(value));
  const shown = Object.is(read(typed), value) ? typed : typedFrom(value);
  const isBad = Number.isNaN(read(shown));
  return (
    <TextInput
      label={label}
      inputMode="decimal"
      autoComplete="off"
      leftSection="$"
      value={shown}
      error={isBad ? 'Write an amount, like 180 or 180.50.' : error}
      onChange={(event) => {
        setTyped(event.currentTarget.value);
        onChange(read(event.currentTarget.value));
      }}
    />
  );
}
