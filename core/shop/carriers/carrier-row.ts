import type { Carrier } from '../../../shared/contract/carriers.ts';
import type { CarrierProfile } from '../../../shared/parcel.ts';
import type { CarrierRow } from '../../storage/tables.ts';

/** Days to claim, where nobody has looked them up: check them against the carrier's terms. */
export const usualClaimDays = 60;

export function profileOf(row: Pick<CarrierRow, 'profile_json'>): CarrierProfile {
  return JSON.parse(row.profile_json) as CarrierProfile;
}

export function carrierOf(row: CarrierRow): Carrier {
  return {
    id: row.id,
    rowVersion: row.row_version,
    name: row.name,
    asOf: row.as_of,
    profile: profileOf(row),
    claimDays: row.claim_days,
    active: row.active === 1,
  };
}

/** The name and the day stand beside the profile too, so that lists need not read it. */
export function carrierColumns(profile: CarrierProfile, claimDays: number) {
  return {
    name: profile.name,
    as_of: profile.asOf,
    profile_json: JSON.stringify(profile),
    claim_days: claimDays,
  };
}
