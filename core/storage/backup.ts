import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Database as Connection } from 'better-sqlite3';
import { ShopError } from '../../shared/errors.ts';
import {
  type Backup,
  backupName,
  describeBackup,
  isRoutine,
  listBackups,
  removeCopy,
  settleCopy,
  verifyCopy,
} from './backup-file.ts';
import { folderAt } from './data-folder.ts';
import { openReader, schemaVersionOf } from './open.ts';
import { StartUpRefusal } from './start-up-refusal.ts';

export { type Backup, listBackups } from './backup-file.ts';
export { restoreBackup } from './restore.ts';

/** Routine backups kept; those before an upgrade stay. */
export const keptRoutine = 20;

const unfinished = '.part';
let made = 0;

/** A temporary name of its own, also for two backups within one second. */
function temporaryIn(backups: string, name: string): string {
  made += 1;
  return join(backups, `.${name}.${process.pid}-${made}${unfinished}`);
}

/** Removes copies that were cut off. Call only while holding the lock and before any backup. */
export function clearUnfinished(root: string): void {
  const { backups } = folderAt(root);
  for (const name of readdirSync(backups)) {
    if (name.startsWith('.shop-') && name.includes(unfinished)) rmSync(join(backups, name));
  }
}

function prune(root: string): void {
  const routine = listBackups(root).filter(isRoutine);
  for (const old of routine.slice(keptRoutine)) rmSync(join(folderAt(root).backups, old.name));
}

/**
 * Copies what is committed now, while the writer goes on. From a connection of its own inside a
 * read transaction: on the writer, better-sqlite3 answers "done" without writing a file when a
 * write transaction is open, and every later write would restart the copy.
 */
async function copySnapshot(database: string, temporary: string): Promise<number> {
  const source = openReader(database);
  try {
    source.exec('BEGIN');
    const schemaVersion = schemaVersionOf(source);
    await source.backup(temporary);
    return schemaVersion;
  } finally {
    source.close();
  }
}

function unreadable(error: unknown): unknown {
  if (StartUpRefusal.isDiskFull(error)) return error;
  return new ShopError(
    'STORAGE',
    'The backup could not be written and read back. Check the disk.',
    {},
    error,
  );
}

/**
 * Backs up the open shop while it goes on working; the copy is checked before it counts.
 * @throws ShopError STORAGE where the copy does not read back.
 */
export async function backUp(db: Connection, root: string, now: string): Promise<Backup> {
  const { backups } = folderAt(root);
  mkdirSync(backups, { recursive: true });
  const name = backupName(now, schemaVersionOf(db), '');
  const temporary = temporaryIn(backups, name);
  try {
    verifyCopy(temporary, await copySnapshot(db.name, temporary));
    settleCopy(temporary, join(backups, name));
  } catch (error) {
    throw unreadable(error);
  } finally {
    removeCopy(temporary);
  }
  prune(root);
  const backup = describeBackup(backups, name);
  if (backup === null) throw new ShopError('STORAGE', 'The backup could not be written.');
  return backup;
}

/** Copy made at start-up before an upgrade, when nobody works yet. Returns its name. */
export function backUpBeforeUpgrade(db: Connection, root: string, now: string): string {
  const { backups } = folderAt(root);
  const schemaVersion = schemaVersionOf(db);
  const name = backupName(now, schemaVersion, '-before-upgrade');
  const temporary = temporaryIn(backups, name);
  try {
    db.prepare('VACUUM INTO ?').run(temporary);
    verifyCopy(temporary, schemaVersion);
    settleCopy(temporary, join(backups, name));
  } finally {
    removeCopy(temporary);
  }
  return name;
}
