import { Checkbox, Select, TextInput } from '@mantine/core';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { AddressFields } from '../../parts/address-fields.tsx';
import { errorsUnder } from '../../parts/field-errors.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { Panel } from '../../parts/panel.tsx';
import { WaitingFields } from './waiting-fields.tsx';

export type ShopFields = Omit<ShopDetails, 'rowVersion' | 'isDemo'>;

const paperWords = [
  { value: 'letter', label: 'Letter, 8 1/2 x 11 in' },
  { value: 'a4', label: 'A4, 210 x 297 mm' },
] as const;
const tagWords = [
  { value: '4x6', label: '4 x 6 in' },
  { value: 'a6', label: 'A6, 105 x 148 mm' },
] as const;

interface ShopFieldsFormProps {
  value: ShopFields;
  onChange: (value: ShopFields) => void;
  errors: Record<string, string>;
}

/** What the papers say of the shop, and how long it waits for its customers. */
export function ShopFieldsForm(props: ShopFieldsFormProps) {
  return (
    <div style={{ display: 'grid', gap: 16 }}>
      <Panel title="The shop on its papers">
        <PaperFields {...props} />
      </Panel>
      <Panel title="Waiting for customers">
        <WaitingFields {...props} />
      </Panel>
    </div>
  );
}

function PaperFields({ value, onChange, errors }: ShopFieldsFormProps) {
  const set = (part: Partial<ShopFields>) => onChange({ ...value, ...part });
  const line = (key: 'name' | 'phone' | 'email', label: string, required = false) => (
    <TextInput
      label={label}
      required={required}
      autoComplete="off"
      value={value[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <FieldGrid>
      {line('name', 'Shop name', true)}
      {line('phone', 'Phone')}
      {line('email', 'E-mail')}
      <AddressFields
        value={value.address}
        onChange={(address) => set({ address })}
        errors={errorsUnder(errors, 'address')}
      />
      <Select
        label="Paper"
        data={paperWords}
        value={value.paperFormat}
        onChange={(paperFormat) => paperFormat && set({ paperFormat })}
      />
      <Select
        label="Shipping tag"
        data={tagWords}
        value={value.tagFormat}
        onChange={(tagFormat) => tagFormat && set({ tagFormat })}
      />
      <WideField>
        <Checkbox
          label="Name the contents on the shipping tag"
          description="Off keeps the outside of the parcel silent about what is in it."
          checked={value.contentsOnTag}
          onChange={(event) => set({ contentsOnTag: event.currentTarget.checked })}
        />
      </WideField>
    </FieldGrid>
  );
}
