import { Select } from '@mantine/core';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { referenceWords } from './bow-words.ts';

type NumberKey = 'amoLengthIn' | 'markedWeightLbf' | 'markedDrawIn' | 'maxSafeDrawIn';

/** What is written on the bow, and how far it may be drawn. */
export function MarkedFields({ value, set, errors }: BowGroupProps) {
  const measured = (key: NumberKey, label: string, unit: string) => (
    <NumberField
      label={label}
      unit={unit}
      value={value[key]}
      error={errors[key]}
      onChange={(given) => set({ [key]: given })}
    />
  );
  return (
    <FieldGrid>
      {measured('amoLengthIn', 'AMO length as marked, inches', 'in')}
      {measured('markedWeightLbf', 'Marked weight, pounds', 'lb')}
      {measured('markedDrawIn', 'Marked at draw length, inches', 'in')}
      <Select
        label="That draw was measured"
        data={referenceWords}
        value={value.markedDrawReference}
        onChange={(reference) => reference && set({ markedDrawReference: reference })}
      />
      {measured('maxSafeDrawIn', 'Never draw past, inches AMO', 'in')}
    </FieldGrid>
  );
}
