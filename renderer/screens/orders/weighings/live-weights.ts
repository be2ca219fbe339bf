import type { DrawReference } from '../../../../shared/bows.ts';
import { weightText } from '../../../../shared/weight-text.ts';

export interface TypedPull {
  key: number;
  drawIn: number | null;
  forceLbf: number | null;
}

interface GivenPull {
  drawIn: number;
  forceLbf: number;
}

const isNumber = (value: number | null): value is number =>
  value !== null && Number.isFinite(value);

/** A row nobody has written a force into is no pull yet; its draw was only offered. */
export const isBlank = (pull: TypedPull): boolean => pull.forceLbf === null;

/** Rows that hold a whole pull, in the order they were pulled. */
export function givenPulls(rows: readonly TypedPull[]): GivenPull[] {
  return rows.flatMap(({ drawIn, forceLbf }) =>
    isNumber(drawIn) && isNumber(forceLbf) ? [{ drawIn, forceLbf }] : [],
  );
}

export interface LiveWeight {
  drawIn: number;
  pulls: number;
  text: string;
}

/**
 * What the session amounts to so far: mean of the pulls at each draw length, the rig's zero taken
 * off, without the first pull of the session. The same rule as the core's, which has the last word.
 */
export function liveWeights(
  pulls: readonly GivenPull[],
  rigZeroLbf: number,
  reference: DrawReference,
): LiveWeight[] {
  const byDraw = Map.groupBy(pulls.slice(1), (pull) => pull.drawIn);
  return [...byDraw]
    .sort(([a], [b]) => a - b)
    .map(([drawIn, there]) => {
      const sum = there.reduce((total, pull) => total + (pull.forceLbf - rigZeroLbf), 0);
      const text = weightText(sum / there.length, drawIn, reference);
      return { drawIn, pulls: there.length, text };
    });
}
