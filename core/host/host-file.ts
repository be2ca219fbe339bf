import { randomBytes } from 'node:crypto';
import { chmodSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from '../../shared/zod.ts';
import { makeFolder } from '../storage/data-folder.ts';

const hostFile = z.object({ token: z.string().min(32).max(128), port: z.int().min(1).max(65_535) });
export type HostFile = z.infer<typeof hostFile>;

const usualPort = 47_115;

function read(path: string): HostFile | null {
  if (!existsSync(path)) return null;
  try {
    return hostFile.parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return null;
  }
}

/** A folder of other things stays as it was found: start-up will refuse it. */
function isOurs(dataFolder: string): boolean {
  if (!existsSync(dataFolder)) return true;
  const names = readdirSync(dataFolder);
  return names.length === 0 || names.includes('shop.sqlite');
}

/**
 * Token and port of the browser door, kept in the data folder so that an open tab finds the
 * program again after a restart. Readable by its owner only.
 */
export function hostFileOf(dataFolder: string): HostFile {
  const path = join(dataFolder, 'host.json');
  const known = read(path);
  if (known !== null) return known;
  const fresh = { token: randomBytes(32).toString('hex'), port: usualPort };
  try {
    if (!isOurs(dataFolder)) return fresh;
    makeFolder(dataFolder);
    writeFileSync(path, JSON.stringify(fresh), { mode: 0o600 });
    chmodSync(path, 0o600);
  } catch {
    // The start-up screen tells about a folder that cannot be written; this run's token still works.
  }
  return fresh;
}
