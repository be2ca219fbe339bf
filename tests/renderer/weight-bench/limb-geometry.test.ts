import { describe, expect, it } from 'vitest';
import {
  type LimbPlace,
  limbPaths,
  placeOf,
  scaleOf,
  sheet,
  timesDeeper,
  unitsPerIn,
} from '../../../renderer/parts/limb-drawing/limb-geometry.ts';
import {
  hingeStretches,
  presentPlaces,
  stationLabel,
  thicknessPlaces,
  widthPlaces,
} from '../../../renderer/screens/weight-bench/limb-places.ts';
import { longbowInput } from '../../support/plan-input.ts';
import { answered, planOf } from './answered.ts';

const place = (fromFadeIn: number, half: number, off: number): LimbPlace => ({
  fromFadeIn,
  topIn: half,
  bottomIn: half,
  offTopIn: off,
  offBottomIn: off,
});
const numbersIn = (path: string) => (path.match(/-?\d+\.\d+/gu) ?? []).map(Number);

describe('a limb to scale', () => {
  const limb = [place(0, 0.6, 0), place(10, 0.5, 0.02), place(20, 0.4, 0.02), place(25, 0.3, 0)];
  const scale = scaleOf([limb]);

  it('fills the width of the sheet, the same units along and across', () => {
    expect(placeOf(25, 25)).toBe(sheet.width - sheet.side);
    const { outline, middle } = limbPaths(limb, scale);
    const [x = 0, y = 0] = numbersIn(outline);
    expect(x).toBeCloseTo(sheet.side, 1);
    expect(middle - y).toBeCloseTo(0.6 * unitsPerIn(25), 1);
  });

  it('draws a cut deeper than it is by whole times, never past half of the limb there', () => {
    const times = timesDeeper(scale);
    expect(Number.isInteger(times)).toBe(true);
    expect(times).toBeGreaterThan(1);
    expect(times * scale.deepestIn).toBeLessThan(0.5 * 0.4 + 0.02);
  });

  it('draws a cut that shows by itself as it is', () => {
    expect(timesDeeper(scaleOf([[place(0, 0.6, 0.3), place(20, 0.6, 0.3)]]))).toBe(1);
  });

  it('hatches one band a side, tapering to the places beside it', () => {
    const { bands, newEdges, middle } = limbPaths(limb, scale);
    expect(bands).toHaveLength(2);
    expect(newEdges).toHaveLength(2);
    const [x = 0] = numbersIn(bands[0] ?? '');
    expect(x).toBeCloseTo(placeOf(0, 25), 1);
    const ys = (path: string) => numbersIn(path).filter((_, i) => i % 2 === 1);
    expect(Math.max(...ys(newEdges[0] ?? ''))).toBeLessThan(middle);
    expect(Math.min(...ys(newEdges[1] ?? ''))).toBeGreaterThan(middle);
  });

  it('hatches nothing where nothing comes off, and draws nothing of one place', () => {
    expect(limbPaths([place(0, 0.6, 0), place(20, 0.5, 0)], scale).bands).toEqual([]);
    expect(limbPaths([place(0, 0.6, 0)], scale).outline).toBe('');
  });
});

describe('limbs of a real answer', () => {
  const answer = answered();

  it('take half of what comes off in total from each edge', () => {
    const { upper } = planOf(answer, 'narrowing');
    const deepest = scaleOf([widthPlaces(upper)]).deepestIn;
    expect(deepest).toBeCloseTo(upper.offPerSideIn, 3);
    expect(scaleOf([thicknessPlaces(upper)]).deepestIn).toBe(0);
  });

  it('show thinning on edge alone, both faces alike', () => {
    const { lower } = planOf(answer, 'thinning');
    expect(scaleOf([widthPlaces(lower)]).deepestIn).toBe(0);
    const [first] = thicknessPlaces(lower);
    expect(first?.offTopIn).toBeCloseTo(lower.offThou.back / 1000, 5);
    expect(first?.offBottomIn).toBeCloseTo(lower.offThou.belly / 1000, 5);
  });

  it('are drawn from their stations while a slider moves', () => {
    const sliding = planOf(answered(longbowInput, 'sliding'), 'narrowing');
    expect(sliding.upper.outline).toEqual([]);
    expect(widthPlaces(sliding.upper).length).toBeGreaterThan(2);
  });

  it('have their hinges as one stretch a limb', () => {
    const plan = planOf(answer, 'narrowing');
    const hinges = [
      { limb: 'upper' as const, fromFadeIn: 16, risePart: 0.06 },
      { limb: 'upper' as const, fromFadeIn: 14, risePart: 0.07 },
    ];
    const hinged = { ...plan, strain: { ...plan.strain, hinges } };
    expect(hingeStretches(hinged, 'upper')).toEqual([[14, 16]]);
    expect(hingeStretches(hinged, 'lower')).toEqual([]);
  });

  it('leave out a station that is no number yet', () => {
    const { upper } = longbowInput.bow;
    const [first, ...rest] = upper.stations;
    if (first === undefined) throw new Error('no station');
    const typed = { ...upper, stations: [{ ...first, backWidthIn: Number.NaN }, ...rest] };
    expect(presentPlaces(typed)).toHaveLength(rest.length);
    expect(stationLabel('upper', first)).toMatch(/^Upper limb, station 0 in: /u);
  });
});
