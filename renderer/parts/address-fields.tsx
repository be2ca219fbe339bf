import { TextInput } from '@mantine/core';
import type { Address } from '../../shared/contract/setup.ts';
import { WideField } from './fields.tsx';

export const emptyAddress: Address = {
  street: '',
  city: '',
  region: '',
  postalCode: '',
  country: '',
};

/** The address as lines, empty parts left out. */
export function addressLines(address: Address): string[] {
  const town = [address.city, address.region, address.postalCode].filter(Boolean).join(' ');
  return [address.street, town, address.country].filter((line) => line !== '');
}

interface AddressFieldsProps {
  value: Address;
  onChange: (value: Address) => void;
  errors: Record<string, string>;
}

/** Street, town and country; to be put inside a FieldGrid. */
export function AddressFields({ value, onChange, errors }: AddressFieldsProps) {
  const field = (key: keyof Address, label: string) => (
    <TextInput
      label={label}
      value={value[key]}
      error={errors[key]}
      autoComplete="off"
      onChange={(event) => onChange({ ...value, [key]: event.currentTarget.value })}
    />
  );
  return (
    <>
      <WideField>{field('street', 'Street and number')}</WideField>
      {field('city', 'Town')}
      {field('region', 'State or region')}
      {field('postalCode', 'Postal code')}
      {field('country', 'Country')}
    </>
  );
}
