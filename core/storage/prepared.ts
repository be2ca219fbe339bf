import type { Database } from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

/** Statements kept ready, the least recently used one leaving first. */
const kept = 400;

/**
 * The connection with its statements kept prepared. Preparing costs more than running for the
 * small queries of a shop, and the same few hundred come again and again.
 */
export function withPreparedStatements(db: Database): SqliteDatabase {
  const statements = new Map<string, SqliteStatement>();
  return {
    close: () => {
      statements.clear();
      db.close();
    },
    prepare(sql) {
      const known = statements.get(sql);
      const statement = known ?? (db.prepare(sql) as unknown as SqliteStatement);
      statements.delete(sql);
      statements.set(sql, statement);
      const [oldest] = statements.keys();
      if (statements.size > kept && oldest !== undefined) statements.delete(oldest);
      return statement;
    },
  };
}
