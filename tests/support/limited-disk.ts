import { spawnSync } from 'node:child_process';
import { chmodSync } from 'node:fs';
import { onTestFinished } from 'vitest';
import { tempFolder } from './temp-folder.ts';

function ran(command: string, ...args: string[]): boolean {
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}

/** A disk of that many kilobytes, or null where this user may not mount one. */
export function tinyDisk(kilobytes: number): string | null {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return null;
  const folder = tempFolder();
  if (!ran('mount', '-t', 'tmpfs', '-o', `size=${kilobytes}k`, 'tmpfs', folder)) return null;
  onTestFinished(() => {
    // Lazily: a failed test may still have files open on it.
    ran('umount', '-l', folder);
  });
  return folder;
}

/**
 * Takes writing away from a folder until the test ends: by mode for an ordinary user, by the
 * immutable flag for root, whom no mode stops. False where neither works.
 */
export function takeWritingAway(folder: string): boolean {
  if (process.platform === 'win32') return false;
  if (process.getuid?.() !== 0) {
    chmodSync(folder, 0o555);
    onTestFinished(() => chmodSync(folder, 0o755));
    return true;
  }
  if (!ran('chattr', '+i', folder)) return false;
  onTestFinished(() => {
    ran('chattr', '-i', folder);
  });
  return true;
}
