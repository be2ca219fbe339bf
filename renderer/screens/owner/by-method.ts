import { removalMethodLabels } from '../../../shared/bench.ts';
import type { ForecastJob } from '../../../shared/contract/learned.ts';

/** How much weight one way of working took against what was reckoned. */
export interface MethodFigure {
  name: string;
  jobs: number;
  /** Measured over reckoned drop, mean of the jobs. */
  mean: number;
  /** Sample standard deviation; null with fewer than two jobs. */
  sd: number | null;
}

function spreadOf(values: readonly number[], mean: number): number | null {
  if (values.length < 2) return null;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / (values.length - 1));
}

const nameOf = ({ biteMethods }: ForecastJob) =>
  biteMethods
    .map((method) => removalMethodLabels[method])
    .toSorted()
    .join(', ');

/** Effectiveness by what the bites were, most jobs first. Jobs that do not tell it are left out. */
export function byMethod(jobs: readonly ForecastJob[]): MethodFigure[] {
  const telling = jobs.filter((job) => job.effectiveness !== null && job.biteMethods.length > 0);
  return [...Map.groupBy(telling, nameOf)]
    .map(([name, group]) => {
      const values = group.flatMap(({ effectiveness }) => effectiveness ?? []);
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      return { name, jobs: values.length, mean, sd: spreadOf(values, mean) };
    })
    .toSorted((a, b) => b.jobs - a.jobs || a.name.localeCompare(b.name));
}

/** Weighings and bites of a job, means; null without jobs. */
export function workPerJob(
  jobs: readonly ForecastJob[],
): { weighings: number; bites: number } | null {
  if (jobs.length === 0) return null;
  const mean = (of: (job: ForecastJob) => number) =>
    jobs.reduce((sum, job) => sum + of(job), 0) / jobs.length;
  return { weighings: mean(({ weighings }) => weighings), bites: mean(({ bites }) => bites) };
}
