import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { tempFolder } from '../support/temp-folder.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What a bare machine has: a shell and Node with npm. No Python, make or compiler. */
const bare = ['sh', 'env', 'uname', 'sed', 'dirname', 'basename', 'cat', 'ls', 'node', 'npm'];
const absent = ['python', 'python3', 'make', 'cc', 'gcc', 'g++', 'clang'];

function which(name: string, path: string): string | null {
  try {
    return execFileSync('/bin/sh', ['-c', `command -v ${name}`], { env: { PATH: path } })
      .toString()
      .trim();
  } catch {
    return null;
  }
}

/** The machine's own Node, not the one that the project brings and this very test runs under. */
function outerPath(): string {
  const own = join('node_modules', '.bin');
  return (process.env.PATH ?? '')
    .split(':')
    .filter((part) => !part.includes(own))
    .join(':');
}

test.skipIf(process.platform === 'win32')(
  'npm ci needs nothing but Node and the registry, and the database opens',
  () => {
    const folder = tempFolder();
    const bin = join(folder, 'bin');
    mkdirSync(bin);
    for (const name of bare) {
      const found = which(name, outerPath());
      if (found !== null) symlinkSync(found, join(bin, name));
    }
    expect(absent.filter((name) => which(name, bin) !== null)).toEqual([]);
    for (const file of ['package.json', 'package-lock.json', '.npmrc']) {
      copyFileSync(join(root, file), join(folder, file));
    }
    const env = { PATH: bin, HOME: process.env.HOME ?? folder };
    execFileSync(join(bin, 'npm'), ['ci', '--no-progress'], { cwd: folder, env, stdio: 'pipe' });
    const opened = execFileSync(
      join(folder, 'node_modules/.bin/node'),
      [
        '-e',
        "console.log(process.version, require('better-sqlite3')(':memory:').prepare('select 1 as one').get().one)",
      ],
      { cwd: folder, env },
    );
    expect(opened.toString().trim()).toMatch(/^v2\d\.\S+ 1$/);
  },
);
