import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import Database, { type Database as Connection } from 'better-sqlite3';
import { ShopError } from '../../shared/errors.ts';
import { checkDatabase } from './check.ts';
import { folderAt } from './data-folder.ts';
import { schemaVersionOf } from './open.ts';

export interface Backup {
  name: string;
  madeAt: string;
  schemaVersion: number;
  bytes: number;
}

const keptRoutine = 20;
const pattern = /^shop-(\d{4})-(\d\d)-(\d\d)T(\d\d)(\d\d)(\d\d)Z-v(\d+)(-before-upgrade)?\.sqlite$/;

function nameOf(now: string, schemaVersion: number, label: string): string {
  const stamp = now.replace(/\.\d+Z$/, 'Z').replaceAll(':', '');
  return `shop-${stamp}-v${schemaVersion}${label}.sqlite`;
}

function describe(folder: string, name: string): Backup | null {
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
    .map((name) => describe(backups, name))
    .filter((backup): backup is Backup => backup !== null)
    .sort((a, b) => (a.madeAt < b.madeAt ? 1 : -1));
}

function verify(path: string): void {
  const copy = new Database(path, { readonly: true });
  try {
    checkDatabase(copy);
  } finally {
    copy.close();
  }
}

function settle(temporary: string, final: string): void {
  verify(temporary);
  const file = openSync(temporary, 'r+');
  fsyncSync(file);
  closeSync(file);
  renameSync(temporary, final);
}

function prune(root: string): void {
  const routine = listBackups(root).filter((backup) => !backup.name.includes('before-upgrade'));
  for (const old of routine.slice(keptRoutine)) rmSync(join(folderAt(root).backups, old.name));
}

/** Backs up the open shop while it goes on working; the copy is checked before it counts. */
export async function backUp(db: Connection, root: string, now: string): Promise<Backup> {
  const { backups } = folderAt(root);
  mkdirSync(backups, { recursive: true });
  const name = nameOf(now, schemaVersionOf(db), '');
  const temporary = join(backups, `.${name}.part`);
  try {
    await db.backup(temporary);
    settle(temporary, join(backups, name));
  } finally {
    rmSync(temporary, { force: true });
  }
  prune(root);
  const made = describe(backups, name);
  if (made === null) throw new ShopError('STORAGE', 'The backup could not be written.');
  return made;
}

/** Copy made at start-up before an upgrade, when nobody works yet. */
export function backUpBeforeUpgrade(db: Connection, root: string, now: string): string {
  const { backups } = folderAt(root);
  mkdirSync(backups, { recursive: true });
  const name = nameOf(now, schemaVersionOf(db), '-before-upgrade');
  const temporary = join(backups, `.${name}.part`);
  rmSync(temporary, { force: true });
  try {
    db.prepare('VACUUM INTO ?').run(temporary);
    settle(temporary, join(backups, name));
  } finally {
    rmSync(temporary, { force: true });
  }
  return name;
}

/**
 * Puts a backup in the place of the shop file, which is kept aside under a dated name.
 * @throws ShopError BAD_INPUT where there is no such backup or it is damaged itself.
 */
export async function restoreBackup(root: string, name: string, now: string): Promise<void> {
  const folder = folderAt(root);
  if (basename(name) !== name || !listBackups(root).some((backup) => backup.name === name)) {
    throw new ShopError('BAD_INPUT', 'There is no such backup.', {
      argument: 'Choose one of the list.',
    });
  }
  const source = new Database(join(folder.backups, name), { readonly: true });
  const temporary = `${folder.database}.restored`;
  try {
    checkDatabase(source);
    rmSync(temporary, { force: true });
    await source.backup(temporary);
    verify(temporary);
  } catch (error) {
    throw new ShopError('BAD_INPUT', 'This backup is damaged too. Choose an older one.', {}, error);
  } finally {
    source.close();
  }
  const aside = `${folder.database}.aside-${now.replaceAll(':', '')}`;
  for (const suffix of ['', '-wal', '-shm']) {
    if (existsSync(folder.database + suffix)) renameSync(folder.database + suffix, aside + suffix);
  }
  renameSync(temporary, folder.database);
}
