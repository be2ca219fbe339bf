import { refuseField } from '../../shared/errors.ts';
import { decimal } from '../../shared/measure.ts';

/** Exact: NIST SP 811 (2008), App. B. */
export function celsius(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

/** Exact: NIST SP 811 (2008), App. B. */
export function fahrenheit(celsius: number): number {
  return celsius * 1.8 + 32;
}

/**
 * A difference of temperatures, Fahrenheit degrees from Celsius degrees: 3 C is 5.4 F. The 32 of
 * the scales' zero has no place in a difference.
 */
export function fahrenheitDifference(celsiusDegrees: number): number {
  return celsiusDegrees * 1.8;
}

/** `70 F (21.1 C)`. */
export function temperatureText(inFahrenheit: number): string {
  return `${decimal(inFahrenheit)} F (${decimal(celsius(inFahrenheit))} C)`;
}

/** A difference of temperatures: `5.4 F (3 C)`. */
export function differenceText(fahrenheitDegrees: number): string {
  return `${decimal(fahrenheitDegrees)} F (${decimal(fahrenheitDegrees / 1.8)} C)`;
}

/** @throws ShopError BAD_INPUT where the temperature is not a number. */
export function refuseOddTemperature(field: string, value: number, what: string): void {
  if (!Number.isFinite(value)) refuseField(field, `${what} must be a temperature.`);
}
