import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { type JobOutcome, simulatedJob } from '../support/simulated-job.ts';
import { bars, countOf, type JobCount, missedBars } from '../support/simulated-job-count.ts';
import { naiveJob } from '../support/simulated-job-naive.ts';
import { plannedJob } from '../support/simulated-job-planned.ts';

/**
 * Thousands of simulated jobs, the planned one and the naive one on the same bows. The exit code
 * is 1 where the planned one misses a bar.
 */
const jobs = 5000;

interface Ways {
  planned: JobOutcome[];
  stripped: JobOutcome[];
  naive: JobOutcome[];
  refused: number;
}

function work(from: number, step: number): Ways {
  const ways: Ways = { planned: [], stripped: [], naive: [], refused: 0 };
  for (let seed = from; seed < jobs; seed += step) {
    const job = simulatedJob(seed);
    ways.planned.push(plannedJob(job));
    ways.stripped.push(plannedJob(job, true));
    ways.naive.push(naiveJob(job));
    ways.refused += job.refused;
  }
  return ways;
}

function share(from: number, step: number): Promise<Ways> {
  const worker = new Worker(fileURLToPath(import.meta.url), { workerData: { from, step } });
  return new Promise((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
  });
}

const shown = (value: number, text: string) => (Number.isNaN(value) ? '' : text);
const percent = (part: number) => shown(part, `${(100 * part).toFixed(2)} %`);

function row(name: string, count: JobCount): void {
  const cells = [
    percent(count.withinPound),
    percent(count.halfUnder),
    percent(count.tiller),
    String(count.broken),
    shown(count.medianWeighings, String(count.medianWeighings)),
    shown(count.meanOverLbf, count.meanOverLbf.toFixed(2)),
    percent(count.notStripped),
  ];
  console.log(name.padEnd(28) + cells.map((cell) => cell.padStart(11)).join(''));
}

async function run(): Promise<number> {
  const start = performance.now();
  const threads = availableParallelism();
  const parts = await Promise.all(Array.from({ length: threads }, (_, i) => share(i, threads)));
  const all = (way: 'planned' | 'stripped' | 'naive') =>
    countOf(parts.flatMap((part) => part[way]));
  const planned = all('planned');
  const titles = ['within 1', 'under 1/2', 'tiller', 'limits', 'weighings', 'over, lb', 'no strip'];
  console.log(`${jobs} jobs`.padEnd(28) + titles.map((title) => title.padStart(11)).join(''));
  const asked = { jobs, medianWeighings: Number.NaN, meanOverLbf: Number.NaN };
  row('asked for', { ...bars, ...asked, notStripped: Number.NaN });
  row('planned', planned);
  row('planned, always stripped', all('stripped'));
  row('naive habit', all('naive'));
  const refused = parts.reduce((sum, part) => sum + part.refused, 0);
  console.log(`${refused} more wishes were refused: no method reaches them inside the limits.`);
  const missed = missedBars(planned);
  console.log(missed.length === 0 ? 'Every bar is met.' : `Missed: ${missed.join(', ')}.`);
  console.log(`${((performance.now() - start) / 1000).toFixed(0)} s`);
  return missed.length === 0 ? 0 : 1;
}

if (isMainThread) {
  process.exitCode = await run();
} else {
  const { from, step }: { from: number; step: number } = workerData;
  parentPort?.postMessage(work(from, step));
}
