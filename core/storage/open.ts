import Database, { type Database as Connection } from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

/** 'TILL' in ASCII: marks the file as ours. */
export const applicationId = 0x54494c4c;

export interface ShopDatabase {
  writer: Connection;
  /** Cannot write, whatever it is asked. */
  reader: Connection;
  close(): void;
}

/**
 * Opens the writing connection with the storage rules set; makes the file where there is none.
 * @throws StartUpRefusal not-our-file where another program made it.
 */
export function openWriter(path: string): Connection {
  const db = new Database(path, { timeout: 5000 });
  try {
    claim(db);
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    db.pragma('foreign_keys = ON');
    db.pragma('trusted_schema = OFF');
    return db;
  } catch (error) {
    db.close();
    throw error;
  }
}

function claim(db: Connection): void {
  const found = db.pragma('application_id', { simple: true });
  if (found === applicationId) return;
  const tables = db.prepare('SELECT count(*) AS n FROM sqlite_schema').get() as { n: number };
  if (found !== 0 || tables.n > 0) {
    throw new StartUpRefusal(
      'not-our-file',
      'The file shop.sqlite in this folder was made by another program. Choose another folder.',
    );
  }
  db.pragma(`application_id = ${applicationId}`);
}

export function openReader(path: string): Connection {
  const db = new Database(path, { readonly: true, timeout: 5000 });
  db.pragma('query_only = ON');
  db.pragma('trusted_schema = OFF');
  return db;
}

export function schemaVersionOf(db: Connection): number {
  return Number(db.pragma('user_version', { simple: true }));
}
