import { rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkImports } from './check.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Each import on the right is forbidden in the room on the left. */
const broken: [string, string][] = [
  [
    'shared',
    "import { runCommand } from '../core/storage/commands.ts';\nexport const x = runCommand;\n",
  ],
  ['shared', "import { readFileSync } from 'node:fs';\nexport const x = readFileSync;\n"],
  [
    'renderer',
    "import { runCommand } from '../core/storage/commands.ts';\nexport const x = runCommand;\n",
  ],
  ['renderer', "import Database from 'better-sqlite3';\nexport const x = Database;\n"],
  ['demo-data', "import Database from 'better-sqlite3';\nexport const x = Database;\n"],
  ['core', "import { useState } from 'react';\nexport const x = useState;\n"],
  ['core', "import { app } from 'electron';\nexport const x = app;\n"],
  [
    'core/papers',
    "import { makeKysely } from '../storage/kysely.ts';\nexport const x = makeKysely;\n",
  ],
];

const brokenFiles = broken.map(([room, source], at) => ({
  path: `${room}/broken-on-purpose-${process.pid}-${at}.ts`,
  room,
  source,
}));

test('the project keeps its own rule', () => {
  const { ok, output } = checkImports([
    'shared',
    'core',
    'renderer',
    'electron',
    'migrations',
    'demo-data',
  ]);
  expect(output).not.toContain('noRestrictedImports');
  expect(ok).toBe(true);
});

describe('a file that breaks the rule is caught', () => {
  let output = '';

  // One look for all of them: the linter reads the whole project each time it is started.
  beforeAll(() => {
    try {
      for (const { path, source } of brokenFiles) writeFileSync(`${root}/${path}`, source);
      const checked = checkImports(brokenFiles.map(({ path }) => path));
      expect(checked.ok).toBe(false);
      output = checked.output;
    } finally {
      for (const { path } of brokenFiles) rmSync(`${root}/${path}`, { force: true });
    }
  }, 60_000);

  test.each(brokenFiles)('in $room: $source', ({ path }) => {
    const told = output.split('\n').filter((line) => line.startsWith(path));
    expect(told).toEqual([expect.stringContaining('noRestrictedImports')]);
  });
});
