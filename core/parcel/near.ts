import { decimal } from '../../shared/measure.ts';
import type { CarrierProfile, Over } from './carrier-profile.ts';
import { type Measured, measures } from './measures.ts';
import { type Parcel, refuseOddParcel } from './parcel.ts';
import { isOver, parcelSize } from './size.ts';

/** Inside a limit by less than this part of it is near: 5 in 100, so 2.4 in of 48 in. Our own choice. */
const nearPart = 0.05;

function nearOnes(measured: Measured, limits: Over, what: string): string[] {
  return measures.flatMap(({ key, label, unit, of }) => {
    const limit = limits[key];
    const value = of(measured);
    if (limit === undefined || isOver(value, limit) || value < limit * (1 - nearPart)) return [];
    const words = isOver(limit, value) ? 'just inside' : 'exactly at';
    return [`${label}, ${decimal(value, 2)} ${unit}, is ${words} ${limit} ${unit} (${what}).`];
  });
}

/**
 * Limits that the parcel is inside of by little: a bulging lid or another measuring tape may put
 * it over. Exactly at a limit is inside.
 * @throws ShopError BAD_INPUT where a size or the weight is not above zero.
 */
export function limitsNear(parcel: Parcel, profile: CarrierProfile): string[] {
  refuseOddParcel(parcel);
  const measured = { ...parcelSize(parcel, profile), weightLb: parcel.weightLb };
  return [
    ...nearOnes(measured, profile.accepted, 'limit of the carrier'),
    ...profile.surcharges.flatMap((each) => nearOnes(measured, each.over, each.name)),
  ];
}
