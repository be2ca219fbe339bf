import type { HalfBow } from './curve.ts';
import { halfStringIn, type LimbEnd, leverIn, march, type StringPull } from './march.ts';
import { gaussNodes, type Mesh } from './mesh.ts';
import { converged, failed, type Solved } from './solved.ts';

/** One half of the bow under a string at rest or drawn. */
export interface HalfState {
  pull: StringPull;
  end: LimbEnd;
  /** Nock to tip along the string, inches. */
  halfStringIn: number;
}

export function halfState(bow: HalfBow, mesh: Mesh, pull: StringPull): HalfState {
  const end = march(bow, mesh, pull);
  return { pull, end, halfStringIn: halfStringIn(bow, end, pull) };
}

/** Force at the tip that would move it by the limb's own length, by small-deflection theory. */
function tensionScaleLbf({ limb }: HalfBow, mesh: Mesh): number {
  let flexibility = 0;
  for (let i = 0; i < mesh.count; i += 1) {
    const step = mesh.stepIn[i] ?? 0;
    for (const [k, node] of gaussNodes.entries()) {
      const arm = limb.lengthIn - (mesh.startIn[i] ?? 0) - node * step;
      flexibility += (step / 2) * arm ** 2 * (mesh.compliance[2 * i + k] ?? 0);
    }
  }
  return limb.lengthIn / flexibility;
}

/** Inches by which a solved state may miss the string line. */
export const lengthTolerance = 1e-10;

/**
 * The braced half bow under a string line of the given tilt. The tension is the least one that
 * brings the limb's end up to the line: pressed from rest, a limb passes no other state before.
 * @param braceIn throat to string, square to the bow, inches
 * @param tiltRad slope angle of the string, radian; positive when it runs down to the tip
 */
export function braceHalf(
  bow: HalfBow,
  mesh: Mesh,
  braceIn: number,
  tiltRad = 0,
): Solved<HalfState> {
  let iterations = 0;
  const shortfall = (tensionLbf: number) => {
    iterations += 1;
    const pull = { tensionLbf, angleRad: tiltRad, nockIn: braceIn };
    return leverIn(march(bow, mesh, pull), pull);
  };
  const atRest = shortfall(0);
  if (!(atRest > 0)) {
    const why = 'The unstrung limb already reaches past the brace height: it has nothing to bend.';
    return failed('infeasible', why, Math.abs(atRest), iterations);
  }
  const unit = tensionScaleLbf(bow, mesh);
  let [low, fLow] = [0, atRest];
  let high = unit / 64;
  let fHigh = shortfall(high);
  while (fHigh > 0 && high < unit * 4096) {
    [low, fLow] = [high, fHigh];
    high *= 1.25;
    fHigh = shortfall(high);
  }
  if (!(fHigh <= 0)) {
    const why = `No string tension brings this limb to a brace height of ${braceIn} in.`;
    return failed('infeasible', why, Math.abs(fHigh), iterations);
  }
  const tensionLbf = rootBetween(shortfall, low, fLow, high, fHigh);
  const pull = { tensionLbf, angleRad: tiltRad, nockIn: braceIn };
  const state = halfState(bow, mesh, pull);
  const residual = Math.abs(leverIn(state.end, pull));
  return residual <= 1e-8
    ? converged(state, residual, iterations)
    : failed('not-converged', 'The braced shape was not found.', residual, iterations);
}

/** Illinois rule between two values of opposite sign. */
function rootBetween(
  f: (x: number) => number,
  from: number,
  fFrom: number,
  to: number,
  fTo: number,
): number {
  let [low, fLow, high, fHigh] = [from, fFrom, to, fTo];
  let x = high;
  for (let i = 0; i < 60; i += 1) {
    x = high - (fHigh * (high - low)) / (fHigh - fLow);
    const fx = f(x);
    if (Math.abs(fx) <= lengthTolerance || high - low <= 1e-14 * high) break;
    if (fx > 0) {
      [low, fLow, fHigh] = [x, fx, fHigh / 2];
    } else {
      [high, fHigh, fLow] = [x, fx, fLow / 2];
    }
  }
  return x;
}
