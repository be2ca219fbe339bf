import { decimal } from '../../../shared/measure.ts';
import { type Assessment, parcelShapeLabels } from '../../../shared/parcel.ts';
import type { ShipmentRow } from '../../storage/tables.ts';

type Sizes = Pick<ShipmentRow, 'shape' | 'length_in' | 'width_in' | 'height_in' | 'weight_lb'>;

/** `box 66 x 5 x 5 in, 6.5 lb`; only what is known, empty where nothing is. */
export function sizeWords(row: Sizes): string {
  const sides = [row.length_in, row.width_in, row.height_in].filter((side) => side !== null);
  const size = `${parcelShapeLabels[row.shape].toLowerCase()} ${sides.map((side) => decimal(side, 4)).join(' x ')} in`;
  return [
    ...(sides.length === 0 ? [] : [size]),
    ...(row.weight_lb === null ? [] : [`${decimal(row.weight_lb, 2)} lb`]),
  ].join(', ');
}

/** One line of history about a parcel. */
export function parcelWords(
  row: Sizes & Pick<ShipmentRow, 'direction' | 'carrier_name' | 'tracking'>,
  assessed: Assessment | null,
): string {
  const refused = assessed !== null && assessed.refusals.length > 0;
  return [
    `Parcel ${row.direction}, ${row.carrier_name}`,
    ...[sizeWords(row), row.tracking === '' ? '' : `tracking ${row.tracking}`].filter(
      (words) => words !== '',
    ),
    ...(refused ? [`over a limit: ${assessed.refusals.join(' ')}`] : []),
  ].join('; ');
}
