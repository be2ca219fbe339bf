import type { Address } from '../../../shared/contract/setup.ts';
import type { AddressColumns } from '../../storage/tables.ts';

export function addressOf(row: AddressColumns): Address {
  return {
    street: row.street,
    city: row.city,
    region: row.region,
    postalCode: row.postal_code,
    country: row.country,
  };
}

export function addressColumns(address: Address): AddressColumns {
  return {
    street: address.street,
    city: address.city,
    region: address.region,
    postal_code: address.postalCode,
    country: address.country,
  };
}

/** The address as written on a parcel; empty parts left out. */
export function addressLines(address: Address): string[] {
  const town = [address.city, address.region].filter((part) => part !== '').join(', ');
  return [address.street, `${town} ${address.postalCode}`.trim(), address.country].filter(
    (part) => part !== '',
  );
}
