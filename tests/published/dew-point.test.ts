import { describe, expect, test } from 'vitest';
import { airTroubles } from '../../core/finish/air.ts';
import { dewPointC, dewPointF, leastMarginC, leastMarginF } from '../../core/finish/dew-point.ts';
import { celsius, fahrenheit } from '../../core/finish/temperature.ts';

/** Dew point by another pair of Magnus constants. */
function magnus(a: number, b: number, airC: number, humidity: number): number {
  const g = Math.log(humidity / 100) + (a * airC) / (b + airC);
  return (b * g) / (a - g);
}

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

  test('"Ambient Application Conditions": dew point 15 C and surface 19 C is acceptable', () => {
    expect(19 - 15).toBeGreaterThanOrEqual(leastMarginC);
    // A surface of 58 F where the chart prints a dew point of 59 F (80 F, 50 percent) is not.
    const [trouble] = airTroubles(limits, {
      airF: 80,
      humidityPercent: 50,
      surfaceF: 58,
      hungMin: 0,
    });
    expect(trouble).toContain('under the dew point');
    expect(celsius(58)).toBeLessThan(dewPointC(celsius(80), 50));
  });
});
