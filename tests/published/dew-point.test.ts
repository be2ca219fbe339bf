import { describe, expect, test } from 'vitest';
import { airTroubles } from '../../core/finish/air.ts';
import { dewPointC, dewPointF, leastMarginC, leastMarginF } from '../../core/finish/dew-point.ts';
import { celsius, fahrenheit } from '../../core/finish/temperature.ts';

/** Dew point by another pair of Magnus constants. */
function magnus(a: number, b: number, airC: number, humidity: number): number {
  const g = Math.log(humidity / 100) + (a * airC) / (b + airC);
  return (b * g) / (a - g);
}

/** Dew point by the base-10 form of the same law, constants for -20 to 50 C. */
function baseTen(airC: number, humidity: number): number {
  const [a, m, tn] = [6.116441, 7.591386, 240.7263];
  const pressure = (a * 10 ** ((m * airC) / (airC + tn)) * humidity) / 100;
  return tn / (m / Math.log10(pressure / a) - 1);
}

/** Dew point by the power form that weather stations print. */
const power = (airC: number, humidity: number) =>
  (humidity / 100) ** 0.125 * (112 + 0.9 * airC) + 0.1 * airC - 112;

describe('dew point, Alduchov and Eskridge (1996)', () => {
  const cases = [
    // Derived from the printed constants 17.625 and 243.04.
    { airC: 20, humidity: 30, dew: 1.892 },
    { airC: 20, humidity: 50, dew: 9.261 },
    { airC: 20, humidity: 60, dew: 12.0 },
    { airC: 20, humidity: 80, dew: 16.444 },
    { airC: 25, humidity: 60, dew: 16.698 },
    { airC: 30, humidity: 70, dew: 23.93 },
    { airC: 16, humidity: 71, dew: 10.744 },
  ];
  test.each(cases)('$airC C and $humidity percent: $dew C', ({ airC, humidity, dew }) => {
    expect(dewPointC(airC, humidity)).toBeCloseTo(dew, 3);
    expect(dewPointF(fahrenheit(airC), humidity)).toBeCloseTo(fahrenheit(dew), 2);
  });

  test.each(cases)('other constants agree at $airC C, $humidity percent, to 0.05 C', (each) => {
    const own = dewPointC(each.airC, each.humidity);
    // WMO No. 8, after D. Sonntag (1990).
    expect(Math.abs(magnus(17.62, 243.12, each.airC, each.humidity) - own)).toBeLessThan(0.05);
    // University of Arizona, AZMET.
    expect(Math.abs(magnus(17.27, 237.3, each.airC, each.humidity) - own)).toBeLessThan(0.05);
    // "Calculate dew point", a meteorological page: its own error is 0.083 percent of the pressure.
    expect(Math.abs(baseTen(each.airC, each.humidity) - own)).toBeLessThan(0.05);
    // "Dewpoint", a weather station's page; an eighth root in place of the law, hence a tenth.
    expect(Math.abs(power(each.airC, each.humidity) - own)).toBeLessThan(0.1);
  });

  test.each([
    // Derived from the constants of WMO No. 8 and of AZMET, as a check on the sets themselves.
    { airC: 20, humidity: 30, wmo: 1.882, azmet: 1.917 },
    { airC: 20, humidity: 50, wmo: 9.255, azmet: 9.27 },
    { airC: 20, humidity: 60, wmo: 11.995, azmet: 12.004 },
    { airC: 20, humidity: 80, wmo: 16.442, azmet: 16.445 },
    { airC: 25, humidity: 60, wmo: 16.693, azmet: 16.696 },
    { airC: 30, humidity: 70, wmo: 23.927, azmet: 23.923 },
    { airC: 16, humidity: 71, wmo: 10.741, azmet: 10.749 },
  ])('$airC C and $humidity percent by all three sets', ({ airC, humidity, wmo, azmet }) => {
    expect(Math.abs(dewPointC(airC, humidity) - wmo)).toBeLessThan(0.05);
    expect(Math.abs(dewPointC(airC, humidity) - azmet)).toBeLessThan(0.05);
    expect(magnus(17.62, 243.12, airC, humidity)).toBeCloseTo(wmo, 3);
    expect(magnus(17.27, 237.3, airC, humidity)).toBeCloseTo(azmet, 3);
  });

  test('at 100 percent it is the temperature of the air', () => {
    for (const airC of [-10, 0, 20, 40]) expect(dewPointC(airC, 100)).toBeCloseTo(airC, 9);
  });

  test('a fifth of a degree by the percent is no dew point: 0.74 C high at 20 C and 50 percent', () => {
    // M. G. Lawrence, "The relationship between relative humidity and the dewpoint temperature in
    // moist air", Bull. Amer. Meteor. Soc. 86 (2005), the simple rule; from memory.
    expect(20 - (100 - 50) / 5 - dewPointC(20, 50)).toBeCloseTo(0.74, 2);
  });
});

