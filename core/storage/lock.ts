import Database, { type Database as Connection } from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

export interface Lock {
  release(): void;
}

/** A connection nobody refers to is collected, and its lock goes with it: these are kept. */
const held = new Set<Connection>();

function refusal(error: unknown): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
    return new StartUpRefusal(
      'locked',
      'This shop is already open in another window or program. Close it there, then try again.',
      error,
    );
  }
  if (code.startsWith('SQLITE_NOTADB') || code.startsWith('SQLITE_CORRUPT')) {
    return new StartUpRefusal(
      'not-our-file',
      'The file shop.lock in this folder was made by another program. Remove it, then try again.',
      error,
    );
  }
  return error;
}

/**
 * Takes the shop for this process, or refuses at once. The operating system frees it when the
 * process dies, however it dies, so no stale lock file is ever left to clear.
 * @throws StartUpRefusal locked while another holds it.
 */
export function takeLock(path: string): Lock {
  const db = new Database(path, { timeout: 0 });
  try {
    db.pragma('journal_mode = DELETE');
    db.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    db.close();
    throw refusal(error);
  }
  held.add(db);
  return {
    release: () => {
      held.delete(db);
      db.close();
    },
  };
}
