import { closeSync, fsyncSync, openSync } from 'node:fs';

function sync(path: string, flags: string): void {
  const handle = openSync(path, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Makes the content of a file survive a power cut. */
export function syncFile(path: string): void {
  sync(path, 'r+');
}

/** Makes a rename in this folder survive a power cut. Windows has no such call and needs none. */
export function syncFolder(path: string): void {
  if (process.platform !== 'win32') sync(path, 'r');
}
