import { ShopError } from '../../shared/errors.ts';

/** Outside sizes in inches, weight in pounds (avoirdupois), packed and closed. */
export type Parcel = { weightLb: number } & (
  | { shape: 'box'; sidesIn: readonly [number, number, number] }
  | { shape: 'round-tube'; lengthIn: number; diameterIn: number }
  | { shape: 'three-sided-tube'; lengthIn: number; sideIn: number }
);

function sizesOf(parcel: Parcel): number[] {
  switch (parcel.shape) {
    case 'box':
      return [...parcel.sidesIn];
    case 'round-tube':
      return [parcel.lengthIn, parcel.diameterIn];
    case 'three-sided-tube':
      return [parcel.lengthIn, parcel.sideIn];
  }
}

/** @throws ShopError BAD_INPUT where a size or the weight is not a number above zero. */
export function refuseOddParcel(parcel: Parcel): void {
  for (const size of sizesOf(parcel)) {
    if (!Number.isFinite(size) || size <= 0) {
      throw new ShopError('BAD_INPUT', 'Every side of the parcel must be more than 0 in.', {
        size: 'Measure the outside of the closed box.',
      });
    }
  }
  if (!Number.isFinite(parcel.weightLb) || parcel.weightLb <= 0) {
    throw new ShopError('BAD_INPUT', 'The parcel must weigh more than 0 lb.', {
      weightLb: 'Weigh the closed box.',
    });
  }
}
