import { decimal } from '../../shared/measure.ts';
import type { CarrierProfile, Over } from './carrier-profile.ts';
import { type Measured, measures } from './measures.ts';
import { type Parcel, refuseOddParcel } from './parcel.ts';
import { isOver, nextPound, type ParcelSize, parcelSize } from './size.ts';

export interface ParcelAssessment extends ParcelSize {
  /** One sentence for each limit that is broken; empty means the carrier takes it. */
  refusals: string[];
  /** Names of surcharges that apply. */
  surcharges: string[];
  /** Weight that the volume counts for, whole pounds; null where this carrier does not ask. */
  dimensionalLb: number | null;
  /** Whole pounds that are charged. */
  billableLb: number;
}

function broken(measured: Measured, over: Over): string[] {
  return measures
    .filter(({ key, of }) => isOver(of(measured), over[key]))
    .map(
      ({ key, label, unit, of }) =>
        `${label} is ${decimal(of(measured), 2)} ${unit}, over ${over[key]} ${unit}.`,
    );
}

function dimensionalLb(size: ParcelSize, { dimensional }: CarrierProfile): number | null {
  if (dimensional.overIn3 !== null && !isOver(size.volumeIn3, dimensional.overIn3)) return null;
  return nextPound(size.volumeIn3 / dimensional.divisor);
}

/**
 * What a carrier will make of a parcel: whether it is taken, what it is charged as and which
 * surcharges apply, by the figures of the profile and their day.
 * @throws ShopError BAD_INPUT where a size or the weight is not above zero.
 */
export function assessParcel(parcel: Parcel, profile: CarrierProfile): ParcelAssessment {
  refuseOddParcel(parcel);
  const size = parcelSize(parcel, profile);
  const measured = { ...size, weightLb: parcel.weightLb };
  const surcharges = profile.surcharges.filter((each) => broken(measured, each.over).length > 0);
  const dimensional = dimensionalLb(size, profile);
  return {
    ...size,
    refusals: broken(measured, profile.accepted),
    surcharges: surcharges.map((each) => each.name),
    dimensionalLb: dimensional,
    billableLb: Math.max(
      nextPound(parcel.weightLb),
      dimensional ?? 0,
      ...surcharges.map((each) => each.minimumLb ?? 0),
    ),
  };
}
