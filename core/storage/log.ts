import { type Logger, pino } from 'pino';
import { createStream } from 'rotating-file-stream';

export interface ShopLog {
  log: Logger;
  close(): Promise<void>;
}

/** JSON lines in the logs folder, at most ten files of one megabyte. Ids only, no names. */
export function createLog(folder: string): ShopLog {
  const stream = createStream('tillermark.log', { path: folder, size: '1M', maxFiles: 10 });
  // A log that cannot be written must not end the program that tells the person why.
  stream.on('error', () => {});
  const log = pino({ base: null, timestamp: pino.stdTimeFunctions.isoTime }, stream);
  return { log, close: () => new Promise((resolve) => stream.end(() => resolve())) };
}

/** For the time before a data folder is open, and for tests. */
export function silentLog(): ShopLog {
  return { log: pino({ level: 'silent' }), close: async () => {} };
}
