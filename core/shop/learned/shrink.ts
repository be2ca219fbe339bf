import { difference } from '../../../shared/measure.ts';

/** A figure with one standard deviation of what the next job will show. */
export interface Spread {
  mean: number;
  sd: number;
}

export interface Learned extends Spread {
  /** How many closed jobs it rests on. */
  jobs: number;
}

/** Common practice counts as much as this many jobs of the shop. */
export const priorJobs = 5;
/** A job farther out than this many spreads of common practice counts as if it lay there. */
const farthestSds = 3;
/** However alike the jobs were, the spread never falls under this part of the common one. */
const leastSdPart = 0.4;

function drawnIn(value: number, { mean, sd }: Spread): number {
  return Math.min(Math.max(value, mean - farthestSds * sd), mean + farthestSds * sd);
}

/**
 * What the shop's own closed jobs make of a figure of common practice. The mean of both, with
 * common practice counted as five jobs; so one odd job moves it by a sixth of the way at most, and
 * no job counts from farther out than three spreads. The spread is that of all jobs about the new
 * mean, common practice again counted as five, and widened for the mean itself being unsure.
 *
 * The rule is that of a normal mean and variance with a conjugate prior: A. Gelman and others,
 * "Bayesian Data Analysis", chapter 3; that common practice is worth five jobs is shop practice.
 */
export function shrunk(usual: Spread, jobs: readonly number[]): Learned {
  const seen = jobs.filter(Number.isFinite).map((value) => drawnIn(value, usual));
  const count = priorJobs + seen.length;
  const mean = (priorJobs * usual.mean + seen.reduce((sum, one) => sum + one, 0)) / count;
  const about = (value: number) => (value - mean) ** 2;
  const variance =
    (priorJobs * (usual.sd ** 2 + about(usual.mean)) +
      seen.reduce((sum, value) => sum + about(value), 0)) /
    count;
  // At no jobs this is the common spread itself, which has its own doubt in it already.
  const unsure = Math.sqrt((1 + 1 / count) / (1 + 1 / priorJobs));
  const sd = Math.max(leastSdPart * usual.sd, Math.sqrt(variance) * unsure);
  return { mean: difference(mean, 0), sd: difference(sd, 0), jobs: seen.length };
}
