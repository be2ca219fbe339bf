import type { ReactNode } from 'react';
import { NumberField } from '../../parts/number-field.tsx';

interface FigureProps {
  label: string;
  value: number;
  /** NaN while it is no number. */
  onChange: (value: number) => void;
  /** Shown value per stored value: 1000 for thousandths of what is kept in inches. */
  times?: number;
  digits?: number;
  unit?: string;
  error?: ReactNode;
  description?: string;
  disabled?: boolean;
}

/** A number that a plan cannot do without. */
export function Figure({ value, onChange, times = 1, digits = 4, ...rest }: FigureProps) {
  const shown = Number.isNaN(value) ? null : Number((value * times).toFixed(digits));
  return (
    <NumberField
      {...rest}
      value={shown}
      onChange={(next) => onChange(next === null ? Number.NaN : next / times)}
    />
  );
}

interface MaybeFigureProps extends Omit<FigureProps, 'value' | 'onChange'> {
  value: number | null;
  onChange: (value: number | null) => void;
}

/** A number that may be unknown: then it stays empty. */
export function MaybeFigure({ value, onChange, times = 1, digits = 4, ...rest }: MaybeFigureProps) {
  const isEmpty = value === null || Number.isNaN(value);
  return (
    <NumberField
      {...rest}
      value={isEmpty ? null : Number((value * times).toFixed(digits))}
      onChange={(next) => onChange(next === null ? null : next / times)}
    />
  );
}
