import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recoat } from '../../../core/finish/recoat.ts';
import { type RecoatBand, spansAt } from '../../../core/finish/recoat-window.ts';
import { heldSurfaceF } from '../../../core/finish/surface-log.ts';

const coatedAt = '2026-03-02T08:00:00.000Z';
const hoursLater = (hours: number) =>
  new Date(Date.parse(coatedAt) + hours * 3_600_000).toISOString();
const readEvery = (hours: number, ...surfaceF: number[]) =>
  surfaceF.map((f, index) => ({ at: hoursLater(index * hours), surfaceF: f }));
const span = (fromH: number, toH: number | null, scuff = false) => ({ fromH, toH, scuff });

/** A spray that lifts when it is coated between its first hour and its second day. */
const spray: RecoatBand[] = [{ fromF: 60, toF: 90, spans: [span(0.25, 1), span(48, null, true)] }];
const twoPart: RecoatBand[] = [
  { fromF: 60, toF: 75, spans: [span(8, 48)] },
  { fromF: 75, toF: 90, spans: [span(4, 24), span(24, 72, true)] },
];
const oil: RecoatBand[] = [{ fromF: 60, toF: 90, spans: [span(24, null)] }];

const steady = (bands: RecoatBand[], hours: number, surfaceF = 70) =>
  recoat(bands, coatedAt, [{ at: coatedAt, surfaceF }], hoursLater(hours));

describe('state, times and sentence', () => {
  test('too early', () => {
    expect(steady(twoPart, 5.5)).toMatchObject({
      state: 'before',
      opensAt: hoursLater(8),
      closesAt: null,
      sentence: 'Too early: the next coat may follow in 2 h 30 min.',
    });
  });

  test('open, with what is left', () => {
    expect(steady(twoPart, 45)).toMatchObject({
      state: 'open',
      opensAt: null,
      closesAt: hoursLater(48),
      sentence: 'Open: the next coat may follow within 3 h.',
    });
  });

  test('open without an end', () => {
    expect(steady(oil, 500)).toMatchObject({
      closesAt: null,
      sentence: 'Open: the next coat may follow.',
    });
  });

  test('scuff needed, then closed for good', () => {
    expect(steady(twoPart, 30, 85)).toMatchObject({
      state: 'scuff',
      closesAt: hoursLater(72),
      sentence: 'Scuff the film, then coat within 42 h.',
    });
    expect(steady(twoPart, 73, 85)).toMatchObject({ state: 'closed', opensAt: null });
  });

  test('closed between an early span and a late one', () => {
    expect(steady(spray, 0.5).state).toBe('open');
    expect(steady(spray, 2)).toMatchObject({
      state: 'closed',
      opensAt: hoursLater(48),
      sentence: 'Closed now: scuff and coat in 46 h.',
    });
    expect(steady(spray, 48).state).toBe('scuff');
  });

  test('no line on the sheet', () => {
    expect(steady(oil, 30, 55).sentence).toBe('The sheet has no recoat line for 55 F (12.8 C).');
  });

  test('a surface left unread is told', () => {
    expect(steady(twoPart, 5.5).doubts).toEqual([
      'The surface was not read for 5 h 30 min: read it every hour.',
    ]);
    expect(recoat(oil, coatedAt, readEvery(1, 70, 70, 70), hoursLater(2)).doubts).toEqual([]);
    const hot: RecoatBand[] = [{ fromF: 60, toF: 120, spans: [span(1, 2)] }];
    expect(recoat(hot, coatedAt, readEvery(1, 105, 105), hoursLater(1)).doubts).toEqual([
      'The surface was not read for 1 h: read it every half hour.',
    ]);
    expect(recoat(hot, coatedAt, readEvery(0.5, 105, 105, 105), hoursLater(1)).doubts).toEqual([]);
  });

  test('readings before the coat and after now do not count', () => {
    const log = [
      { at: hoursLater(-1), surfaceF: 88 },
      { at: coatedAt, surfaceF: 70 },
      { at: hoursLater(6), surfaceF: 88 },
    ];
    expect(recoat(twoPart, coatedAt, log, hoursLater(5)).heldF).toBe(70);
  });
});

describe('lines that meet or leave a hole', () => {
  test('on a temperature that two lines share, both must allow the coat', () => {
    expect(spansAt(twoPart, 75)).toEqual([span(8, 24), span(24, 48, true)]);
  });

  test('lines with no time in common never allow one', () => {
    const apart: RecoatBand[] = [
      { fromF: 60, toF: 70, spans: [span(8, 12)] },
      { fromF: 71, toF: 80, spans: [span(1, 4)] },
    ];
    expect(spansAt(apart, 70.5)).toEqual([]);
    expect(steady(apart, 9, 70.5).state).toBe('closed');
  });
});

describe('temperature held for an hour', () => {
  test('one reading stands for itself', () => {
    expect(heldSurfaceF([{ at: coatedAt, surfaceF: 70 }])).toBe(70);
  });

  test('under an hour of readings: the coolest, since nothing warmer has held', () => {
    expect(heldSurfaceF(readEvery(0.25, 70, 80, 80))).toBe(70);
  });

  test('a run is as warm as its coolest reading', () => {
    expect(heldSurfaceF(readEvery(1, 70, 80, 82, 70))).toBe(80);
  });

  test('never above the warmest reading nor under the coolest, in whatever order they come', () => {
    const log = fc.array(
      fc.record({ at: fc.nat(600), surfaceF: fc.integer({ min: 40, max: 110 }) }),
      { minLength: 1, maxLength: 20 },
    );
    fc.assert(
      fc.property(log, (minutes) => {
        const readings = minutes.map((each) => ({ ...each, at: hoursLater(each.at / 60) }));
        const held = heldSurfaceF(readings);
        const all = readings.map((each) => each.surfaceF);
        expect(held).toBeGreaterThanOrEqual(Math.min(...all));
        expect(held).toBeLessThanOrEqual(Math.max(...all));
      }),
    );
  });
});

describe('refusals', () => {
  test('no reading since the coat, and a coat later than now', () => {
    expect(() => recoat(oil, coatedAt, [], hoursLater(1))).toThrow(
      'Read the surface temperature first.',
    );
    expect(() => steady(oil, -1)).toThrow('The last coat lies after now. Correct its time.');
  });

  test.each([
    [[], 'Enter at least one recoat line.'],
    [[{ fromF: 90, toF: 60, spans: [span(1, 2)] }], 'Recoat line 1 must rise in temperature.'],
    [
      [...oil, { fromF: 80, toF: 95, spans: [span(1, 2)] }],
      'Recoat lines must go up in temperature without overlap.',
    ],
    [[{ fromF: 60, toF: 90, spans: [] }], 'Recoat line 1 needs its hours.'],
    [
      [{ fromF: 60, toF: 90, spans: [span(4, 2)] }],
      'Hours in recoat line 1 must follow each other.',
    ],
    [
      [{ fromF: 60, toF: 90, spans: [span(1, null), span(3, 4)] }],
      'Hours in recoat line 1 must follow each other.',
    ],
    [
      [{ fromF: 60, toF: 90, spans: [span(-1, 2)] }],
      'Hours in recoat line 1 cannot be less than 0.',
    ],
  ])('%j', (bands, sentence) => {
    expect(() => spansAt(bands, 70)).toThrow(sentence);
  });
});
