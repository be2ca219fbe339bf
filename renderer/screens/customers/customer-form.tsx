import { Select, Textarea, TextInput } from '@mantine/core';
import { type CustomerFields, customerFields } from '../../../shared/contract/customers.ts';
import { AddressFields, emptyAddress } from '../../parts/address-fields.tsx';
import { errorsUnder, fieldErrors } from '../../parts/field-errors.ts';
import { FieldGrid, WideField } from '../../parts/fields.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { contactWords, styleWords } from './customer-words.ts';

export const emptyCustomer: CustomerFields = {
  name: '',
  email: '',
  phone: '',
  preferredContact: 'any',
  address: emptyAddress,
  shootingStyle: 'unknown',
  ownDrawIn: null,
  notes: '',
};

/** What is wrong, by field path; empty when the customer can be written. */
export function customerErrors(value: CustomerFields): Record<string, string> {
  return fieldErrors(customerFields, value);
}

interface CustomerFieldsFormProps {
  value: CustomerFields;
  onChange: (value: CustomerFields) => void;
  errors: Record<string, string>;
}

/** Everything a shop keeps of a customer, as a controlled group of fields. */
export function CustomerFieldsForm({ value, onChange, errors }: CustomerFieldsFormProps) {
  const set = (part: Partial<CustomerFields>) => onChange({ ...value, ...part });
  return (
    <FieldGrid>
      <TextInput
        label="Name"
        required
        autoComplete="off"
        value={value.name}
        error={errors.name}
        onChange={(event) => set({ name: event.currentTarget.value })}
      />
      <TextInput
        label="Phone"
        inputMode="tel"
        autoComplete="off"
        value={value.phone}
        error={errors.phone}
        onChange={(event) => set({ phone: event.currentTarget.value })}
      />
      <TextInput
        label="E-mail"
        inputMode="email"
        autoComplete="off"
        value={value.email}
        error={errors.email}
        onChange={(event) => set({ email: event.currentTarget.value })}
      />
      <Select
        label="Prefers to be reached by"
        data={contactWords}
        value={value.preferredContact}
        error={errors.preferredContact}
        onChange={(preferredContact) => preferredContact && set({ preferredContact })}
      />
      <AddressFields
        value={value.address}
        onChange={(address) => set({ address })}
        errors={errorsUnder(errors, 'address')}
      />
      <Select
        label="Shoots"
        data={styleWords}
        value={value.shootingStyle}
        error={errors.shootingStyle}
        onChange={(shootingStyle) => shootingStyle && set({ shootingStyle })}
      />
      <NumberField
        label="Own draw length, inches AMO"
        unit="in"
        value={value.ownDrawIn}
        error={errors.ownDrawIn}
        onChange={(ownDrawIn) => set({ ownDrawIn })}
      />
      <WideField>
        <Textarea
          label="Notes"
          value={value.notes}
          error={errors.notes}
          onChange={(event) => set({ notes: event.currentTarget.value })}
        />
      </WideField>
    </FieldGrid>
  );
}
