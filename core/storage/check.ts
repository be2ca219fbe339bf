import { existsSync, statSync } from 'node:fs';
import type { Database } from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

/** @throws StartUpRefusal corrupt where pages, indexes or references do not hold together. */
export function checkDatabase(db: Database): void {
  const quick = db.pragma('quick_check(1)', { simple: true });
  if (quick !== 'ok') throw StartUpRefusal.corrupt(new Error(String(quick)));
  const broken = db.pragma('foreign_key_check') as { table: string }[];
  const first = broken[0];
  if (first === undefined) return;
  throw StartUpRefusal.corrupt(
    new Error(`${broken.length} broken references, the first in ${first.table}`),
  );
}

/**
 * A folder with backups once held a shop: a missing or empty file is damage there, not a new
 * shop. Also covers a restore that was cut off between its two renames.
 * @throws StartUpRefusal corrupt
 */
export function refuseLostFile(database: string, hasBackups: boolean): void {
  if (!hasBackups) return;
  if (existsSync(database) && statSync(database).size > 0) return;
  throw new StartUpRefusal(
    'corrupt',
    'The shop file is missing or empty, but there are backups. Restore the newest backup.',
  );
}
