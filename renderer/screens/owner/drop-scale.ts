import type { ForecastJob } from '../../../shared/contract/learned.ts';

/** A drawing in its own units; it is stretched to the width there is. */
export const frame = { width: 480, height: 400, left: 52, right: 14, top: 14, bottom: 50 };

export interface DropScale {
  x(lbf: number): number;
  y(lbf: number): number;
  low: number;
  high: number;
  ticks: number[];
}

/** Drop of a job's band from arrival, lower figure first: ending high in the band is a small drop. */
export function dropBand(job: ForecastJob): [number, number] {
  const [low, high] = job.bandLbf;
  return [job.arrivalLbf - high, job.arrivalLbf - low];
}

const steps = [0.5, 1, 2, 5, 10, 20, 50];

/** One scale for both axes, so that the line of equality runs from corner to corner. */
export function dropScale(jobs: readonly ForecastJob[]): DropScale {
  const all = jobs.flatMap((job) => [job.measuredDropLbf, job.forecastDropLbf, ...dropBand(job)]);
  const [least, most] = [Math.min(0, ...all), Math.max(1, ...all)];
  const step = steps.find((one) => (most - least) / one <= 8) ?? 100;
  const low = Math.floor(least / step) * step;
  const high = Math.ceil(most / step) * step;
  const count = Math.round((high - low) / step);
  const part = (lbf: number) => (lbf - low) / (high - low);
  const { width, height, left, right, top, bottom } = frame;
  return {
    x: (lbf) => left + part(lbf) * (width - left - right),
    y: (lbf) => height - bottom - part(lbf) * (height - top - bottom),
    low,
    high,
    ticks: Array.from({ length: count + 1 }, (_, i) => low + i * step),
  };
}
