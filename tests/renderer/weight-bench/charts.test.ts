import { describe, expect, it } from 'vitest';
import { chartRows, rangeOf, thinned, ticksOf } from '../../../renderer/parts/charts/chart-rows.ts';
import {
  forceDrawChart,
  storyChart,
  strainCharts,
} from '../../../renderer/screens/weight-bench/chart-data.ts';
import { weighingsOf } from '../../../renderer/screens/weight-bench/order-facts.ts';
import { weightStoryOf } from '../../../renderer/screens/weight-bench/weight-story.ts';
import { longbowInput } from '../../support/plan-input.ts';
import { answered, planOf } from './answered.ts';

const answer = answered();
const plan = planOf(answer, 'narrowing');
const { wish } = longbowInput;

describe('rows of a chart', () => {
  it('join series at the same place and keep the others apart', () => {
    const line = (name: string, ...points: [number, number][]) => ({
      name,
      kind: 'line' as const,
      tone: 'ink' as const,
      points: points.map(([x, y]) => ({ x, y })),
    });
    expect(chartRows([line('a', [2, 5], [1, 4]), line('b', [2, 9])])).toEqual([
      { x: 1, a: 4 },
      { x: 2, a: 5, b: 9 },
    ]);
  });

  it('end on whole steps and write round figures', () => {
    expect(rangeOf([44.2, 52], 10)).toEqual([40, 60]);
    expect(rangeOf([], 10)).toEqual([0, 10]);
    expect(rangeOf([20, 20], 10)).toEqual([20, 30]);
    expect(ticksOf([0, 26])).toEqual([0, 5, 10, 15, 20, 25]);
    expect(ticksOf([3, 3])).toEqual([3]);
  });

  it('thin a long series but keep its ends', () => {
    const points = Array.from({ length: 100 }, (_, x) => ({ x, y: x }));
    const few = thinned(points, 10);
    expect(few).toHaveLength(10);
    expect([few[0]?.x, few.at(-1)?.x]).toEqual([0, 99]);
    expect(thinned(points.slice(0, 5), 10)).toHaveLength(5);
  });
});

describe('the weight story', () => {
  const weighings = [
    { name: 'Arrival', lbf: 52 },
    { name: 'During the work', lbf: 49.5 },
  ];
  const story = weightStoryOf({ weighings, wish, plan });

  it('ends with the forecast after every weighing', () => {
    expect(story.points.map(({ name }) => name)).toEqual([
      'Arrival',
      'During the work',
      'Forecast',
    ]);
    expect(story.forecast?.bandLbf).toEqual(plan.afterFinishing.bandLbf);
  });

  it('stops where sanding still takes the rest, the reserve being the band', () => {
    const [low = 0, high = 0] = story.stopBandLbf ?? [];
    expect(high).toBeCloseTo(plan.stopAtLbf, 9);
    expect(high - low).toBeCloseTo(wish.reserveLbf, 9);
    expect(low).toBeGreaterThan(wish.targetLbf);
  });

  it('keeps every figure inside its range and in its caption', () => {
    const [from, to] = story.rangeLbf;
    expect(from).toBeLessThan(plan.afterFinishing.bandLbf[0]);
    expect(to).toBeGreaterThan(52);
    expect(story.caption).toContain(`Weighs 49.5 lb @ ${wish.drawIn}" now`);
    expect(story.caption).toContain(
      `The target is ${wish.targetLbf.toFixed(1)} lb @ ${wish.drawIn}"`,
    );
    expect(story.caption).toContain(`Work stops at ${plan.stopAtLbf.toFixed(1)} lb`);
  });

  it('begins with the weight that was typed where nothing was weighed', () => {
    const bare = weightStoryOf({ weighings: [], wish, plan: null });
    expect(bare.points).toEqual([{ place: 1, name: 'Now', lbf: 52, kind: 'weighed' }]);
    expect(storyChart(bare).data.bands).toEqual([]);
  });

  it('counts weighings at its own draw, in AMO, that stand', () => {
    const reading = (lbf: number, at: string, change: object = {}) => ({
      phase: 'work' as const,
      weighedAt: at,
      drawReference: 'amo' as const,
      struckReason: null,
      weights: [{ drawIn: 28, forceLbf: lbf, pulls: 2, text: '' }],
      ...change,
    });
    const found = weighingsOf(
      [
        reading(49, '2026-03-03T10:00:00Z'),
        reading(52, '2026-03-02T10:00:00Z', { phase: 'arrival' }),
        reading(70, '2026-03-04T10:00:00Z', { struckReason: 'read wrong' }),
        reading(60, '2026-03-04T10:00:00Z', { drawReference: 'to-back' }),
        reading(40, '2026-03-04T10:00:00Z', { weights: [] }),
      ],
      28,
    );
    expect(found.map(({ lbf }) => lbf)).toEqual([52, 49]);
  });
});

describe('force and draw', () => {
  const forceDraw = answer.forceDraw;
  if (forceDraw === null) throw new Error('a full answer has a curve');
  const { caption, data } = forceDrawChart(forceDraw);

  it('says slope, energy, 28 in and the own draw', () => {
    expect(caption).toContain(`${forceDraw.slopeLbfPerIn.toFixed(2)} lb an inch`);
    expect(caption).toMatch(/ft lb stored/u);
    expect(caption).toContain('At 28"');
    expect(caption).toContain('At the customer\'s own 27"');
  });

  it('draws one line where the curve is the model', () => {
    expect(forceDraw.basis === 'model' || forceDraw.basis === 'one reading').toBe(true);
    expect(data.series.map(({ name }) => name)).not.toContain('Model (lb)');
    expect(data.series.map(({ name }) => name)).toContain('Afterwards (lb)');
  });

  it('reaches every figure, with room for the last reading and the names of the draws', () => {
    for (const { points } of data.series) {
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(data.xRange[0]);
        expect(x).toBeLessThanOrEqual(data.xRange[1] - 0.5);
        expect(1.25 * y).toBeLessThanOrEqual(data.yRange[1]);
      }
    }
  });
});

describe('strain along the limb', () => {
  it('has one picture a limb with before and afterwards in percent', () => {
    const charts = strainCharts(plan, 'Narrowing');
    expect(charts.map(({ title }) => title)).toEqual(['Strain, upper limb', 'Strain, lower limb']);
    const [before, after] = charts[0]?.data.series ?? [];
    const first = plan.strain.along.find(({ limb }) => limb === 'upper');
    expect(before?.points[0]?.y).toBeCloseTo(100 * (first?.before ?? 0), 9);
    expect(after?.points).toHaveLength(before?.points.length ?? 0);
  });

  it('marks the stretch of a hinge and says it', () => {
    const hinges = [{ limb: 'lower' as const, fromFadeIn: 14, risePart: 0.06 }];
    const [upper, lower] = strainCharts(
      { ...plan, strain: { ...plan.strain, hinges } },
      'Narrowing',
    );
    expect(upper?.data.bands).toEqual([]);
    expect(upper?.caption).toContain('No hinge');
    expect(lower?.data.bands[0]).toMatchObject({ axis: 'x', from: 13.75, to: 14.25 });
    expect(lower?.caption).toContain('lower limb, at 14" from the fade, up to 6 % more');
  });
});
