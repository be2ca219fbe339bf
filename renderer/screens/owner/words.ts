import type { ForecastJob } from '../../../shared/contract/learned.ts';
import type { MethodFigure } from './by-method.ts';
import { wilsonInterval } from './wilson.ts';

/** Fewer jobs tell next to nothing: with nine, the interval of a good shop is half the scale wide. */
export const fewestJobs = 10;

const percent = (part: number) => `${Math.round(part * 100)} %`;
const jobsText = (count: number) => (count === 1 ? '1 job' : `${count} jobs`);

/** `1 closed job ended inside`, said with the counts alone. */
function countSentence(inside: number, all: number): string {
  if (all === 1) {
    return inside === 1
      ? 'The 1 closed job ended inside its band.'
      : 'The 1 closed job missed its band.';
  }
  return `Of ${all} closed jobs ${inside} ended inside the band.`;
}

/** How much more or less than reckoned the commonest way of working takes; empty where too few tell. */
export function takesSentence(methods: readonly MethodFigure[]): string {
  const [first] = methods;
  if (first === undefined || first.jobs < 3) return '';
  const away = Math.round((first.mean - 1) * 100);
  const cameOff =
    away === 0
      ? 'as much weight came off as'
      : `${Math.abs(away)} % ${away > 0 ? 'more' : 'less'} weight came off than`;
  return `${first.name}: ${cameOff} reckoned (${jobsText(first.jobs)}).`;
}

/** The whole page in a sentence or two. */
export function headline(jobs: readonly ForecastJob[], methods: readonly MethodFigure[]): string {
  const inside = jobs.filter(({ isInside }) => isInside).length;
  return [countSentence(inside, jobs.length), takesSentence(methods)].filter(Boolean).join(' ');
}

/** Whether the bands keep what they promise, and how far the count can be trusted. */
export function bandSentence(jobs: readonly ForecastJob[], promisedPart: number): string {
  const inside = jobs.filter(({ isInside }) => isInside).length;
  const interval = wilsonInterval(inside, jobs.length);
  if (interval === null) return '';
  const [low, high] = interval;
  const span = `${percent(inside / jobs.length)}, and on this count anything from ${percent(low)} to ${percent(high)} (95 % interval)`;
  if (jobs.length < fewestJobs) {
    return `${span}. That is too few jobs to judge by: wait for ${fewestJobs}.`;
  }
  if (high < promisedPart) {
    return `${span}. The bands promise ${percent(promisedPart)}: they are too narrow, or something in the work differs from what the plans assume.`;
  }
  if (low > promisedPart) {
    return `${span}. The bands promise ${percent(promisedPart)}: they are wider than they need be.`;
  }
  return `${span}. The bands promise ${percent(promisedPart)}: nothing speaks against it.`;
}

/** Whether bows end over or under their forecast on the whole. */
export function leaningSentence(jobs: readonly ForecastJob[]): string {
  if (jobs.length < fewestJobs) return '';
  const over = jobs.reduce((sum, job) => sum + job.measuredLbf - job.forecastLbf, 0) / jobs.length;
  if (Math.abs(over) < 0.05) return 'On the whole they end where the forecast says.';
  return `On the whole they end ${Math.abs(over).toFixed(1)} lb ${over > 0 ? 'over' : 'under'} the forecast.`;
}
