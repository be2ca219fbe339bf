import type { JobOutcome } from './simulated-job.ts';

/** What good looks like, as parts of the jobs. */
export const bars = { withinPound: 0.99, halfUnder: 0.005, tiller: 0.95, broken: 0 } as const;

/** One way of working over many jobs, as parts of them. */
export interface JobCount {
  jobs: number;
  /** True weight within 1 lb of the target. */
  withinPound: number;
  /** More than half a pound under it. */
  halfUnder: number;
  /** True tiller within 1/16 in of its target. */
  tiller: number;
  /** Jobs, not parts: a limit broken at a measured place or in the glass. */
  broken: number;
  medianWeighings: number;
  meanOverLbf: number;
  /** Bows that got the final sanding only, because a full strip would take too much. */
  notStripped: number;
}

export function countOf(outcomes: readonly JobOutcome[]): JobCount {
  const jobs = outcomes.length;
  const part = (good: (outcome: JobOutcome) => boolean) => outcomes.filter(good).length / jobs;
  const weighings = outcomes.map((outcome) => outcome.weighings).sort((a, b) => a - b);
  return {
    jobs,
    withinPound: part(({ overLbf }) => Math.abs(overLbf) <= 1),
    halfUnder: part(({ overLbf }) => overLbf < -0.5),
    tiller: part(({ tillerOffIn }) => Math.abs(tillerOffIn) <= 1 / 16),
    broken: outcomes.filter(({ broken }) => broken).length,
    medianWeighings: weighings[Math.floor(jobs / 2)] ?? Number.NaN,
    meanOverLbf: outcomes.reduce((sum, { overLbf }) => sum + overLbf, 0) / jobs,
    notStripped: part(({ sanding }) => sanding === 'final sanding only'),
  };
}

/** Every bar that a count misses, by name. */
export function missedBars(count: JobCount): string[] {
  const missed = {
    withinPound: count.withinPound < bars.withinPound,
    halfUnder: count.halfUnder >= bars.halfUnder,
    tiller: count.tiller < bars.tiller,
    broken: count.broken > bars.broken,
  };
  return Object.entries(missed).flatMap(([name, is]) => (is ? [name] : []));
}