describe('printed charts, read to a whole degree and off by more', () => {
  const columnsF = [40, 50, 60, 70, 80, 90];
  test.each([
    // A sample chart of dew points in F; it strays from the formula by up to 2.4 F.
    [85, [36, 45, 55, 65, 75, 84]],
    [70, [31, 40, 50, 60, 68, 78]],
    [65, [29, 38, 47, 57, 66, 76]],
    [60, [27, 36, 45, 55, 64, 73]],
    [50, [23, 31, 40, 50, 59, 67]],
    [40, [18, 26, 35, 43, 52, 61]],
  ])('%i percent', (humidity, row) => {
    for (const [index, printed] of row.entries()) {
      const exact = dewPointF(columnsF[index] ?? Number.NaN, humidity);
      expect(Math.abs(exact - printed)).toBeLessThan(2.5);
    }
  });

  test.each([
    // "Dew Point Table", in C.
    [20, 30, 1],
    [20, 40, 5],
    [20, 50, 9],
    [20, 60, 12],
    [20, 70, 14],
    [20, 80, 16],
    [20, 90, 18],
    [25, 50, 13],
    [25, 60, 16],
    [25, 70, 19],
    [30, 50, 18],
    [30, 60, 21],
    [30, 70, 24],
    // "Ambient Application Conditions", training notes.
    [16, 71, 11],
  ])('%i C and %i percent: printed %i C', (airC, humidity, printed) => {
    expect(Math.abs(dewPointC(airC, humidity) - printed)).toBeLessThan(1.4);
  });

  test.each([
    // A second chart in F, 40 to 90 F by fives.
    [70, 65, 57],
    [80, 50, 59],
  ])('%i F and %i percent: a second chart prints %i F', (airF, humidity, printed) => {
    expect(Math.abs(dewPointF(airF, humidity) - printed)).toBeLessThan(2.5);
  });

  test.each([
    // "Dew Point Table", in C: two places where the print is off by 1.6 C, against the margin.
    [30, 20, 3, 4.6],
    [10, 60, 1, 2.6],
  ])('printed wrongly: %i C and %i percent as %i C, it is %f', (airC, humidity, printed, exact) => {
    expect(dewPointC(airC, humidity)).toBeCloseTo(exact, 1);
    expect(dewPointC(airC, humidity) - printed).toBeGreaterThan(1.5);
  });

  test('printed too low, so that a margin reads too large: 57 F at 70 F and 65 percent is 57.70', () => {
    expect(dewPointF(70, 65)).toBeCloseTo(57.7, 2);
    // And 90 F at 30 percent, printed 52.
    expect(dewPointF(90, 30)).toBeCloseTo(54.4, 1);
  });
});

describe('surface 3 C above the dew point, as ISO 8502-4 is used', () => {
  const limits = { airF: { from: 60, to: 90 }, humidityPercent: { from: 0, to: 85 } };
  const room = { airF: 70, humidityPercent: 65, hungMin: 0 };
  const atMargin = (marginF: number) =>
    airTroubles(limits, { ...room, surfaceF: dewPointF(70, 65) + marginF });

  test('3 C as a difference is 5.4 F', () => {
    expect(leastMarginF).toBeCloseTo(5.4, 12);
    expect(atMargin(5.4)).toEqual([]);
    expect(atMargin(5.3)).toEqual([
      'The surface is only 5.3 F (2.9 C) above the dew point: it must be 5.4 F (3 C) above.',
    ]);
  });

  test('the classic error: 3 C turned into 37.4 F by the 32 of the scale', () => {
    expect(fahrenheit(leastMarginC)).toBeCloseTo(37.4, 12);
    expect(leastMarginF).not.toBeCloseTo(37.4, 0);
    // With it no warm room would ever do.
    expect(atMargin(10)).toEqual([]);
  });

  test('the rounded 5 F of trade papers is not enough', () => {
    expect(atMargin(5)).toHaveLength(1);
  });

  test("the chart's own example, 62 F over its dew point of 57 F at 70 F and 65 percent, is refused", () => {
    // 57.70 F by the formula: 4.3 F of margin where the chart reads 5.
    expect(airTroubles(limits, { ...room, surfaceF: 62 })).toEqual([
      'The surface is only 4.3 F (2.4 C) above the dew point: it must be 5.4 F (3 C) above.',
    ]);
  });

  test('"Ambient Application Conditions": dew point 15 C and surface 19 C is acceptable', () => {
    // Dry bulb 21 C; the humidity that has its dew point at 15 C, by the ratio of the pressures.
    const pressure = (atC: number) => Math.exp((17.625 * atC) / (243.04 + atC));
    const damp = {
      airF: fahrenheit(21),
      humidityPercent: (100 * pressure(15)) / pressure(21),
      hungMin: 0,
    };
    expect(dewPointC(21, damp.humidityPercent)).toBeCloseTo(15, 9);
    expect(airTroubles(limits, { ...damp, surfaceF: fahrenheit(19) })).toEqual([]);
    expect(airTroubles(limits, { ...damp, surfaceF: fahrenheit(18) })).toEqual([]);
    expect(airTroubles(limits, { ...damp, surfaceF: fahrenheit(17.9) })).toHaveLength(1);
  });

  test('a substrate of 58 F where the second chart prints 59 F, 80 F and 50 percent, is not', () => {
    const room = { airF: 80, humidityPercent: 50, surfaceF: 58, hungMin: 0 };
    expect(airTroubles(limits, room)[0]).toContain('under the dew point');
    expect(celsius(58)).toBeLessThan(dewPointC(celsius(80), 50));
  });
});
