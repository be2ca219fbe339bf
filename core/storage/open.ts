import { existsSync } from 'node:fs';
import Database, { type Database as Connection } from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

/** 'TILL' in ASCII: marks the file as ours. */
export const applicationId = 0x54494c4c;

const busyTimeoutMs = 5000;

export interface ShopDatabase {
  writer: Connection;
  /** Cannot write, whatever it is asked. */
  reader: Connection;
  close(): void;
}

export function schemaVersionOf(db: Connection): number {
  return Number(db.pragma('user_version', { simple: true }));
}

/** True where the file is new and still has nobody's mark. */
function isBlank(db: Connection): boolean {
  const tables = db.prepare('SELECT count(*) AS n FROM sqlite_schema').get() as { n: number };
  return db.pragma('application_id', { simple: true }) === 0 && tables.n === 0;
}

export function isOurs(db: Connection): boolean {
  return db.pragma('application_id', { simple: true }) === applicationId;
}

function refuseForeignFile(db: Connection): void {
  if (isOurs(db) || isBlank(db)) return;
  throw new StartUpRefusal(
    'not-our-file',
    'The file shop.sqlite in this folder was made by another program. Choose another folder.',
  );
}

/**
 * Schema version of a shop file, read without writing a byte of it: opening a file to write
 * already changes one that is not in WAL mode or was left with a log to fold in. 0 where there is
 * no file yet, or where only the writer can tell (a creation that was cut off).
 * @throws StartUpRefusal not-our-file where another program made it.
 */
export function inspect(path: string): number {
  if (!existsSync(path)) return 0;
  const db = new Database(path, { readonly: true, timeout: busyTimeoutMs });
  try {
    refuseForeignFile(db);
    return schemaVersionOf(db);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code.startsWith('SQLITE_READONLY')) return 0;
    throw error;
  } finally {
    db.close();
  }
}

function requireWriteAheadLog(db: Connection): void {
  if (db.pragma('journal_mode = WAL', { simple: true }) === 'wal') return;
  throw new StartUpRefusal(
    'not-writable',
    'This disk cannot hold a shop safely. Choose a folder on a disk of this computer.',
  );
}

/**
 * Opens the writing connection with the storage rules set; makes the file where there is none.
 * @throws StartUpRefusal not-our-file where another program made it.
 */
export function openWriter(path: string): Connection {
  const db = new Database(path, { timeout: busyTimeoutMs });
  try {
    refuseForeignFile(db);
    if (!isOurs(db)) db.pragma(`application_id = ${applicationId}`);
    requireWriteAheadLog(db);
    db.pragma('synchronous = FULL');
    db.pragma('foreign_keys = ON');
    db.pragma('trusted_schema = OFF');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

export function openReader(path: string): Connection {
  const db = new Database(path, { readonly: true, timeout: busyTimeoutMs });
  try {
    db.pragma('query_only = ON');
    db.pragma('trusted_schema = OFF');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}
