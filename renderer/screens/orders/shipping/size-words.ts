import type { Shipment } from '../../../../shared/contract/shipments.ts';
import { decimal } from '../../../../shared/measure.ts';
import { parcelShapeLabels } from '../../../../shared/parcel.ts';

type Sizes = Pick<Shipment, 'shape' | 'lengthIn' | 'widthIn' | 'heightIn' | 'weightLb'>;

/** `Box 66 x 5 x 5 in, 6.5 lb`; what is missing is said. */
export function sizeWords({ shape, lengthIn, widthIn, heightIn, weightLb }: Sizes): string {
  const sides = [lengthIn, widthIn, shape === 'box' ? heightIn : null].filter(
    (side) => side !== null,
  );
  const measured = lengthIn !== null && widthIn !== null && (shape !== 'box' || heightIn !== null);
  const size = sides.map((side) => decimal(side, 4)).join(' x ');
  return [
    sides.length === 0
      ? `${parcelShapeLabels[shape]}, not measured`
      : `${parcelShapeLabels[shape]} ${size} in${measured ? '' : ', a side is missing'}`,
    weightLb === null ? 'not weighed' : `${decimal(weightLb, 2)} lb`,
  ].join(', ');
}
