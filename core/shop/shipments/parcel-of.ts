import type { Parcel } from '../../parcel/index.ts';
import type { ShipmentRow } from '../../storage/tables.ts';

type Sizes = Pick<ShipmentRow, 'shape' | 'length_in' | 'width_in' | 'height_in' | 'weight_lb'>;

/** The parcel of a row, or null while a size or the weight is missing. */
export function parcelOf(row: Sizes): Parcel | null {
  const { shape, length_in: length, width_in: width, height_in: height, weight_lb: weight } = row;
  if (length === null || width === null || weight === null) return null;
  switch (shape) {
    case 'box':
      return height === null ? null : { shape, sidesIn: [length, width, height], weightLb: weight };
    case 'round-tube':
      return { shape, lengthIn: length, diameterIn: width, weightLb: weight };
    case 'three-sided-tube':
      return { shape, lengthIn: length, sideIn: width, weightLb: weight };
  }
}
