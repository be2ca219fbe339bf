import {
  accessSync,
  constants,
  mkdirSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { StartUpRefusal } from './start-up-refusal.ts';

/** Where everything of one shop is kept. */
export interface DataFolder {
  root: string;
  database: string;
  lock: string;
  backups: string;
  logs: string;
  attachments: string;
}

const ours =
  /^(shop\.(sqlite|lock)(-wal|-shm|-journal)?|shop\.sqlite\..*|host\.json|backups|logs|attachments|\..*)$/;

export function folderAt(root: string): DataFolder {
  const full = resolve(root);
  return {
    root: full,
    database: join(full, 'shop.sqlite'),
    lock: join(full, 'shop.lock'),
    backups: join(full, 'backups'),
    logs: join(full, 'logs'),
    attachments: join(full, 'attachments'),
  };
}

/** The usual place on this platform, unless the command line or TILLERMARK_DATA names another. */
export function dataFolderOf(options: { argument?: string | undefined }): string {
  const named = options.argument ?? process.env.TILLERMARK_DATA;
  if (named !== undefined && named !== '') return resolve(named);
  const home = homedir();
  if (process.platform === 'darwin') return join(home, 'Library/Application Support/Tillermark');
  if (process.platform === 'win32') {
    return join(process.env.APPDATA ?? join(home, 'AppData/Roaming'), 'Tillermark');
  }
  return join(process.env.XDG_DATA_HOME ?? join(home, '.local/share'), 'tillermark');
}

function tryWriting(root: string): void {
  const probe = join(root, `.write-test-${process.pid}`);
  writeFileSync(probe, 'x');
  rmSync(probe);
}

/**
 * Finds or makes the folder.
 * @throws StartUpRefusal wrong-folder where it holds other things, not-writable where it cannot be used.
 */
export function locate(root: string): DataFolder {
  const folder = folderAt(root);
  try {
    mkdirSync(folder.root, { recursive: true });
    if (!statSync(folder.root).isDirectory()) throw new Error('not a folder');
    accessSync(folder.root, constants.W_OK);
    tryWriting(folder.root);
  } catch (error) {
    if (StartUpRefusal.isDiskFull(error)) throw StartUpRefusal.diskFull(error);
    throw new StartUpRefusal(
      'not-writable',
      `The folder ${folder.root} cannot be written. Check the disk and its permissions, or choose another folder.`,
      error,
    );
  }
  const names = readdirSync(folder.root);
  if (!names.includes('shop.sqlite') && names.some((name) => !ours.test(name))) {
    throw new StartUpRefusal(
      'wrong-folder',
      `The folder ${folder.root} holds other things and no shop. Choose an empty folder or the one with your shop.`,
    );
  }
  for (const path of [folder.backups, folder.logs, folder.attachments]) {
    mkdirSync(path, { recursive: true });
  }
  return folder;
}
