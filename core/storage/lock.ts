import Database from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

export interface Lock {
  release(): void;
}

/**
 * Takes the shop for this process. The operating system frees it when the process dies,
 * however it dies, so no stale lock file is ever left to clear.
 * @throws StartUpRefusal locked while another process holds it.
 */
export function takeLock(path: string): Lock {
  const db = new Database(path, { timeout: 0 });
  try {
    db.pragma('journal_mode = DELETE');
    db.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    db.close();
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (!code.startsWith('SQLITE_BUSY') && !code.startsWith('SQLITE_LOCKED')) throw error;
    throw new StartUpRefusal(
      'locked',
      'This shop is already open in another window or program. Close it there, then try again.',
      error,
    );
  }
  return {
    release: () => {
      if (db.open) db.close();
    },
  };
}
