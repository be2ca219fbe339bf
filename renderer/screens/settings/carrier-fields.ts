import type { Carrier } from '../../../shared/contract/carriers.ts';
import type { CarrierProfile, Over, Surcharge } from '../../../shared/parcel.ts';
import { today } from '../../parts/days.ts';

/** Limits in the order they are read out, with the unit of each. */
export const limitFields: readonly { key: keyof Over; label: string; unit: string }[] = [
  { key: 'longestIn', label: 'Longest side, inches', unit: 'in' },
  { key: 'secondIn', label: 'Second side, inches', unit: 'in' },
  { key: 'lengthPlusGirthIn', label: 'Length plus girth, inches', unit: 'in' },
  { key: 'volumeIn3', label: 'Volume, cubic inches', unit: 'in³' },
  { key: 'weightLb', label: 'Weight, pounds', unit: 'lb' },
];

/** As it is typed: null where there is no such limit, NaN while the text is no number. */
export type LimitFields = Record<keyof Over, number | null>;

export interface SurchargeFields {
  /** Tells the rows of the form apart while they are added and taken out. */
  key: number;
  name: string;
  over: LimitFields;
  minimumLb: number | null;
}

export interface CarrierFields {
  name: string;
  asOf: string;
  rounding: CarrierProfile['rounding'];
  tubes: CarrierProfile['tubes'];
  accepted: LimitFields;
  divisor: number | null;
  overIn3: number | null;
  surcharges: readonly SurchargeFields[];
  claimDays: number | null;
  active: boolean;
}

const noLimits: LimitFields = {
  longestIn: null,
  secondIn: null,
  lengthPlusGirthIn: null,
  volumeIn3: null,
  weightLb: null,
};

export function newSurcharge(rows: readonly SurchargeFields[]): SurchargeFields {
  const key = Math.max(0, ...rows.map((row) => row.key)) + 1;
  return { key, name: '', over: noLimits, minimumLb: null };
}

/** Days to claim until somebody has looked them up in the carrier's terms. */
const usualClaimDays = 60;

export function newCarrier(): CarrierFields {
  return {
    name: '',
    asOf: today(),
    rounding: 'next-inch',
    tubes: 'as-box',
    accepted: noLimits,
    divisor: 139,
    overIn3: null,
    surcharges: [],
    claimDays: usualClaimDays,
    active: true,
  };
}

export function fieldsOfCarrier({ profile, claimDays, active }: Carrier): CarrierFields {
  return {
    name: profile.name,
    asOf: profile.asOf,
    rounding: profile.rounding,
    tubes: profile.tubes,
    accepted: { ...noLimits, ...profile.accepted },
    divisor: profile.dimensional.divisor,
    overIn3: profile.dimensional.overIn3,
    surcharges: profile.surcharges.map((each, key) => ({
      key,
      name: each.name,
      over: { ...noLimits, ...each.over },
      minimumLb: each.minimumLb ?? null,
    })),
    claimDays,
    active,
  };
}

/** A limit that is not typed is left out: none, not zero. */
function overFrom(fields: LimitFields): Over {
  return Object.fromEntries(Object.entries(fields).filter(([, limit]) => limit !== null));
}

function surchargeFrom({ name, over, minimumLb }: SurchargeFields): Surcharge {
  const given = { name, over: overFrom(over) };
  return minimumLb === null ? given : { ...given, minimumLb };
}

/** What add and edit take; an empty number that is needed becomes NaN, which the contract refuses. */
export function carrierInput(fields: CarrierFields): {
  profile: CarrierProfile;
  claimDays: number;
} {
  return {
    profile: {
      name: fields.name,
      asOf: fields.asOf,
      rounding: fields.rounding,
      tubes: fields.tubes,
      accepted: overFrom(fields.accepted),
      dimensional: { divisor: fields.divisor ?? Number.NaN, overIn3: fields.overIn3 },
      surcharges: fields.surcharges.map(surchargeFrom),
    },
    claimDays: fields.claimDays ?? Number.NaN,
  };
}
