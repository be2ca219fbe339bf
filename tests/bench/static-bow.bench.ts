import { braceBow, forceLbf, meshesOf } from '../../core/limb/bow.ts';
import { drawCurve } from '../../core/limb/draw-curve.ts';
import { Solver } from '../support/general-ode.mjs';
import { straightBow } from '../support/straight-bow.ts';

/**
 * Twenty points of a force-draw curve, ours against E. Hairer and G. Wanner's ODEX with a plain
 * Newton iteration, both good to about a part in a million, in one run.
 */
const nocks = Array.from({ length: 20 }, (_, i) => 6 + ((i + 1) * 22) / 20);
const bow = straightBow();
const half = bow.upper;

function ours(segments: number): number[] {
  const meshes = meshesOf(bow, segments);
  const braced = braceBow(bow, meshes, 6);
  if (braced.status !== 'converged') throw new Error(braced.why);
  const drawn = drawCurve(bow, meshes, braced.value, nocks);
  if (drawn.status !== 'converged') throw new Error(drawn.why);
  return drawn.value.map(forceLbf);
}

function shoot(tension: number, angle: number, nock: number, tolerance: number) {
  const solver = new Solver(3);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const end = half.limb.lengthIn * (1 - 1e-9);
  const { y: state } = solver.solve(
    (s, [x = 0, y = 0, theta = 0]) => [
      Math.cos(theta),
      Math.sin(theta),
      (tension * ((nock - y) * cos - x * sin)) / half.limb.eiAt(s),
    ],
    0,
    [half.fadeIn, 0, 0],
    end,
  );
  const [x = 0, y = 0] = state;
  return { lever: (nock - y) * cos - x * sin, string: Math.hypot(x, y - nock) };
}

function general(tolerance: number): number[] {
  let tension = 80;
  for (let i = 0; i < 20; i += 1) {
    const f = shoot(tension, 0, 6, tolerance).lever;
    if (Math.abs(f) < 1e-8) break;
    const slope = (shoot(tension + 1e-4, 0, 6, tolerance).lever - f) / 1e-4;
    tension -= f / slope;
  }
  const { string } = shoot(tension, 0, 6, tolerance);
  let angle = 0.01;
  return nocks.map((nock) => {
    for (let i = 0; i < 20; i += 1) {
      const at = shoot(tension, angle, nock, tolerance);
      const f = [at.lever, at.string - string] as const;
      if (Math.max(Math.abs(f[0]), Math.abs(f[1])) < 1e-8) break;
      const t = shoot(tension + 1e-4, angle, nock, tolerance);
      const a = shoot(tension, angle + 1e-6, nock, tolerance);
      const j = [
        (t.lever - at.lever) / 1e-4,
        (a.lever - at.lever) / 1e-6,
        (t.string - at.string) / 1e-4,
        (a.string - at.string) / 1e-6,
      ] as const;
      const det = j[0] * j[3] - j[1] * j[2];
      tension -= (j[3] * f[0] - j[1] * f[1]) / det;
      angle -= (j[0] * f[1] - j[2] * f[0]) / det;
    }
    return 2 * tension * Math.sin(angle);
  });
}

function worst(forces: readonly number[], truth: readonly number[]): number {
  return Math.max(...forces.map((force, i) => Math.abs(force / (truth[i] ?? 1) - 1)));
}

/** Best of several, milliseconds. */
function time(work: () => unknown, runs: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const truth = general(1e-12);
const segments = [60, 90, 120, 180, 240].find((n) => worst(ours(n), truth) < 1e-6) ?? 240;
const tolerance = [1e-6, 1e-7, 1e-8, 1e-9].find((t) => worst(general(t), truth) < 1e-6) ?? 1e-9;
for (let i = 0; i < 50; i += 1) ours(segments);
general(tolerance);
const oursMs = time(() => ours(segments), 60);
const generalMs = time(() => general(tolerance), 10);
const line = (name: string, ms: number, error: number) =>
  console.log(
    `${name.padEnd(40)} ${ms.toFixed(2).padStart(8)} ms   error ${error.toExponential(1)}`,
  );
console.log('Force-draw curve of 20 points, straight bow');
line(`ours, ${segments} segments`, oursMs, worst(ours(segments), truth));
line(`general-purpose, tolerance ${tolerance}`, generalMs, worst(general(tolerance), truth));
console.log(`${(generalMs / oursMs).toFixed(0)} times as fast; 5 ms and 10 times are asked`);
process.exit(oursMs <= 5 && generalMs / oursMs >= 10 ? 0 : 1);
