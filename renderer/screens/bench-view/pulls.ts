import { difference } from '../../../shared/measure.ts';

export interface Pull {
  drawIn: number;
  forceLbf: number;
}

export interface PulledWeight {
  drawIn: number;
  /** Rig zero taken off. */
  forceLbf: number;
  pulls: number;
  /** Largest minus smallest of the pulls that count. */
  rangeLbf: number;
}

/** The first pull of a session settles bow and string; it does not count. */
export const pullsNeeded = 3;

/** One weight a draw: mean of the pulls there without the first of the session, zero taken off. */
export function pulledWeights(pulls: readonly Pull[], rigZeroLbf: number): PulledWeight[] {
  const byDraw = new Map<number, number[]>();
  for (const { drawIn, forceLbf } of pulls.slice(1)) {
    byDraw.set(drawIn, [...(byDraw.get(drawIn) ?? []), difference(forceLbf, rigZeroLbf)]);
  }
  return [...byDraw].map(([drawIn, forces]) => ({
    drawIn,
    forceLbf: difference(forces.reduce((sum, force) => sum + force, 0) / forces.length, 0),
    pulls: forces.length,
    rangeLbf: difference(Math.max(...forces), Math.min(...forces)),
  }));
}

/** The weight that counts for the job, once enough was pulled; null before. */
export function weightAt(
  pulls: readonly Pull[],
  rigZeroLbf: number,
  drawIn: number,
): PulledWeight | null {
  const found = pulledWeights(pulls, rigZeroLbf).find((weight) => weight.drawIn === drawIn);
  return found !== undefined && found.pulls >= pullsNeeded - 1 ? found : null;
}
