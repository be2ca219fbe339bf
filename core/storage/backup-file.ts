import { existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { checkDatabase } from './check.ts';
import { folderAt } from './data-folder.ts';
import { syncFile, syncFolder } from './durable.ts';
import { isOurs, schemaVersionOf } from './open.ts';

export interface Backup {
  name: string;
  /** Instant, ISO-8601 UTC, to the second. */
  madeAt: string;
  schemaVersion: number;
  bytes: number;
}

/** Why a backup was made: by routine, or before the schema went up. */
export type BackupLabel = '' | '-before-upgrade';

const pattern = /^shop-(\d{4})-(\d\d)-(\d\d)T(\d\d)(\d\d)(\d\d)Z-v(\d+)(-before-upgrade)?\.sqlite$/;

export function backupName(now: string, schemaVersion: number, label: BackupLabel): string {
  const stamp = now.replace(/\.\d+Z$/, 'Z').replaceAll(':', '');
  return `shop-${stamp}-v${schemaVersion}${label}.sqlite`;
}

export function isRoutine(backup: Backup): boolean {
  return !backup.name.includes('-before-upgrade');
}

/** What a backup's name and size tell; null where the file is something else. */
export function describeBackup(folder: string, name: string): Backup | null {
  const match = pattern.exec(name);
  if (match === null) return null;
  const [, year, month, day, hour, minute, second, version] = match;
  return {
    name,
    madeAt: `${year}-${month}-${day}T${hour}:${minute}:${second}Z`,
    schemaVersion: Number(version),
    bytes: statSync(join(folder, name)).size,
  };
}

/** Backups of a data folder, newest first. */
export function listBackups(root: string): Backup[] {
  const { backups } = folderAt(root);
  if (!existsSync(backups)) return [];
  return readdirSync(backups)
    .map((name) => describeBackup(backups, name))
    .filter((backup): backup is Backup => backup !== null)
    .sort((a, b) => (a.madeAt < b.madeAt ? 1 : -1));
}

/**
 * Checks a fresh copy and makes it one plain file: a copy in WAL mode would leave two more files
 * beside it whenever it is read.
 * @throws Error where the copy is not a whole shop of that schema version.
 */
export function verifyCopy(path: string, schemaVersion: number): void {
  const copy = new Database(path, { fileMustExist: true });
  try {
    copy.pragma('journal_mode = DELETE');
    checkDatabase(copy);
    if (!isOurs(copy) || schemaVersionOf(copy) !== schemaVersion) {
      throw new Error('the copy is not this shop');
    }
  } finally {
    copy.close();
  }
}

/** Gives a verified copy its final name so that it survives a power cut. */
export function settleCopy(temporary: string, final: string): void {
  syncFile(temporary);
  renameSync(temporary, final);
  syncFolder(dirname(final));
}

export function removeCopy(path: string): void {
  for (const suffix of ['', '-journal', '-wal', '-shm']) rmSync(path + suffix, { force: true });
}
