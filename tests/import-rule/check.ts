import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const biome = fileURLToPath(new URL('../../node_modules/.bin/biome', import.meta.url));

/**
 * The import rule alone: shared <- core <- electron, shared <- renderer, and no cycles.
 * The rules themselves stand in biome.json.
 */
export function checkImports(paths: readonly string[] = ['.']): { ok: boolean; output: string } {
  const result = spawnSync(
    biome,
    [
      'lint',
      '--only=style/noRestrictedImports',
      '--only=suspicious/noImportCycles',
      '--error-on-warnings',
      ...paths,
    ],
    { cwd: root, encoding: 'utf8' },
  );
  return { ok: result.status === 0, output: `${result.stdout}${result.stderr}` };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { ok, output } = checkImports();
  if (!ok) console.log(output);
  console.log(ok ? 'import rule: kept' : 'import rule: broken');
  process.exit(ok ? 0 : 1);
}
