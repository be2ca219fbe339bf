import type { Construction } from '../learned/jobs.ts';
import type { Spread } from '../learned/shrink.ts';
import { type CountedSanding, type StrokeFigure, strokesOver } from '../learned/stroke-figure.ts';

/** What the strokes on record say of a sanding that is under way. */
export interface StrokesSoFar {
  /** Off each face by all of them, thousandths. */
  thou: Spread;
  /** Part of it that the last weighing has already seen, 0 to 1. */
  weighedPart: number;
  /** Both limbs have their last grit. */
  isDone: boolean;
  /** Closed jobs that the figure for a stroke rests on. */
  jobs: number;
}

export interface SandingUnderWay {
  sandings: readonly CountedSanding[];
  construction: Construction;
  /** Since when the sanding runs: the plan, or the last time the bow was stripped. */
  since: string;
  /** Of the last weighing; null where there is none since. */
  weighedAt: string | null;
  isDone: boolean;
  now: string;
}

/** Null where nothing was counted: then the allowance stands by itself. */
export function strokesSoFar(
  { sandings, construction, since, weighedAt, isDone, now }: SandingUnderWay,
  figure: StrokeFigure | null,
): StrokesSoFar | null {
  if (figure === null) return null;
  const all = strokesOver(sandings, construction, { after: since, upTo: now });
  if (all === null) return null;
  const before =
    weighedAt === null || weighedAt <= since
      ? null
      : strokesOver(sandings, construction, { after: since, upTo: weighedAt });
  return {
    thou: { mean: all * figure.mean, sd: all * figure.sd },
    weighedPart: (before ?? 0) / all,
    isDone,
    jobs: figure.jobs,
  };
}

/** Two opinions of one amount, each counting by how sure it is. */
function together(one: Spread, other: Spread): Spread {
  const [weight, otherWeight] = [1 / one.sd ** 2, 1 / other.sd ** 2];
  const sum = weight + otherWeight;
  return {
    mean: (weight * one.mean + otherWeight * other.mean) / sum,
    sd: Math.sqrt(1 / sum),
  };
}

/**
 * What sanding takes off each face in all, thousandths: the plan's allowance and the strokes
 * together once both limbs have their last grit; before that the allowance, or what the strokes
 * took where that is more already.
 */
export function sandingInAll(allowance: Spread, { thou, isDone }: StrokesSoFar): Spread {
  if (isDone) return together(allowance, thou);
  return thou.mean > allowance.mean ? thou : allowance;
}

/** What of it the weight last read has not seen yet, thousandths. */
export function sandingStillToCome(allowance: Spread, strokes: StrokesSoFar): Spread {
  const inAll = sandingInAll(allowance, strokes);
  const seen = (strokes.isDone ? inAll.mean : strokes.thou.mean) * strokes.weighedPart;
  const mean = Math.max(0, inAll.mean - seen);
  return { mean, sd: (inAll.sd * mean) / inAll.mean };
}
