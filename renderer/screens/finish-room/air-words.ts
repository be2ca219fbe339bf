import type { AirLook } from '../../../shared/contract/finish.ts';
import { decimal } from '../../../shared/measure.ts';
import { differenceText, temperatureText } from './temperature-text.ts';

/** Air as it was read or is being typed, Fahrenheit and percent. */
export interface AirNumbers {
  airF: number;
  humidityPercent: number;
  surfaceF: number | null;
}

/** Down to a tenth, so that too little never reads as enough. */
const tenthBelow = (value: number) => Math.floor(value * 10 + 1e-9) / 10;

/** Where the surface stands against the dew point, in one sentence. */
export function marginWords({ marginF, leastMarginF }: AirLook): string {
  if (marginF === null) return 'No surface measured: a bow needs 2 h in the room, or a reading.';
  const least = `at least ${differenceText(leastMarginF)}`;
  return marginF < 0
    ? `The surface is ${differenceText(-marginF)} under the dew point; it must be ${least} above.`
    : `The surface is ${differenceText(tenthBelow(marginF))} above the dew point; ${least} is needed.`;
}

/** The drawing in words, for who does not see it. */
export function airWords(air: AirNumbers, look: AirLook | undefined): string {
  const parts = [
    `air ${temperatureText(air.airF)}`,
    `humidity ${decimal(air.humidityPercent)} %`,
    air.surfaceF === null ? '' : `surface ${temperatureText(air.surfaceF)}`,
    look === undefined ? '' : `dew point ${temperatureText(look.dewPointF)}`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}
