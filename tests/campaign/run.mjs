// The campaigns at full length; `npm test` runs a short one.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const full = { TILLERMARK_KILLS: '500', TILLERMARK_SEQUENCES: '10000', TILLERMARK_STOCK: '10000' };
const vitest = fileURLToPath(new URL('../../node_modules/.bin/vitest', import.meta.url));
const { status } = spawnSync(vitest, ['run', '--project', 'campaign', ...process.argv.slice(2)], {
  stdio: 'inherit',
  env: { ...full, ...process.env },
  shell: process.platform === 'win32',
});
process.exit(status ?? 1);
