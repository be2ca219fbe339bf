import { expect, test } from 'vitest';
import { type BowRemoval, predictRemoval } from '../../../core/limb/predict-removal.ts';
import { nothingTaken } from '../../../core/limb/removal.ts';
import { solveStaticBow } from '../../../core/limb/static-bow.ts';
import { type LimbWishes, longbow } from '../../support/sample-limbs.ts';
import { straightBow } from '../../support/straight-bow.ts';

const wide = { parallelIn: 13, fadeThicknessIn: 0.4 };

function quarterInch(shape: (t: number) => number): BowRemoval {
  const cuts = Array.from({ length: 27 }, (_, s) => ({
    fromFadeIn: s,
    leftIn: 0.125 * shape(s / 26),
    rightIn: 0.125 * shape(s / 26),
  }));
  const limb = { ...nothingTaken, cuts };
  return { upper: limb, lower: limb };
}

const tapered = quarterInch((t) => Math.min(1, t / 0.1, (1 - t) / 0.4));

/** Part of the weight lost, percent. */
function drop(removal: BowRemoval, wishes: LimbWishes & { fadeIn?: number } = {}): number {
  const solved = predictRemoval(longbow({ ...wide, ...wishes }), removal, {
    drawIn: 28,
    weightLbf: 47,
    weightSdLbf: 0,
    effectiveness: { mean: 1, sd: 0 },
  });
  if (solved.status !== 'converged') throw new Error(solved.why);
  return 100 * solved.value.modelledDrop;
}

// Common practice has a quarter inch in total between a tenth and a fifth of the weight, by how far
// along the limb the full cut is carried.
test('the shape of a cut along the limb moves the drop by a third of itself', () => {
  const [even, sine] = [
    drop(quarterInch(() => 1)),
    drop(quarterInch((t) => Math.sin(Math.PI * t))),
  ];
  expect(sine).toBeGreaterThan(12);
  expect(even).toBeLessThan(23);
  expect(even - sine).toBeGreaterThan(6);
});

test.each([
  { glassFactor: 0.83 },
  { glassFactor: 1.17 },
  { coreFactor: 0.85 },
  { coreFactor: 1.15 },
  { fadeIn: 6 },
  { fadeIn: 8 },
  { tipThicknessIn: 0.25 },
  { tipThicknessIn: 0.31 },
])('what is not known of the bow hardly moves it: %j', (wishes) => {
  expect(Math.abs(drop(tapered, wishes) - drop(tapered))).toBeLessThan(0.35);
});

test('a tenth off one third of a straight-taper bow: 5.6, 3.8 and 1.2 in a hundred', () => {
  const weight = (factor: (s: number) => number) => {
    const solved = solveStaticBow(straightBow(factor), {
      braceIn: 6,
      drawsIn: [29.75],
      segments: 90,
    });
    if (solved.status !== 'converged') throw new Error(solved.why);
    return solved.value.draws[0]?.forceLbf ?? Number.NaN;
  };
  const drops = [0, 1, 2].map((third) => {
    const [from, to] = [(third * 32) / 3, ((third + 1) * 32) / 3];
    return 100 * (1 - weight((s) => (s >= from && s < to ? 0.9 : 1)) / weight(() => 1));
  });
  for (const [i, expected] of [5.6, 3.8, 1.2].entries()) {
    expect(Math.abs((drops[i] ?? 0) - expected)).toBeLessThan(0.1);
  }
});
