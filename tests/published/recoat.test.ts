import { describe, expect, test } from 'vitest';
import { recoat } from '../../core/finish/recoat.ts';
import { type RecoatBand, spansAt } from '../../core/finish/recoat-window.ts';
import { heldForMin, readEveryMin } from '../../core/finish/surface-log.ts';

/**
 * UFGS 09971, table of recoat windows, polyurethane over polyurethane: F, C, hours. An over-aged
 * film is scuffed with 150 to 200 grit.
 */
const printed = [
  { f: [60, 70], c: [16, 21], h: [8, 48] },
  { f: [71, 80], c: [22, 27], h: [6, 48] },
  { f: [81, 90], c: [28, 32], h: [4, 36] },
  { f: [91, 100], c: [33, 38], h: [3, 24] },
  { f: [101, 110], c: [39, 43], h: [2, 12] },
  { f: [111, 120], c: [44, 49], h: [1, 2] },
] as const;

const bands: RecoatBand[] = printed.map(({ f, h }) => ({
  fromF: f[0],
  toF: f[1],
  spans: [
    { fromH: h[0], toH: h[1], scuff: false },
    { fromH: h[1], toH: null, scuff: true },
  ],
}));

const coatedAt = '2026-03-02T08:00:00.000Z';
const hoursLater = (hours: number) =>
  new Date(Date.parse(coatedAt) + hours * 3_600_000).toISOString();

/** The surface read every half hour, by the temperature of each. */
const halfHourly = (...surfaceF: number[]) =>
  surfaceF.map((f, index) => ({ at: hoursLater(index / 2), surfaceF: f }));

describe('UFGS 09971, polyurethane over polyurethane', () => {
  test.each(printed)('$f.0 to $f.1 F: $h.0 to $h.1 h', ({ f, h }) => {
    for (const surfaceF of f) {
      const at = (hours: number) =>
        recoat(bands, coatedAt, [{ at: coatedAt, surfaceF }], hoursLater(hours)).state;
      expect(at(h[0] - 0.01)).toBe('before');
      expect(at(h[0])).toBe('open');
      expect(at(h[1])).toBe('open');
      expect(at(h[1] + 0.01)).toBe('scuff');
    }
  });

  test('the line is that of the highest surface temperature held for an hour', () => {
    // An hour at 85 F (three readings), then cool again: the line 81-90 counts.
    const warm = halfHourly(65, 85, 86, 85, 65, 65, 65, 65, 65);
    expect(recoat(bands, coatedAt, warm, hoursLater(4))).toMatchObject({
      heldF: 85,
      state: 'open',
    });
    // Half an hour of it does not count.
    const flash = halfHourly(65, 85, 86, 65, 65, 65, 65, 65, 65);
    expect(recoat(bands, coatedAt, flash, hoursLater(4))).toMatchObject({
      heldF: 65,
      state: 'before',
    });
  });

  test('a warm hour counts for the whole wait, at whatever time between the coats it was', () => {
    // The rule asks for the highest temperature held for an hour "at any time", not for the latest.
    const early = halfHourly(65, 85, 85, 85, ...Array<number>(12).fill(65));
    const late = halfHourly(...Array<number>(10).fill(65), 85, 85, 85, 65);
    for (const log of [early, late]) {
      const answer = recoat(bands, coatedAt, log, hoursLater(log.length / 2));
      expect(answer).toMatchObject({ heldF: 85, state: 'open' });
    }
    // The warm line also ends earlier: after 36 h, where the cool one goes on to 48.
    expect(recoat(bands, coatedAt, early, hoursLater(37)).state).toBe('scuff');
    const cool = halfHourly(65, 65, 65);
    expect(recoat(bands, coatedAt, cool, hoursLater(37)).state).toBe('open');
  });

  test('the surface is read each hour, each half hour above 38 C (100 F), and an hour must hold', () => {
    expect(heldForMin).toBe(60);
    expect([60, 100, 100.5, 120].map(readEveryMin)).toEqual([60, 60, 30, 30]);
    const hourly = [0, 1, 2].map((hour) => ({ at: hoursLater(hour), surfaceF: 105 }));
    expect(recoat(bands, coatedAt, hourly, hoursLater(2)).doubts).toHaveLength(1);
    expect(recoat(bands, coatedAt, halfHourly(105, 105, 105), hoursLater(1)).doubts).toEqual([]);
  });

  test('70.5 F lies between two printed lines: the later opening and the earlier end count', () => {
    expect(bands.some((band) => band.fromF <= 70.5 && 70.5 <= band.toF)).toBe(false);
    expect(spansAt(bands, 70.5)).toEqual([
      { fromH: 8, toH: 48, scuff: false },
      { fromH: 48, toH: null, scuff: true },
    ]);
    // Rounded up into the line 71-80 it would open at 6 h: at 7 h it does not.
    const at = (hours: number) =>
      recoat(bands, coatedAt, [{ at: coatedAt, surfaceF: 70.5 }], hoursLater(hours)).state;
    expect([at(7), at(8), at(48), at(48.1)]).toEqual(['before', 'open', 'open', 'scuff']);
    // 80.5 F, where both ends differ: 6 h of the cool line, 36 h of the warm one.
    expect(spansAt(bands, 80.5)?.[0]).toEqual({ fromH: 6, toH: 36, scuff: false });
  });

  test('the columns are rounded apart: 27.5 C is in no line in C, 81.5 F is in 81-90', () => {
    expect(printed.some(({ c }) => c[0] <= 27.5 && 27.5 <= c[1])).toBe(false);
    expect(spansAt(bands, 27.5 * 1.8 + 32)?.[0]).toMatchObject({ fromH: 4, toH: 36 });
  });

  test('the first two lines end alike', () => {
    expect(spansAt(bands, 65)?.[0]?.toH).toBe(spansAt(bands, 75)?.[0]?.toH);
  });

  test('outside the table there is no window', () => {
    for (const surfaceF of [59.9, 120.1]) {
      const answer = recoat(bands, coatedAt, [{ at: coatedAt, surfaceF }], hoursLater(5));
      expect(answer).toMatchObject({ state: 'off-sheet', opensAt: null, closesAt: null });
    }
  });
});
