import { decimal } from '../../../shared/measure.ts';

/** `70 F (21.1 C)`. */
export function temperatureText(fahrenheit: number): string {
  return `${decimal(fahrenheit)} F (${decimal((fahrenheit - 32) / 1.8)} C)`;
}

/** A difference of temperatures: `5.4 F (3 C)`; the 32 of the scales' zero has no place in it. */
export function differenceText(fahrenheitDegrees: number): string {
  return `${decimal(fahrenheitDegrees)} F (${decimal(fahrenheitDegrees / 1.8)} C)`;
}
