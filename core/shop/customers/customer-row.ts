import type { Customer, CustomerFields } from '../../../shared/contract/customers.ts';
import type { CustomerRow } from '../../storage/tables.ts';
import { addressColumns, addressOf } from '../setup/address.ts';

export function customerColumns(
  fields: CustomerFields,
): Omit<CustomerRow, 'id' | 'row_version' | 'created_at'> {
  return {
    name: fields.name,
    email: fields.email,
    phone: fields.phone,
    preferred_contact: fields.preferredContact,
    ...addressColumns(fields.address),
    shooting_style: fields.shootingStyle,
    own_draw_in: fields.ownDrawIn,
    notes: fields.notes,
  };
}

export function customerOf(row: CustomerRow): Customer {
  return {
    id: row.id,
    rowVersion: row.row_version,
    createdAt: row.created_at,
    name: row.name,
    email: row.email,
    phone: row.phone,
    preferredContact: row.preferred_contact,
    address: addressOf(row),
    shootingStyle: row.shooting_style,
    ownDrawIn: row.own_draw_in,
    notes: row.notes,
  };
}
