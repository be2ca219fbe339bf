import type { DrawReference } from '../../../shared/bows.ts';
import { weightText } from '../../../shared/weight-text.ts';

export interface Pull {
  drawIn: number;
  forceLbf: number;
}

export interface SessionWeight {
  drawIn: number;
  forceLbf: number;
  pulls: number;
  text: string;
}

/**
 * Mean force at each draw length of a weighing session, pound-force, shortest draw first.
 * The first pull of a session settles the limbs and the rig and is dropped (common practice).
 * Draw lengths are kept apart: no weight is ever carried over to another draw or reference.
 */
export function sessionWeights(pulls: readonly Pull[], reference: DrawReference): SessionWeight[] {
  const byDraw = new Map<number, number[]>();
  for (const pull of pulls.slice(1)) {
    const forces = byDraw.get(pull.drawIn) ?? [];
    byDraw.set(pull.drawIn, [...forces, pull.forceLbf]);
  }
  return [...byDraw]
    .sort(([a], [b]) => a - b)
    .map(([drawIn, forces]) => {
      const forceLbf = forces.reduce((sum, force) => sum + force, 0) / forces.length;
      return {
        drawIn,
        forceLbf,
        pulls: forces.length,
        text: weightText(forceLbf, drawIn, reference),
      };
    });
}

/** Mean force at exactly this AMO draw length, or null where the session has none. */
export function weightAtAmoDraw(
  pulls: readonly Pull[],
  reference: DrawReference,
  drawIn: number,
): number | null {
  if (reference !== 'amo') return null;
  const at = pulls.slice(1).filter((pull) => pull.drawIn === drawIn);
  if (at.length === 0) return null;
  return at.reduce((sum, { forceLbf }) => sum + forceLbf, 0) / at.length;
}
