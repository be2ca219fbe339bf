import { Select, TextInput } from '@mantine/core';
import { takesMoisture } from '../../../shared/bow-checks.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import type { BowGroupProps } from './bow-fields.ts';
import { listedSpeciesWords, lowStretchWords } from './bow-words.ts';

/** The wood inside, the edges, and what string the tips bear. */
export function WoodFields({ value, set, errors }: BowGroupProps) {
  const hasMoisture = takesMoisture(value) || value.moisturePct !== null;
  return (
    <FieldGrid>
      <TextInput
        label="Core wood"
        autoComplete="off"
        value={value.coreWood}
        error={errors.coreWood}
        onChange={(event) => set({ coreWood: event.currentTarget.value })}
      />
      {hasMoisture ? (
        <NumberField
          label="Moisture of the wood, percent"
          unit="%"
          value={value.moisturePct}
          error={errors.moisturePct}
          onChange={(moisturePct) => set({ moisturePct })}
        />
      ) : null}
      <NumberField
        label="Edge radius as it came, inches"
        unit="in"
        value={value.edgeRadiusIn}
        error={errors.edgeRadiusIn}
        onChange={(edgeRadiusIn) => set({ edgeRadiusIn })}
      />
      <Select
        label="Low-stretch string"
        data={lowStretchWords}
        value={value.lowStretchTips}
        onChange={(lowStretchTips) => lowStretchTips && set({ lowStretchTips })}
      />
      <Select
        label="Wood or horn of a listed species"
        description="Species whose trade is controlled, e.g. under CITES."
        data={listedSpeciesWords}
        value={value.listedSpecies}
        onChange={(listedSpecies) => listedSpecies && set({ listedSpecies })}
      />
    </FieldGrid>
  );
}
