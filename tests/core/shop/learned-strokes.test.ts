import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CountedSanding,
  type StrokeJob,
  strokeFigureFrom,
  strokeJobs,
  strokesOver,
} from '../../../core/shop/learned/stroke-figure.ts';
import { normal } from '../../../demo-data/simulated/normal.ts';
import { seededRandom } from '../../support/random.ts';

const at = (hour: number) => new Date(Date.UTC(2026, 4, 4, hour)).toISOString();
const span = { after: at(8), upTo: at(17) };

function sanded(part: Partial<CountedSanding> & { grit?: number } = {}): CountedSanding {
  const { grit = 120, ...other } = part;
  return {
    section: 'upper-limb',
    substrate: 'glass',
    grit_json: JSON.stringify({ grit, scale: 'P' }),
    strokes: 40,
    at: at(10),
    struck_reason: null,
    ...other,
  };
}
const bothLimbs = (part: Parameters<typeof sanded>[0] = {}) => [
  sanded(part),
  sanded({ ...part, section: 'lower-limb' }),
];
const over = (rows: readonly CountedSanding[]) => strokesOver(rows, 'glass-laminated', span);

describe('strokes over the faces of a bow', () => {
  test('each grit by its grain, both limbs together', () => {
    expect(over(bothLimbs())).toBe(40);
    expect(over([...bothLimbs(), ...bothLimbs({ grit: 400, strokes: 100 })])).toBeCloseTo(75, 9);
    expect(over([sanded({ strokes: 30 }), sanded({ section: 'lower-limb', strokes: 50 })])).toBe(
      40,
    );
  });

  test('what was not counted, not on both limbs, or struck out tells nothing', () => {
    expect(over([])).toBeNull();
    expect(over([sanded()])).toBeNull();
    expect(over([...bothLimbs(), ...bothLimbs({ grit: 220, strokes: null })])).toBeNull();
    expect(over(bothLimbs({ struck_reason: 'other bow' }))).toBeNull();
  });

  test('only the faces that bear, and only inside the span', () => {
    const wood = bothLimbs({ substrate: 'wood' });
    expect(over(wood)).toBeNull();
    expect(strokesOver(wood, 'all-wood', span)).toBe(40);
    expect(over([...bothLimbs(), ...wood, ...bothLimbs({ substrate: 'overlay' })])).toBe(40);
    expect(over([...bothLimbs(), ...bothLimbs({ at: span.after })])).toBe(40);
    expect(over([...bothLimbs(), ...bothLimbs({ at: at(18) })])).toBe(40);
    expect(over(bothLimbs({ at: span.upTo }))).toBe(40);
  });
});

const job = (part: Partial<StrokeJob> = {}): StrokeJob => ({
  construction: 'glass-laminated',
  allowanceThou: 1.5,
  strokes: 150,
  ...part,
});

describe('what a stroke takes, by the closed jobs', () => {
  test('nothing under three jobs that tell, whatever else there is', () => {
    const others = [
      job({ construction: 'all-wood' }),
      job({ allowanceThou: null }),
      job({ strokes: null }),
      job({ allowanceThou: -0.2 }),
    ];
    const two = [job(), job(), ...others];
    expect(strokeJobs(two, 'glass-laminated')).toBe(2);
    expect(strokeFigureFrom(two, 'glass-laminated')).toBeNull();
    const three = strokeFigureFrom([job(), ...two], 'glass-laminated');
    expect(three?.jobs).toBe(3);
    expect(three?.mean).toBeCloseTo(0.01, 12);
  });

  test('three jobs all alike do not make it sure', () => {
    const figure = strokeFigureFrom([job(), job(), job()], 'glass-laminated');
    expect((figure?.sd ?? 0) / (figure?.mean ?? 1)).toBeGreaterThan(0.25);
  });

  test('the next job lies inside its eight-in-ten band about as often as that', () => {
    const random = seededRandom(19);
    let inside = 0;
    const trials = 2000;
    for (let i = 0; i < trials; i += 1) {
      const own = 0.006 + 0.01 * random();
      const drawn = () =>
        job({ allowanceThou: 150 * own * Math.max(0.1, 1 + 0.3 * normal(random)) });
      const jobs = Array.from({ length: 3 + Math.floor(8 * random()) }, drawn);
      const figure = strokeFigureFrom(jobs, 'glass-laminated');
      const next = (drawn().allowanceThou ?? 0) / 150;
      if (figure === null) throw new Error('no figure');
      if (Math.abs(next - figure.mean) < 1.2816 * figure.sd) inside += 1;
    }
    expect(inside / trials).toBeGreaterThan(0.76);
    expect(inside / trials).toBeLessThan(0.86);
  });

  test('the unit of work cancels: twice the strokes for the same wear halve the figure', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            thou: fc.double({ min: 0.3, max: 3, noNaN: true }),
            strokes: fc.integer({ min: 10, max: 500 }),
          }),
          { minLength: 3, maxLength: 20 },
        ),
        (jobs) => {
          const figureAt = (times: number) =>
            strokeFigureFrom(
              jobs.map(({ thou, strokes }) =>
                job({ allowanceThou: thou, strokes: times * strokes }),
              ),
              'glass-laminated',
            );
          const [once, twice] = [figureAt(1), figureAt(2)];
          expect(twice?.mean).toBeCloseTo((once?.mean ?? 0) / 2, 12);
          expect(twice?.sd).toBeCloseTo((once?.sd ?? 0) / 2, 12);
        },
      ),
    );
  });
});
