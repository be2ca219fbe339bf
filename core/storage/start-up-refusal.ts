import type { StartUpReason } from '../../shared/start-up.ts';

/** SHMSIZE: SQLite found no room for the index of its log (measured on a full tmpfs). */
const diskFullCodes = new Set(['ENOSPC', 'EDQUOT', 'SQLITE_FULL', 'SQLITE_IOERR_SHMSIZE']);
const notWritableCodes = new Set(['EACCES', 'EPERM', 'EROFS', 'SQLITE_CANTOPEN']);

/** Why start-up cannot go on without a person. */
export class StartUpRefusal extends Error {
  override readonly name = 'StartUpRefusal';
  readonly reason: StartUpReason;

  constructor(reason: StartUpReason, sentence: string, cause?: unknown) {
    super(sentence, cause === undefined ? undefined : { cause });
    this.reason = reason;
  }

  static isDiskFull(error: unknown): boolean {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    return typeof code === 'string' && diskFullCodes.has(code);
  }

  static corrupt(cause: unknown): StartUpRefusal {
    return new StartUpRefusal(
      'corrupt',
      'The shop file is damaged. Restore the newest backup; the damaged file is kept aside.',
      cause,
    );
  }

  static diskFull(cause: unknown): StartUpRefusal {
    return new StartUpRefusal(
      'disk-full',
      'The disk is full. Nothing was changed. Free some space, then try again.',
      cause,
    );
  }

  /** The refusal that a SQLite or file error amounts to. */
  static from(error: unknown, fallback: StartUpReason, sentence: string): StartUpRefusal {
    if (error instanceof StartUpRefusal) return error;
    if (StartUpRefusal.isDiskFull(error)) return StartUpRefusal.diskFull(error);
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code.startsWith('SQLITE_NOTADB') || code.startsWith('SQLITE_CORRUPT')) {
      return StartUpRefusal.corrupt(error);
    }
    if (code.startsWith('SQLITE_READONLY') || notWritableCodes.has(code)) {
      return new StartUpRefusal(
        'not-writable',
        'The shop file cannot be written. Check the disk and its permissions, then try again.',
        error,
      );
    }
    return new StartUpRefusal(fallback, sentence, error);
  }
}
