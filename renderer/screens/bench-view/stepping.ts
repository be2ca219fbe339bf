import { decimal, difference, inchFraction } from '../../../shared/measure.ts';
import { digitsOf, type Quantity, unitText } from './device-reading.ts';

/** The steps of the bench. */
export const steps = {
  pull: [0.1, 1],
  width: [1 / 64],
  cut: [1 / 64],
  thou: [1],
  tiller: [1 / 32],
  brace: [1 / 16],
  draw: [1 / 4],
} as const;

/** One step up or down, landing on whole steps, kept within its limits. */
export function stepped(value: number, by: number, limits: { min: number; max: number }): number {
  const size = Math.abs(by);
  const places = difference(value, 0) / size;
  const near = Math.round(places);
  const onStep = Math.abs(places - near) < 1e-4;
  const next =
    by > 0 ? Math.floor(onStep ? near : places) + 1 : Math.ceil(onStep ? near : places) - 1;
  return Number(Math.min(limits.max, Math.max(limits.min, next * size)).toFixed(6));
}

/** A length both ways: decimals for the calliper, a fraction for the rule. */
export function bothWays(inches: number, parts = 64): string {
  return `${inches.toFixed(3)} in (${inchFraction(inches, parts)}")`;
}

/** A value as the bench reads it back. */
export function valueText(value: number, quantity: Quantity): string {
  if (quantity === 'inches') return `${decimal(value, 3)} in`;
  return `${decimal(value, digitsOf[quantity])} ${unitText[quantity]}`;
}

/** A step on its button: `1/64 in`, `0.1 lb`, `1 thou`. */
export function stepText(size: number, quantity: Quantity): string {
  return quantity === 'inches'
    ? `${inchFraction(size, 64)} in`
    : `${decimal(size, 2)} ${unitText[quantity]}`;
}
