import { parentPort } from 'node:worker_threads';
import { ShopError } from '../../shared/errors.ts';
import { doLimbJob, type LimbJob } from './limb-job.ts';
import type { LimbRoomAnswer } from './limb-room.ts';

function answerOf(id: number, job: LimbJob): LimbRoomAnswer {
  try {
    return { id, answer: doLimbJob(job) };
  } catch (error) {
    if (error instanceof ShopError) return { id, refusal: error.toJSON() };
    return { id, bug: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

parentPort?.on('message', ({ id, job }: { id: number; job: LimbJob }) => {
  parentPort?.postMessage(answerOf(id, job));
});
