import { Select, TextInput } from '@mantine/core';
import { FieldGrid } from '../../parts/fields.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { constructionWords, handWords, kindWords, takeDownWords } from './bow-words.ts';

/** Which bow it is, as anybody can see. */
export function KindFields({ value, set, errors }: BowGroupProps) {
  const words = (key: 'maker' | 'model' | 'serial', label: string) => (
    <TextInput
      label={label}
      autoComplete="off"
      value={value[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <FieldGrid>
      <Select
        label="Kind"
        data={kindWords}
        value={value.kind}
        onChange={(kind) => kind && set({ kind })}
      />
      <Select
        label="Built of"
        data={constructionWords}
        value={value.construction}
        onChange={(construction) => construction && set({ construction })}
      />
      <Select
        label="One-piece or take-down"
        data={takeDownWords}
        value={value.takeDown}
        error={errors.takeDown}
        onChange={(takeDown) => takeDown && set({ takeDown })}
      />
      <Select
        label="Hand"
        data={handWords}
        value={value.hand}
        onChange={(hand) => hand && set({ hand })}
      />
      {words('maker', 'Maker')}
      {words('model', 'Model')}
      {words('serial', 'Serial')}
    </FieldGrid>
  );
}
