import { Select } from '@mantine/core';
import type { ReactNode } from 'react';
import { gritWithSize, type SizedGrit } from '../../../shared/grit.ts';
import { gritKey } from './grit-key.ts';

interface GritSelectProps {
  label: string;
  description?: string;
  /** All grits, coarsest first: sizes decide, in micrometres, never the number. */
  grits: readonly SizedGrit[];
  value: string | null;
  onChange: (key: string | null) => void;
  error?: ReactNode;
  /** Words for choosing none; left out where one is needed. */
  none?: string;
  required?: boolean;
}

/** In the list, as tall as every other choice: a cross to clear with is too small for a glove. */
const noneKey = 'none';

/** A grit of either scale, each with its grain size, coarsest first. */
export function GritSelect(props: GritSelectProps) {
  const { grits, value, onChange, none, ...field } = props;
  return (
    <Select
      {...field}
      searchable
      nothingFoundMessage="No table prints that grit."
      maxDropdownHeight={320}
      data={[
        ...(none === undefined ? [] : [{ value: noneKey, label: none }]),
        ...grits.map((grit) => ({ value: gritKey(grit), label: gritWithSize(grit) })),
      ]}
      value={value}
      placeholder={none ?? 'Choose a grit'}
      onChange={(key) => onChange(key === noneKey ? null : key)}
    />
  );
}
