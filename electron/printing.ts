import { rmSync } from 'node:fs';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { app, shell } from 'electron';
import { desktopChannels, type OpenPdfResult } from '../shared/desktop.ts';
import { answer } from './ipc.ts';
import { checkPaper, type Paper } from './paper.ts';

/** Makes the private folder on first use; only this person may look into it. */
function privateFolder(): () => Promise<string> {
  let made: Promise<string> | null = null;
  return () => {
    made ??= mkdtemp(join(app.getPath('temp'), 'tillermark-papers-')).then((folder) => {
      app.on('quit', () => remove(folder));
      return folder;
    });
    return made;
  };
}

function remove(folder: string): void {
  try {
    rmSync(folder, { recursive: true, force: true });
  } catch {
    // A viewer that still shows a paper may hold it open; the system empties its temporary folder.
  }
}

async function show(paper: Paper, folder: string): Promise<OpenPdfResult> {
  // A folder for each: a viewer may hold an earlier paper of the same name open.
  const file = join(await mkdtemp(join(folder, 'paper-')), paper.name);
  await writeFile(file, paper.bytes, { mode: 0o600 });
  const problem = await shell.openPath(file);
  if (problem === '') return { ok: true };
  return {
    ok: false,
    message: 'No program opened the paper: install a PDF viewer, or save the paper instead.',
  };
}

export function setupPrinting(): void {
  const folder = privateFolder();
  answer(desktopChannels.openPdf, async (name, bytes): Promise<OpenPdfResult> => {
    const check = checkPaper(name, bytes);
    if (!check.ok) return check;
    try {
      return await show(check.paper, await folder());
    } catch {
      return {
        ok: false,
        message: 'The paper could not be written: free some disk space and print again.',
      };
    }
  });
}
