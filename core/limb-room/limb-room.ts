import { Worker } from 'node:worker_threads';
import { ShopError, type ShopErrorJson } from '../../shared/errors.ts';
import type { LimbAnswers, LimbJob, LimbJobKind } from './limb-job.ts';

/** What the worker sends back: the answer, a refusal for a person, or a bug. */
export type LimbRoomAnswer =
  | { id: number; answer: LimbAnswers[LimbJobKind] }
  | { id: number; refusal: ShopErrorJson }
  | { id: number; bug: string };

interface Waiting {
  id: number;
  job: LimbJob;
  resolve(answer: LimbAnswers[LimbJobKind]): void;
  reject(error: unknown): void;
}

/** The worker beside this file: TypeScript in development, its bundle in the desktop program. */
function workerFile(): URL {
  const isSource = import.meta.url.endsWith('.ts');
  return new URL(isSource ? './limb-worker.ts' : './limb-worker.mjs', import.meta.url);
}

/**
 * Solves bows on a thread of their own, one after the other: a plan takes longer than a door may
 * be kept waiting. A job that is given up while it waits for its turn is never begun, so a slider
 * leaves no queue behind.
 */
export class LimbRoom {
  #worker: Worker | null = null;
  #nextId = 1;
  #queue: Waiting[] = [];
  #current: Waiting | null = null;
  /** Jobs handed to the worker so far. */
  begun = 0;

  do<Kind extends LimbJobKind>(
    job: LimbJob<Kind>,
    signal?: AbortSignal,
  ): Promise<LimbAnswers[Kind]> {
    const id = this.#nextId;
    this.#nextId += 1;
    return new Promise<LimbAnswers[Kind]>((resolve, reject) => {
      if (signal?.aborted === true) return reject(signal.reason);
      const waiting: Waiting = {
        id,
        job,
        resolve: (answer) => resolve(answer as LimbAnswers[Kind]),
        reject,
      };
      signal?.addEventListener('abort', () => this.#giveUp(waiting, signal.reason), { once: true });
      this.#queue.push(waiting);
      this.#next();
    });
  }

  async close(): Promise<void> {
    const worker = this.#worker;
    this.#worker = null;
    await worker?.terminate();
  }

  /** Whoever asked is answered at once; a job that runs already ends by itself, unheard. */
  #giveUp(waiting: Waiting, why: unknown): void {
    this.#queue = this.#queue.filter((one) => one !== waiting);
    waiting.reject(why);
  }

  #next(): void {
    if (this.#current !== null) return;
    const waiting = this.#queue.shift();
    if (waiting === undefined) return;
    this.#current = waiting;
    this.begun += 1;
    const worker = this.#open();
    // A listener keeps the process from ending: only a job that runs may.
    worker.ref();
    worker.postMessage({ id: waiting.id, job: waiting.job });
  }

  #open(): Worker {
    if (this.#worker !== null) return this.#worker;
    const worker = new Worker(workerFile());
    worker.on('message', (answer: LimbRoomAnswer) => this.#take(answer));
    worker.on('error', (error) => this.#fail(worker, error));
    worker.on('exit', () => this.#fail(worker, new Error('the limb worker ended')));
    this.#worker = worker;
    return worker;
  }

  #take(answer: LimbRoomAnswer): void {
    const waiting = this.#current;
    if (waiting?.id !== answer.id) return;
    this.#current = null;
    this.#worker?.unref();
    if ('answer' in answer) waiting.resolve(answer.answer);
    else if ('bug' in answer) waiting.reject(new Error(answer.bug));
    else {
      const { code, message, details } = answer.refusal;
      waiting.reject(new ShopError(code, message, details));
    }
    this.#next();
  }

  /** The job it was at has failed; the next one starts a fresh worker. */
  #fail(worker: Worker, error: Error): void {
    if (this.#worker === worker) this.#worker = null;
    else if (this.#worker !== null) return;
    const waiting = this.#current;
    this.#current = null;
    waiting?.reject(error);
    this.#next();
  }
}

const room = new LimbRoom();

/**
 * Works out one thing about a bow without holding up the process.
 * @param signal gives the job up; one that has not begun is dropped
 * @throws ShopError for what the mechanics refuses; the signal's reason where it was given up
 */
export function inLimbRoom<Kind extends LimbJobKind>(
  job: LimbJob<Kind>,
  signal?: AbortSignal,
): Promise<LimbAnswers[Kind]> {
  return room.do(job, signal);
}
