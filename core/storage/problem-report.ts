import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type AsyncZippable, strToU8, zip } from 'fflate';
import type { StartUpState } from '../../shared/start-up.ts';
import { folderAt } from './data-folder.ts';

export interface ReportFacts {
  version: string;
  startUp: StartUpState;
}

/** The state without its sentence, which names a folder and so perhaps a person. */
function stateOf(state: StartUpState) {
  if (state.phase === 'needs-you') return { phase: state.phase, reason: state.reason };
  return state;
}

function about(facts: ReportFacts): Uint8Array {
  const { platform, arch, versions } = process;
  const lines = {
    version: facts.version,
    startUp: stateOf(facts.startUp),
    platform,
    arch,
    node: versions.node,
  };
  return strToU8(JSON.stringify(lines, null, 2));
}

/** Our own log files, present and rotated; nothing else that may lie in the folder. */
async function logsIn(folder: string): Promise<AsyncZippable> {
  if (!existsSync(folder)) return {};
  const files: AsyncZippable = {};
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (!entry.isFile() || !entry.name.endsWith('tillermark.log')) continue;
    files[`logs/${entry.name}`] = new Uint8Array(await readFile(join(folder, entry.name)));
  }
  return files;
}

/**
 * Logs and versions as a zip file. Nothing of the database goes in. Big logs are packed on
 * worker threads, so that the doors go on answering.
 */
export async function problemReport(root: string, facts: ReportFacts): Promise<Uint8Array> {
  const files = { 'about.json': about(facts), ...(await logsIn(folderAt(root).logs)) };
  return new Promise((resolve, reject) => {
    zip(files, (error, bytes) => (error === null ? resolve(bytes) : reject(error)));
  });
}
