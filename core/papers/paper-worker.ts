import { parentPort } from 'node:worker_threads';
import { ShopError } from '../../shared/errors.ts';
import { drawPaper, type PaperJob } from './paper-job.ts';
import type { PaperAnswer } from './print-room.ts';

async function answerOf(id: number, job: PaperJob): Promise<PaperAnswer> {
  try {
    return { id, pdf: await drawPaper(job) };
  } catch (error) {
    if (error instanceof ShopError) return { id, refusal: error.toJSON() };
    return { id, bug: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.on('message', async ({ id, job }: { id: number; job: PaperJob }) => {
  parentPort?.postMessage(await answerOf(id, job));
});
