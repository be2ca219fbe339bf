import { contract } from '../../../shared/contract/index.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import type { AirNumbers } from './air-words.ts';

/** Air that can be looked at: all that is needed is there and inside what the contract takes. */
export function airFrom(fields: {
  airF: number | null;
  humidityPercent: number | null;
  surfaceF: number | null;
}): AirNumbers | null {
  const { airF, humidityPercent, surfaceF } = fields;
  if (airF === null || humidityPercent === null) return null;
  const air = { airF, humidityPercent, surfaceF };
  const errors = inputErrors(contract.finish.recordAir, { ...air, note: '', at: null });
  return Object.keys(errors).length === 0 ? air : null;
}
