import { existsSync, renameSync } from 'node:fs';
import { basename, join } from 'node:path';
import Database from 'better-sqlite3';
import { ShopError } from '../../shared/errors.ts';
import { listBackups, removeCopy, settleCopy, verifyCopy } from './backup-file.ts';
import { checkDatabase } from './check.ts';
import { type DataFolder, folderAt } from './data-folder.ts';
import { type Lock, takeLock } from './lock.ts';
import { isOurs, schemaVersionOf } from './open.ts';
import { StartUpRefusal } from './start-up-refusal.ts';

async function copyBackup(folder: DataFolder, name: string, temporary: string): Promise<void> {
  const source = new Database(join(folder.backups, name), { readonly: true });
  try {
    checkDatabase(source);
    if (!isOurs(source)) throw new Error('not a shop file');
    removeCopy(temporary);
    await source.backup(temporary);
    verifyCopy(temporary, schemaVersionOf(source));
  } catch (error) {
    removeCopy(temporary);
    if (StartUpRefusal.isDiskFull(error)) throw error;
    throw new ShopError('BAD_INPUT', 'This backup is damaged too. Choose an older one.', {}, error);
  } finally {
    source.close();
  }
}

/** A dated name that nothing has yet, so that no kept file is ever written over. */
function asideName(database: string, now: string): string {
  const first = `${database}.aside-${now.replaceAll(':', '')}`;
  let name = first;
  for (let n = 2; existsSync(name); n += 1) name = `${first}-${n}`;
  return name;
}

function setAside(database: string, now: string): void {
  const aside = asideName(database, now);
  for (const suffix of ['', '-wal', '-shm']) {
    if (existsSync(database + suffix)) renameSync(database + suffix, aside + suffix);
  }
}

function lockForRestore(path: string): Lock {
  try {
    return takeLock(path);
  } catch (error) {
    if (!(error instanceof StartUpRefusal)) throw error;
    throw new ShopError('CONFLICT', error.message, {}, error);
  }
}

/**
 * Puts a backup in the place of the shop file, which is kept aside under a dated name. Cut off
 * between the renames, the next start finds no shop file and asks for a backup again.
 * @throws ShopError BAD_INPUT where there is no such backup or it is damaged itself, CONFLICT
 * where a program has the shop open.
 */
export async function restoreBackup(root: string, name: string, now: string): Promise<void> {
  const folder = folderAt(root);
  if (basename(name) !== name || !listBackups(root).some((backup) => backup.name === name)) {
    throw new ShopError('BAD_INPUT', 'There is no such backup.', {
      argument: 'Choose one of the list.',
    });
  }
  const lock = lockForRestore(folder.lock);
  try {
    const temporary = `${folder.database}.restored`;
    await copyBackup(folder, name, temporary);
    setAside(folder.database, now);
    settleCopy(temporary, folder.database);
  } finally {
    lock.release();
  }
}
