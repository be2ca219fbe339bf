import { describe, expect, test } from 'vitest';
import {
  rowErrors,
  type StationRow,
  startRows,
  stationErrors,
  stationsOf,
  stepped,
  withRow,
} from '../../../renderer/screens/bows/geometry/station-rows.ts';

const none = { widthIn: null, thicknessIn: null };
const row = (
  key: number,
  fromFadeIn: number | null,
  part: Partial<StationRow> = {},
): StationRow => ({
  key,
  fromFadeIn,
  upper: none,
  lower: none,
  ...part,
});
const wide = (widthIn: number | null, thicknessIn: number | null = null) => ({
  widthIn,
  thicknessIn,
});

describe('rows to measure', () => {
  test('offer the places of the version before, each once, without its sizes', () => {
    const station = {
      widthIn: 1.2,
      thicknessIn: 0.4,
      surface: 'bare' as const,
      widthChangeIn: null,
      thicknessChangeIn: null,
      changeText: '',
    };
    const last = {
      stations: [
        { ...station, limb: 'upper' as const, fromFadeIn: 8 },
        { ...station, limb: 'upper' as const, fromFadeIn: 14 },
        { ...station, limb: 'lower' as const, fromFadeIn: 3 },
        { ...station, limb: 'lower' as const, fromFadeIn: 8 },
      ],
    };
    expect(startRows(last)).toEqual([row(0, 3), row(1, 8), row(2, 14)]);
    expect(startRows(null).length).toBeGreaterThanOrEqual(3);
  });

  test('grow by the distance of the last two', () => {
    expect(withRow([row(0, 2), row(1, 5)]).at(-1)).toEqual(row(2, 8));
    expect(withRow([row(4, 6)]).at(-1)).toEqual(row(5, 10));
    expect(withRow([row(0, 9), row(1, 5)]).at(-1)).toEqual(row(2, 9));
    expect(withRow([]).at(-1)).toEqual(row(0, null));
  });

  test('are sent limb by limb from fade to tip, without what nobody measured', () => {
    const rows = [
      row(0, 14, { upper: wide(1, 0.3), lower: wide(0.9) }),
      row(1, 2, { upper: wide(1.25, 0.4) }),
      row(2, 8),
    ];
    expect(stationsOf(rows, 'bare')).toEqual([
      { limb: 'upper', fromFadeIn: 2, widthIn: 1.25, thicknessIn: 0.4, surface: 'bare' },
      { limb: 'upper', fromFadeIn: 14, widthIn: 1, thicknessIn: 0.3, surface: 'bare' },
      { limb: 'lower', fromFadeIn: 14, widthIn: 0.9, thicknessIn: null, surface: 'bare' },
    ]);
  });
});

describe('errors of rows', () => {
  test('stand at the row and field they came from, though rows are sent in another order', () => {
    const rows = [row(7, 14, { lower: wide(0.9) }), row(3, 2, { lower: wide(null, 0.4) })];
    expect(stationErrors(rows, 'bare')).toEqual({ '3.lower.widthIn': 'Give a number.' });
    const core = { 'stations.1': 'Check the distance.', stations: 'Too few.' };
    expect(rowErrors(core, rows, 'bare')).toEqual({
      '7.lower.widthIn': 'Check the distance.',
      stations: 'Too few.',
    });
  });

  test('a measured row needs its distance, and something must be measured', () => {
    expect(stationErrors([row(2, null, { upper: wide(1) })], 'bare')).toEqual({
      '2.fromFadeIn': 'Give a number.',
    });
    expect(stationErrors([row(2, 4)], 'bare')).toHaveProperty('stations');
  });
});

test('a step lands on the grid of the step and never below nothing', () => {
  expect(stepped(1.25, 1 / 64, 1)).toBe(1.265625);
  expect(stepped(1.251, 1 / 64, -1)).toBe(1.234375);
  expect(stepped(null, 1, 1)).toBe(1);
  expect(stepped(0, 1, -1)).toBe(0);
  expect(stepped(Number.NaN, 0.5, 1)).toBe(0.5);
});
