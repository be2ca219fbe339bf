import type { ReactNode } from 'react';
import { NumberField } from '../../parts/number-field.tsx';

interface ThouFieldProps {
  label: string;
  /** Inches. */
  value: number | null;
  onChange: (inches: number | null) => void;
  error?: ReactNode;
}

const scaled = (value: number | null, by: number) =>
  value === null ? null : Number((value * by).toFixed(6));

/** A thickness kept in inches and typed in thousandths, as a loupe or calliper reads it. */
export function ThouField({ value, onChange, ...rest }: ThouFieldProps) {
  return (
    <NumberField
      {...rest}
      unit="thou"
      value={scaled(value, 1000)}
      onChange={(thou) => onChange(scaled(thou, 1 / 1000))}
    />
  );
}
