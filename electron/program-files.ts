import { join } from 'node:path';
import { app } from 'electron';

/** Built files, from the folder that holds package.json. */
const built = {
  preload: 'dist/electron/preload.cjs',
  coreUtility: 'dist/electron/core-utility.mjs',
  renderer: 'dist/renderer',
} as const;

/** Full path of a built file or folder of this program. */
export function programFile(name: keyof typeof built): string {
  return join(app.getAppPath(), built[name]);
}
