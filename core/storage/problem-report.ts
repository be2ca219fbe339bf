import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, type Zippable, zipSync } from 'fflate';
import type { StartUpState } from '../../shared/start-up.ts';
import { folderAt } from './data-folder.ts';

export interface ReportFacts {
  version: string;
  startUp: StartUpState;
}

/** Logs and versions as a zip file. Nothing of the database goes in. */
export async function problemReport(root: string, facts: ReportFacts): Promise<Uint8Array> {
  const { logs } = folderAt(root);
  const files: Zippable = {
    'about.json': strToU8(
      JSON.stringify(
        {
          ...facts,
          platform: process.platform,
          arch: process.arch,
          node: process.versions.node,
        },
        null,
        2,
      ),
    ),
  };
  if (existsSync(logs)) {
    for (const name of readdirSync(logs)) files[`logs/${name}`] = readFileSync(join(logs, name));
  }
  return zipSync(files);
}
