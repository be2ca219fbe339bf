import type { LimbCurve } from './curve.ts';

/** Nodes of the two-point Gauss rule on the unit interval. */
export const gaussNodes = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6] as const;

/** Segments from fade to tip, with stiffness and curvature at the two Gauss points of each. */
export interface Mesh {
  count: number;
  startIn: Float64Array;
  stepIn: Float64Array;
  /** 1 / EI at the Gauss points, two a segment; the points never touch the tip, where EI may be zero. */
  compliance: Float64Array;
  curvature: Float64Array;
}

/**
 * No segment crosses a break of the curve, so that the order of the rule is kept.
 * @param segments wanted from fade to tip; each stretch between two breaks gets at least one.
 */
export function meshOf(limb: LimbCurve, segments: number): Mesh {
  const starts: number[] = [];
  const steps: number[] = [];
  for (const [index, from] of limb.breaksIn.slice(0, -1).entries()) {
    const to = limb.breaksIn[index + 1] ?? limb.lengthIn;
    const count = Math.max(1, Math.round(((to - from) / limb.lengthIn) * segments));
    const step = (to - from) / count;
    for (let i = 0; i < count; i += 1) {
      starts.push(from + i * step);
      steps.push(step);
    }
  }
  const count = starts.length;
  const mesh: Mesh = {
    count,
    startIn: Float64Array.from(starts),
    stepIn: Float64Array.from(steps),
    compliance: new Float64Array(2 * count),
    curvature: new Float64Array(2 * count),
  };
  for (let i = 0; i < count; i += 1) {
    for (const [k, node] of gaussNodes.entries()) {
      const s = (starts[i] ?? 0) + node * (steps[i] ?? 0);
      mesh.compliance[2 * i + k] = 1 / limb.eiAt(s);
      mesh.curvature[2 * i + k] = limb.curvatureAt(s);
    }
  }
  return mesh;
}
