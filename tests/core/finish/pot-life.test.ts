import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  batchState,
  batchTimes,
  type PotLife,
  potLifeMinutes,
} from '../../../core/finish/pot-life.ts';

const sheet: PotLife = {
  minutes: 120,
  referenceF: 70,
  rangeF: { from: 60, to: 100 },
  inductionMin: 15,
};
const mixedAt = '2026-03-02T14:00:00.000Z';

test('a warmer mix never lasts longer', () => {
  const inRange = fc.double({ min: 60, max: 100, noNaN: true });
  fc.assert(
    fc.property(inRange, inRange, (a, b) => {
      const [cool, warm] = a < b ? [a, b] : [b, a];
      expect(potLifeMinutes(sheet, warm)).toBeLessThanOrEqual(potLifeMinutes(sheet, cool));
    }),
  );
});

test('the ends of the range belong to it', () => {
  for (const mixF of [60, 100]) expect(potLifeMinutes(sheet, mixF)).toBeGreaterThan(0);
});

describe('a batch', () => {
  test('at 88 F: usable from 14:15 until 15:00', () => {
    expect(batchTimes(sheet, mixedAt, 88)).toEqual({
      usableFrom: '2026-03-02T14:15:00.000Z',
      usableUntil: '2026-03-02T15:00:00.000Z',
    });
  });

  test.each([
    ['2026-03-02T14:00:00Z', 'standing'],
    ['2026-03-02T14:14:59Z', 'standing'],
    ['2026-03-02T14:15:00Z', 'usable'],
    ['2026-03-02T14:59:59Z', 'usable'],
    ['2026-03-02T15:00:00Z', 'past'],
  ])('at %s it is %s', (at, state) => {
    expect(batchState(batchTimes(sheet, mixedAt, 88), at)).toBe(state);
  });

  test('across midnight the day goes on', () => {
    const { usableUntil } = batchTimes(sheet, '2026-03-02T23:30:00Z', 70);
    expect(usableUntil).toBe('2026-03-03T01:30:00.000Z');
  });
});

describe('refusals', () => {
  test.each([
    [{ minutes: 0 }, 'The pot life must be more than 0.'],
    [{ inductionMin: -1 }, 'The induction time cannot be less than 0.'],
    [{ referenceF: 55 }, "The pot life reference must lie inside the sheet's temperatures."],
    [{ rangeF: { from: 90, to: 60 } }, 'The temperature range of the sheet must rise.'],
    [{ referenceF: Number.NaN }, 'The pot life reference must be a temperature.'],
  ])('%o', (change, sentence) => {
    expect(() => potLifeMinutes({ ...sheet, ...change }, 70)).toThrow(sentence);
  });

  test('induction that outlasts the pot life', () => {
    expect(() => batchTimes({ ...sheet, inductionMin: 60 }, mixedAt, 95)).toThrow('Mix cooler.');
  });

  test.each(['yesterday', '2026-03-02T14:00:00', ''])('an instant such as "%s"', (instant) => {
    expect(() => batchTimes(sheet, instant, 70)).toThrow('This time cannot be read.');
  });
});
