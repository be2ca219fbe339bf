import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * How long a file without a record stays. A restored backup, or a shop file that was set aside and
 * is put back, may name files that the open shop does not: they must still be there.
 */
export const orphanDays = 90;

/** Where files lie while they are written. What is found there at start-up was cut off. */
export const incomingFolder = 'incoming';

const dayMs = 86_400_000;
const folderName = /^[0-9a-f]{2}$/;
const originalName = /^[0-9a-f]{64}$/;

export async function clearIncoming(root: string): Promise<void> {
  await rm(join(root, incomingFolder), { recursive: true, force: true });
}

async function originalsIn(root: string): Promise<string[]> {
  const folders = (await readdir(root)).filter((name) => folderName.test(name));
  const names: string[] = [];
  for (const folder of folders) {
    const inside = await readdir(join(root, folder));
    names.push(...inside.filter((name) => originalName.test(name) && name.startsWith(folder)));
  }
  return names;
}

async function isOld(path: string, now: string): Promise<boolean> {
  const { mtimeMs } = await stat(path);
  return Date.parse(now) - mtimeMs > orphanDays * dayMs;
}

/** The pictures made from it first: cut off in between, the original is found again. */
async function removeWithPictures(folder: string, sha256: string): Promise<void> {
  const made = (await readdir(folder)).filter(
    (name) => name.startsWith(`${sha256}.`) && name.endsWith('.webp'),
  );
  for (const name of [...made, sha256]) await rm(join(folder, name), { force: true });
}

/** Removes old originals that no record names; answers their hashes. Anything else is left alone. */
export async function removeOrphans(
  root: string,
  now: string,
  isNamed: (sha256: string) => Promise<boolean>,
): Promise<string[]> {
  const removed: string[] = [];
  for (const sha256 of await originalsIn(root)) {
    const folder = join(root, sha256.slice(0, 2));
    if (!(await isOld(join(folder, sha256), now))) continue;
    if (await isNamed(sha256)) continue;
    await removeWithPictures(folder, sha256);
    removed.push(sha256);
  }
  return removed;
}
