import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Core } from '../../core/host/core.ts';
import { folderAt } from '../../core/storage/data-folder.ts';

async function make(): Promise<Buffer> {
  const folder = mkdtempSync(join(tmpdir(), 'tillermark-blank-'));
  try {
    const core = new Core({ dataFolder: folder });
    const state = await core.settled();
    await core.close();
    if (state.phase !== 'ready') throw new Error(`no shop was made: ${JSON.stringify(state)}`);
    return readFileSync(folderAt(folder).database);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

let made: Promise<Buffer> | undefined;

/**
 * Lays the file of a shop that nobody has opened yet into an empty folder. The program makes it
 * once a process: running every step of the schema takes longer than most tests of a shop.
 */
export async function layBlankShop(folder: string): Promise<void> {
  made ??= make();
  writeFileSync(folderAt(folder).database, await made);
}
