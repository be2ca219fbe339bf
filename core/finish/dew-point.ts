import { refuseField } from '../../shared/errors.ts';
import { refuseUnlessPercent } from './refuse.ts';
import { celsius, fahrenheit, fahrenheitDifference, refuseOddTemperature } from './temperature.ts';

/**
 * Constants of the Magnus form over water, -40 to 50 C. Source: O. A. Alduchov, R. E. Eskridge,
 * "Improved Magnus form approximation of saturation vapor pressure", J. Appl. Meteor. 35 (1996).
 */
const a = 17.625;
const bC = 243.04;
const validC = { from: -40, to: 50 };

/**
 * Surface above dew point before a coat, Celsius degrees as a difference; the practice of
 * ISO 8502-4. The same in Fahrenheit degrees is 5.4, not 37.4.
 */
export const leastMarginC = 3;

/** {@link leastMarginC} in Fahrenheit degrees, as a difference: 5.4. */
export const leastMarginF = fahrenheitDifference(leastMarginC);

/**
 * Dew point, Celsius: Td = b g / (a - g) with g = ln(RH / 100) + a T / (b + T), the Magnus form
 * with the constants of Alduchov and Eskridge (1996). Other sets differ by up to 0.05 C.
 * @param airC air temperature, Celsius, -40 to 50.
 * @param humidityPercent relative humidity, above 0 and at most 100.
 * @throws ShopError BAD_INPUT outside those bounds.
 */
export function dewPointC(airC: number, humidityPercent: number): number {
  refuseOddTemperature('air', airC, 'The air');
  refuseUnlessPercent('humidityPercent', humidityPercent, 'Humidity');
  if (airC < validC.from || airC > validC.to) {
    refuseField('air', 'The air must lie between -40 and 122 F (-40 and 50 C).');
  }
  const g = Math.log(humidityPercent / 100) + (a * airC) / (bC + airC);
  return (bC * g) / (a - g);
}

/**
 * Dew point, Fahrenheit; see {@link dewPointC}.
 * @param airF air temperature, Fahrenheit, -40 to 122.
 * @throws ShopError BAD_INPUT as {@link dewPointC}.
 */
export function dewPointF(airF: number, humidityPercent: number): number {
  return fahrenheit(dewPointC(celsius(airF), humidityPercent));
}
