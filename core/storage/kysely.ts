import type { Database } from 'better-sqlite3';
import { Kysely, type LogEvent, SqliteDialect } from 'kysely';
import type { Logger } from 'pino';
import { withPreparedStatements } from './prepared.ts';
import type { Tables } from './tables.ts';

const slowMs = 40;

/** Logs slow statements and failed ones, never their values: those hold names. */
export function kyselyLog(log: Logger): (event: LogEvent) => void {
  return (event) => {
    if (event.level === 'query' && event.queryDurationMillis < slowMs) return;
    const line = { sql: event.query.sql.slice(0, 500), ms: Math.round(event.queryDurationMillis) };
    if (event.level === 'query') {
      log.warn(line, 'slow query');
      return;
    }
    const { error } = event;
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'none';
    log.error({ ...line, code }, 'failed query');
  };
}

/** Typed queries over an open connection. No plugins: they rewrite what people typed. */
export function makeKysely(db: Database, log: (event: LogEvent) => void): Kysely<Tables> {
  return new Kysely<Tables>({
    dialect: new SqliteDialect({ database: withPreparedStatements(db) }),
    log,
  });
}
