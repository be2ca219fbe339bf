// Runs every bench of this folder, or the named ones: `npm run bench`, `npm run bench -- static-bow`.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const here = fileURLToPath(new URL('.', import.meta.url));
const wanted = process.argv.slice(2);
const benches = readdirSync(here)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)));
let failed = 0;
for (const name of benches) {
  console.log(`\n== ${name.replace('.bench.ts', '')}`);
  const { status } = spawnSync(process.execPath, [`${here}${name}`], { stdio: 'inherit' });
  if (status !== 0) failed += 1;
}
process.exit(failed === 0 ? 0 : 1);
