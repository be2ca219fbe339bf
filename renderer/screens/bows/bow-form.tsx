import { Select, Textarea, TextInput } from '@mantine/core';
import { type BowFields, bowFields } from '../../../shared/contract/bows.ts';
import { fieldErrors } from '../../parts/field-errors.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { MarkedFields } from './bow-marked-fields.tsx';
import {
  constructionWords,
  facingWords,
  handWords,
  kindWords,
  takeDownWords,
} from './bow-words.ts';

export const emptyBow: BowFields = {
  kind: 'longbow',
  construction: 'glass-laminated',
  takeDown: 'one-piece',
  hand: 'right',
  maker: '',
  model: '',
  serial: '',
  amoLengthIn: null,
  markedWeightLbf: null,
  markedDrawIn: null,
  markedDrawReference: 'unknown',
  maxSafeDrawIn: null,
  facing: 'unknown',
  notes: '',
};

/** What is wrong, by field path; empty when the bow can be written. */
export function bowErrors(value: BowFields): Record<string, string> {
  return fieldErrors(bowFields, value);
}

interface BowFieldsFormProps {
  value: BowFields;
  onChange: (value: BowFields) => void;
  errors: Record<string, string>;
}

/** Everything a shop keeps of a bow, as a controlled group of fields. */
export function BowFieldsForm({ value, onChange, errors }: BowFieldsFormProps) {
  const set = (part: Partial<BowFields>) => onChange({ ...value, ...part });
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
      <Select
        label="Limb facing"
        data={facingWords}
        value={value.facing}
        onChange={(facing) => facing && set({ facing })}
      />
      <MarkedFields value={value} set={set} errors={errors} />
      <WideField>
        <Textarea
          label="Notes on the bow"
          value={value.notes}
          error={errors.notes}
          onChange={(event) => set({ notes: event.currentTarget.value })}
        />
      </WideField>
    </FieldGrid>
  );
}
