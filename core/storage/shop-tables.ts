import type { Role } from '../../shared/people.ts';
import type { Flag, Row } from './row.ts';

export interface AddressColumns {
  street: string;
  city: string;
  region: string;
  postal_code: string;
  country: string;
}

export interface ShopRow extends Row, AddressColumns {
  name: string;
  phone: string;
  email: string;
  paper_format: 'letter' | 'a4';
  tag_format: '4x6' | 'a6';
  contents_on_tag: Flag;
  is_demo: Flag;
  reminder_days_json: string;
  storage_fee_days: number;
  abandoned_days: number;
  tax_name: string;
  /** Parts in a million: 8.875 % is 88,750. */
  tax_rate_ppm: number;
  deposit_percent: number;
  rush_fee_cents: number;
  return_freight_cents: number;
  marking_round_lbf: number;
  arrow_grains_per_lb: number;
  care_terms: string;
  rack_slots: number;
  /** Part of the sprayed finish that ends on slender work. */
  transfer_efficiency: number;
}

export interface PersonRow extends Row {
  name: string;
  initials: string;
  role: Role;
  active: Flag;
}

export interface CustomerRow extends Row, AddressColumns {
  name: string;
  email: string;
  phone: string;
  preferred_contact: 'email' | 'phone' | 'any';
  shooting_style: 'split' | 'three-under' | 'unknown';
  own_draw_in: number | null;
  notes: string;
  created_at: string;
}

export interface CarrierRow extends Row {
  name: string;
  as_of: string;
  profile_json: string;
  claim_days: number;
  active: Flag;
}

export interface TaskRow extends Row {
  order_id: string | null;
  what: string;
  due_on: string;
  for_person_id: string | null;
  created_at: string;
  created_by: string;
  done_at: string | null;
  done_by: string | null;
  done_note: string;
}

export interface ShopTables {
  shop: ShopRow;
  person: PersonRow;
  customer: CustomerRow;
  carrier: CarrierRow;
  task: TaskRow;
}
