import type { Database } from 'better-sqlite3';

/** One numbered step of the schema. Synchronous SQL; it runs inside the upgrade's transaction. */
export interface Migration {
  version: number;
  name: string;
  up(db: Database): void;
}
