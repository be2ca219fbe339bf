import { rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
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

test.each(broken)('a file in %s that breaks the rule is caught: %s', (room, source) => {
  const path = `${room}/broken-on-purpose-${process.pid}-${Math.abs(source.length)}.ts`;
  const full = `${root}/${path}`;
  onTestFinished(() => rmSync(full, { force: true }));
  writeFileSync(full, source);
  const { ok, output } = checkImports([path]);
  expect(output).toContain('noRestrictedImports');
  expect(ok).toBe(false);
});

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
