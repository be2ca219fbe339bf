import { Worker } from 'node:worker_threads';
import { ShopError, type ShopErrorJson } from '../../shared/errors.ts';
import type { PaperPdf } from './data.ts';
import type { PaperJob } from './paper-job.ts';

/** What the worker sends back: the paper, a refusal for a person, or a bug. */
export type PaperAnswer =
  | { id: number; pdf: PaperPdf }
  | { id: number; refusal: ShopErrorJson }
  | { id: number; bug: string };

interface Waiting {
  resolve(pdf: PaperPdf): void;
  reject(error: Error): void;
}

/** The worker beside this file: TypeScript in development, its bundle in the desktop program. */
function workerFile(): URL {
  const isSource = import.meta.url.endsWith('.ts');
  return new URL(isSource ? './paper-worker.ts' : './paper-worker.mjs', import.meta.url);
}

/** Draws papers on a thread of their own: a page takes longer than a door may be kept waiting. */
class PrintRoom {
  #worker: Worker | null = null;
  #nextId = 1;
  readonly #waiting = new Map<number, Waiting>();

  make(job: PaperJob): Promise<PaperPdf> {
    const id = this.#nextId;
    this.#nextId += 1;
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      const worker = this.#open();
      // A listener keeps the process from ending: only a paper that is drawn may.
      worker.ref();
      worker.postMessage({ id, job });
    });
  }

  #open(): Worker {
    if (this.#worker !== null) return this.#worker;
    const worker = new Worker(workerFile());
    worker.on('message', (answer: PaperAnswer) => this.#take(answer));
    worker.on('error', (error) => this.#fail(error));
    worker.on('exit', () => this.#fail(new Error('the paper worker ended')));
    this.#worker = worker;
    return worker;
  }

  #take(answer: PaperAnswer): void {
    const waiting = this.#waiting.get(answer.id);
    this.#waiting.delete(answer.id);
    if (this.#waiting.size === 0) this.#worker?.unref();
    if ('pdf' in answer) waiting?.resolve(answer.pdf);
    else if ('bug' in answer) waiting?.reject(new Error(answer.bug));
    else {
      const { code, message, details } = answer.refusal;
      waiting?.reject(new ShopError(code, message, details));
    }
  }

  /** The next paper starts a fresh worker. */
  #fail(error: Error): void {
    this.#worker = null;
    for (const waiting of this.#waiting.values()) waiting.reject(error);
    this.#waiting.clear();
  }
}

const room = new PrintRoom();

/** Makes one paper without holding up the process. @throws ShopError UNPRINTABLE */
export function makePaper(job: PaperJob): Promise<PaperPdf> {
  return room.make(job);
}
