/** `npm run test:desktop`: tries the real window, where the window program is there to be tried. */
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { windowProgram } from '../../start.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

function reasonToSkip() {
  if (windowProgram(root) === null) {
    return 'the window program is not here; run node node_modules/electron/install.js with a network, then try again.';
  }
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) {
    return 'there is no screen here; run xvfb-run npm run test:desktop.';
  }
  return null;
}

function run(...command) {
  const { status } = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
  if (status !== 0) process.exit(status === null ? 1 : status);
}

const reason = reasonToSkip();
if (reason !== null) {
  console.log(`\nDESKTOP TESTS SKIPPED: ${reason}\n`);
} else {
  run('node_modules/vite/bin/vite.js', 'build', '--config', 'renderer/vite.config.ts');
  run('electron/build.ts');
  run('tests/desktop/desktop.ts', windowProgram(root));
}
