import { decimal } from '../../../shared/measure.ts';

/** `20 lb: 0.1 lb over`, `60 lb: right`. */
export function errorText(loadLbf: number, errorLbf: number): string {
  const size = decimal(Math.abs(errorLbf), 2);
  const error = size === '0' ? 'right' : `${size} lb ${errorLbf > 0 ? 'over' : 'under'}`;
  return `${decimal(loadLbf, 2)} lb: ${error}`;
}
