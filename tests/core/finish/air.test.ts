import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type AirLimits,
  airTroubles,
  type RoomNow,
  surfaceOrRoomF,
} from '../../../core/finish/air.ts';
import { dewPointC, dewPointF } from '../../../core/finish/dew-point.ts';

const limits: AirLimits = { airF: { from: 60, to: 90 }, humidityPercent: { from: 20, to: 80 } };
const good: RoomNow = { airF: 70, humidityPercent: 50, surfaceF: null, hungMin: 120 };

const airC = fc.double({ min: -40, max: 50, noNaN: true });
const humidity = fc.double({ min: 1, max: 100, noNaN: true });

test('the dew point never lies above the air, and rises with the humidity', () => {
  fc.assert(
    fc.property(airC, humidity, humidity, (air, a, b) => {
      const [dry, damp] = a < b ? [a, b] : [b, a];
      expect(dewPointC(air, damp)).toBeLessThanOrEqual(air + 1e-9);
      expect(dewPointC(air, dry)).toBeLessThanOrEqual(dewPointC(air, damp));
    }),
  );
});

test.each([
  [-41, 50],
  [51, 50],
  [Number.NaN, 50],
  [20, 0],
  [20, 100.1],
])('%f C and %f percent are refused', (air, percent) => {
  expect(() => dewPointC(air, percent)).toThrow();
});

describe('before a coat', () => {
  test('a good room raises nothing, with its limits included', () => {
    expect(airTroubles(limits, good)).toEqual([]);
    expect(airTroubles(limits, { ...good, airF: 60 })).toEqual([]);
    expect(airTroubles(limits, { ...good, humidityPercent: 80 })).toEqual([]);
  });

  test('everything that is wrong is told at once', () => {
    expect(
      airTroubles(limits, { airF: 55, humidityPercent: 90, surfaceF: 50, hungMin: 0 }),
    ).toEqual([
      'The air is 55 F (12.8 C), under 60 F (15.6 C) on the sheet.',
      'Humidity is 90 percent, over 80 percent on the sheet.',
      'The surface is 2.1 F (1.2 C) under the dew point: it must be 5.4 F (3 C) above.',
    ]);
  });

  test('a cold bow in a good room is caught by its surface', () => {
    const surfaceF = dewPointF(good.airF, good.humidityPercent) + 2;
    expect(airTroubles(limits, { ...good, surfaceF })).toEqual([
      'The surface is only 2 F (1.1 C) above the dew point: it must be 5.4 F (3 C) above.',
    ]);
  });

  test('an unmeasured surface is the room once the bow has hung two hours, not before', () => {
    expect(surfaceOrRoomF(good)).toBe(70);
    expect(surfaceOrRoomF({ ...good, surfaceF: 64 })).toBe(64);
    expect(airTroubles(limits, { ...good, hungMin: 119 })).toEqual([
      'Measure the surface, or let the bow hang in the room for 2 h.',
    ]);
  });

  test('a margin a hair too small is not rounded up to enough', () => {
    const surfaceF = dewPointF(good.airF, good.humidityPercent) + 5.38;
    expect(airTroubles(limits, { ...good, surfaceF })).toEqual([
      'The surface is only 5.3 F (2.9 C) above the dew point: it must be 5.4 F (3 C) above.',
    ]);
  });

  test.each([
    [{ airF: Number.NaN }, 'The air must be a temperature.'],
    [{ humidityPercent: 101 }, 'Humidity must be more than 0 and at most 100 percent.'],
    [{ hungMin: -1 }, 'The time the bow has hung cannot be less than 0.'],
    [{ surfaceF: Number.POSITIVE_INFINITY }, 'The surface must be a temperature.'],
  ])('%o is refused', (change, sentence) => {
    expect(() => airTroubles(limits, { ...good, ...change })).toThrow(sentence);
  });
});
