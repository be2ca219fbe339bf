import type { Database } from 'better-sqlite3';
import { StartUpRefusal } from './start-up-refusal.ts';

/** @throws StartUpRefusal corrupt where pages, indexes or references do not hold together. */
export function checkDatabase(db: Database): void {
  const quick = db.pragma('quick_check(1)', { simple: true });
  const broken = db.pragma('foreign_key_check') as unknown[];
  if (quick === 'ok' && broken.length === 0) return;
  throw new StartUpRefusal(
    'corrupt',
    'The shop file is damaged. Restore the newest backup; the damaged file is kept aside.',
    new Error(String(quick)),
  );
}
