import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { dirname, isAbsolute, join, resolve } from 'node:path';
import { ShopError } from '../../shared/errors.ts';
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

/** Names that may lie in a folder without a shop: our own, and what systems leave anywhere. */
const ours =
  /^(shop\.(sqlite|lock)(-wal|-shm|-journal)?|shop\.sqlite\..*|host\.json|backups|logs|attachments|\..*|Thumbs\.db|desktop\.ini|lost\+found)$/;

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

export interface PlaceOptions {
  /** What `--data` named. */
  argument?: string | undefined;
  env?: NodeJS.ProcessEnv;
  platform?: NodeJS.Platform;
  home?: string;
}

/**
 * The usual place on this platform, unless the command line or TILLERMARK_DATA names another.
 * Source for Linux: XDG Base Directory Specification 0.8 (empty or relative values are ignored).
 * @throws ShopError STORAGE in a test that names no folder: tests never touch a real shop.
 */
export function dataFolderOf(options: PlaceOptions): string {
  const { env = process.env, platform = process.platform, home = homedir() } = options;
  const named = options.argument ?? env.TILLERMARK_DATA;
  if (named !== undefined && named !== '') return resolve(named);
  if (env.NODE_ENV === 'test') {
    throw new ShopError('STORAGE', 'A test must name its data folder.');
  }
  if (platform === 'darwin') return join(home, 'Library/Application Support/Tillermark');
  if (platform === 'win32') {
    return join(env.APPDATA || join(home, 'AppData/Roaming'), 'Tillermark');
  }
  const xdg = env.XDG_DATA_HOME ?? '';
  return join(isAbsolute(xdg) ? xdg : join(home, '.local/share'), 'tillermark');
}

/** A path as a sentence can show it: one line, not endless. */
function shown(path: string): string {
  return path.replace(/\p{C}/gu, '?').slice(0, 500);
}

function notAFolder(root: string): StartUpRefusal {
  return new StartUpRefusal(
    'wrong-folder',
    `${shown(root)} is not a folder. Choose an empty folder or the one with your shop.`,
  );
}

/**
 * Makes a folder and those above it, one by one: Node's own `recursive` never comes back from a
 * path that the kernel answers with ENOENT although its parent is there, such as under /proc.
 */
export function makeFolder(root: string): void {
  if (existsSync(root)) {
    if (!statSync(root).isDirectory()) throw notAFolder(root);
    return;
  }
  const parent = dirname(root);
  if (parent !== root) makeFolder(parent);
  mkdirSync(root);
}

function refuseForeignFolder(root: string): void {
  const names = readdirSync(root);
  if (names.includes('shop.sqlite') || names.every((name) => ours.test(name))) return;
  throw new StartUpRefusal(
    'wrong-folder',
    `The folder ${shown(root)} holds other things and no shop. Choose an empty folder or the one with your shop.`,
  );
}

function tryWriting(root: string): void {
  accessSync(root, constants.W_OK);
  const probe = join(root, `.write-test-${process.pid}`);
  try {
    writeFileSync(probe, 'x');
  } finally {
    rmSync(probe, { force: true });
  }
}

/**
 * Finds or makes the folder. A folder of other things is left without a trace.
 * @throws StartUpRefusal wrong-folder where it is none or holds other things, not-writable where
 * it cannot be used, disk-full where not even a byte fits.
 */
export function locate(root: string): DataFolder {
  const folder = folderAt(root);
  try {
    makeFolder(folder.root);
    refuseForeignFolder(folder.root);
    tryWriting(folder.root);
  } catch (error) {
    if (error instanceof StartUpRefusal) throw error;
    if (StartUpRefusal.isDiskFull(error)) throw StartUpRefusal.diskFull(error);
    throw new StartUpRefusal(
      'not-writable',
      `The folder ${shown(folder.root)} cannot be written. Check the disk and its permissions, or choose another folder.`,
      error,
    );
  }
  return folder;
}

/** Makes the folders inside a data folder that is known to be ours. */
export function furnish(folder: DataFolder): void {
  for (const path of [folder.backups, folder.logs, folder.attachments]) {
    mkdirSync(path, { recursive: true });
  }
}
