import { realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));

const common: BuildOptions = {
  bundle: true,
  target: 'node24',
  logLevel: 'warning',
  sourcemap: true,
};

/** Every npm package stays outside: native ones cannot be bundled, and the core reads fonts from theirs. */
const moduleOptions: BuildOptions = {
  ...common,
  platform: 'node',
  format: 'esm',
  packages: 'external',
};

/** Bundles the main process, the core process and the preload into `outFolder`. */
export async function buildDesktop(outFolder: string): Promise<void> {
  await Promise.all([
    build({
      ...moduleOptions,
      entryPoints: [join(here, 'main.ts')],
      outfile: join(outFolder, 'main.js'),
    }),
    build({
      ...moduleOptions,
      entryPoints: [join(here, 'core-utility.ts')],
      outfile: join(outFolder, 'core-utility.mjs'),
    }),
    build({
      ...moduleOptions,
      entryPoints: [join(here, '../core/papers/paper-worker.ts')],
      outfile: join(outFolder, 'paper-worker.mjs'),
    }),
    build({
      ...moduleOptions,
      entryPoints: [join(here, '../core/limb-room/limb-worker.ts')],
      outfile: join(outFolder, 'limb-worker.mjs'),
    }),
    build({
      ...common,
      entryPoints: [join(here, 'preload.ts')],
      outfile: join(outFolder, 'preload.cjs'),
      // A sandboxed preload is one CommonJS file that may require nothing but electron.
      platform: 'browser',
      format: 'cjs',
      external: ['electron'],
    }),
  ]);
}

const startedAs = process.argv[1];
if (startedAs !== undefined && realpathSync(startedAs) === fileURLToPath(import.meta.url)) {
  await buildDesktop(join(here, '../dist/electron'));
}
