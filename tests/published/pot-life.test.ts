import { describe, expect, test } from 'vitest';
import { batchTimes, type PotLife, potLifeMinutes } from '../../core/finish/pot-life.ts';
import { celsius, fahrenheit } from '../../core/finish/temperature.ts';

/** Hours as printed, at 70 F; the range is wide to reach the values under test. */
const ofHours = (hours: number): PotLife => ({
  minutes: hours * 60,
  referenceF: 70,
  rangeF: { from: 40, to: 110 },
  inductionMin: 0,
});

describe('pot life, UFGS 09971 section 3.7.1.3: halved by 18 F (10 C) up, doubled by as much down', () => {
  test.each([
    ['epoxy primer', 4],
    ['polyurethane top coat', 2],
    // UFGS 09970.
    ['fluoropolyurethane top coat', 3],
  ])('%s: %i h at the reference, half of it 18 F up, twice 18 F down', (_, hours) => {
    expect(potLifeMinutes(ofHours(hours), 70)).toBe(hours * 60);
    expect(potLifeMinutes(ofHours(hours), 88)).toBeCloseTo(hours * 30, 9);
    expect(potLifeMinutes(ofHours(hours), 52)).toBeCloseTo(hours * 120, 9);
  });

  test.each([
    // Derived from t(T) = t(70) x 2^(-(T - 70) / 18).
    [52, 4],
    [60, 2.94],
    [80, 1.36],
    [88, 1],
    [95, 0.76],
    [106, 0.5],
  ])('a 2 h finish at %i F lasts %f h, a 4 h finish twice that', (mixF, hours) => {
    expect(potLifeMinutes(ofHours(2), mixF) / 60).toBeCloseTo(hours, 2);
    expect(potLifeMinutes(ofHours(4), mixF) / potLifeMinutes(ofHours(2), mixF)).toBeCloseTo(2, 12);
  });

  test('10 C up is the same 18 F up, as a difference', () => {
    expect(potLifeMinutes(ofHours(2), fahrenheit(celsius(70) + 10))).toBeCloseTo(60, 9);
  });

  test('the rule is no law: doubling in 10 C needs another activation energy at each temperature', () => {
    // Arrhenius, ln(k2/k1) = -(Ea/R)(1/T2 - 1/T1), R = 8.314 J/(mol K); derived, kJ/mol: 53.6 from
    // 300 to 310 K, 52.25 from 23 to 33 C, 51.6 from 70 to 88 F.
    const energy = (fromC: number) =>
      (8.314 * Math.LN2) / (1 / (fromC + 273.15) - 1 / (fromC + 283.15)) / 1000;
    expect(energy(300 - 273.15)).toBeCloseTo(53.6, 1);
    expect(energy(23)).toBeCloseTo(52.25, 2);
    expect(energy(celsius(70))).toBeCloseTo(51.6, 1);
    // Hence no answer outside the temperatures of the sheet.
    const sheet = { ...ofHours(2), rangeF: { from: 60, to: 100 } };
    expect(() => potLifeMinutes(sheet, 101)).toThrow(
      'mix between 60 F (15.6 C) and 100 F (37.8 C)',
    );
    expect(() => potLifeMinutes(sheet, 59)).toThrow('The sheet says nothing about 59 F (15 C)');
  });

  test('UFGS 09973 applies between 16 and 38 C, 60 and 100 F: the ends belong to it, no degree more', () => {
    const sheet = { ...ofHours(4), rangeF: { from: 60, to: 100 } };
    expect([60, 100].map((f) => Math.round(celsius(f)))).toEqual([16, 38]);
    expect(potLifeMinutes(sheet, 60) / 60).toBeCloseTo(2 * 2.94, 2);
    expect(potLifeMinutes(sheet, 100)).toBeLessThan(potLifeMinutes(sheet, 99.9));
    for (const mixF of [59.9, 100.1])
      expect(() => potLifeMinutes(sheet, mixF)).toThrow('mix between');
  });

  test('induction of two-part finishes, 15 to 30 min where asked for, counts into the pot life', () => {
    // A training course of coating inspection; UFGS 09971 asks none of a polyurethane top coat.
    const mixedAt = '2026-03-02T14:00:00.000Z';
    for (const inductionMin of [0, 15, 30]) {
      const times = batchTimes({ ...ofHours(2), inductionMin }, mixedAt, 88);
      expect(Date.parse(times.usableFrom) - Date.parse(mixedAt)).toBe(inductionMin * 60_000);
      expect(times.usableUntil).toBe('2026-03-02T15:00:00.000Z');
    }
  });
});
