import dayjs from 'dayjs';
import type { ForecastJob } from '../../../shared/contract/learned.ts';

export const periods = ['all', 'this-year', 'last-12-months', 'last-3-months'] as const;
export type Period = (typeof periods)[number];
export const periodLabels: Record<Period, string> = {
  all: 'All closed jobs',
  'this-year': 'This year',
  'last-12-months': 'The last 12 months',
  'last-3-months': 'The last 3 months',
};

export interface JobFilter {
  construction: ForecastJob['construction'] | 'all';
  period: Period;
}

/** First day of a period that ends on the given day; null where it has none. */
export function firstDayOf(period: Period, day: string): string | null {
  switch (period) {
    case 'all':
      return null;
    case 'this-year':
      return `${day.slice(0, 4)}-01-01`;
    case 'last-12-months':
      return dayjs(day).subtract(12, 'month').format('YYYY-MM-DD');
    case 'last-3-months':
      return dayjs(day).subtract(3, 'month').format('YYYY-MM-DD');
  }
}

type Dated = Pick<ForecastJob, 'construction' | 'closedOn'>;

/** The jobs of a construction and a period, in the order they came. */
export function chosenJobs<Job extends Dated>(
  jobs: readonly Job[],
  { construction, period }: JobFilter,
  day: string,
): Job[] {
  const first = firstDayOf(period, day);
  return jobs.filter(
    (job) =>
      (construction === 'all' || job.construction === construction) &&
      (first === null || job.closedOn >= first),
  );
}
