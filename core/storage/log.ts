import { appendFileSync, existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type Logger, pino } from 'pino';
import { createStream } from 'rotating-file-stream';
import type { StartUpRefusal } from './start-up-refusal.ts';

const fileName = 'tillermark.log';

export interface ShopLog {
  log: Logger;
  close(): Promise<void>;
}

/** What a log may say about an error. Its other properties are left out: they can hold records. */
interface ErrorLine {
  type: string;
  code?: string;
  message: string;
  stack?: string;
}

/** The home folder's name is often the owner's. */
function withoutHome(text: string): string {
  return text.replaceAll(homedir(), '~');
}

function errorLine(error: unknown): ErrorLine {
  if (!(error instanceof Error)) return { type: typeof error, message: 'not an error' };
  const code = 'code' in error ? { code: String(error.code) } : {};
  const stack = error.stack === undefined ? {} : { stack: withoutHome(error.stack) };
  return { type: error.name, ...code, message: withoutHome(error.message), ...stack };
}

/** JSON lines in the logs folder, at most ten old files of one megabyte. Ids only, no names. */
export function createLog(folder: string): ShopLog {
  const stream = createStream(fileName, { path: folder, size: '1M', maxFiles: 10 });
  // A log that cannot be written must not end the program that tells the person why.
  stream.on('error', () => {});
  const log = pino(
    { base: null, timestamp: pino.stdTimeFunctions.isoTime, serializers: { err: errorLine } },
    stream,
  );
  return { log, close: () => new Promise((resolve) => stream.end(() => resolve())) };
}

/** For the time before a data folder is open, and for tests. */
export function silentLog(): ShopLog {
  return { log: pino({ level: 'silent' }), close: async () => {} };
}

/**
 * Keeps why a start-up ended early, in one line written at once: no log is open yet, and the
 * screen shows only the sentence. The sentence is left out: it names the folder.
 */
export function logRefusal(folder: string, at: string, refusal: StartUpRefusal): void {
  if (!existsSync(folder)) return;
  const cause = refusal.cause === undefined ? {} : { err: errorLine(refusal.cause) };
  const line = { level: 50, time: at, reason: refusal.reason, ...cause, msg: 'start-up refused' };
  try {
    appendFileSync(join(folder, fileName), `${JSON.stringify(line)}\n`);
  } catch {
    // The disk may be the very trouble that is being told.
  }
}
