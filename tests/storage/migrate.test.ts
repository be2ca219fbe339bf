import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listBackups } from '../../core/storage/backup.ts';
import { migrate } from '../../core/storage/migrate.ts';
import { openWriter, schemaVersionOf } from '../../core/storage/open.ts';
import { migrations } from '../../migrations/index.ts';
import { child } from '../support/child.ts';
import { tinyDisk } from '../support/limited-disk.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { attempt, notes, openAt, refusedAt, shopWithLimb } from './open-test-shop.ts';
import { failingStep, firstStep, secondStep } from './steps.ts';

test('the steps of the shop are numbered from 1 without a gap', () => {
  expect(migrations.map((step) => step.version)).toEqual(migrations.map((_, index) => index + 1));
});

test('the steps of the shop open a new shop', async () => {
  const shop = await openAt(tempFolder(), migrations);
  expect(shop.schemaVersion).toBe(migrations.length);
  expect(shop.database.reader.pragma('quick_check', { simple: true })).toBe('ok');
});

test('an upgrade is backed up first, in a file of its own', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const { result, phases } = await attempt(folder, [firstStep, secondStep]);
  expect(phases).toEqual([
    'locating',
    'locking',
    'opening',
    'checking',
    'backing-up',
    'migrating',
    'ready',
  ]);
  if (result.phase !== 'ready') throw new Error(result.sentence);
  expect(result.schemaVersion).toBe(2);
  expect(notes(result)).toEqual(['as it came']);
  const name = 'shop-2026-03-02T090000Z-v1-before-upgrade.sqlite';
  expect(readdirSync(join(folder, 'backups'))).toEqual([name]);
  expect(listBackups(folder)).toMatchObject([
    { name, schemaVersion: 1, madeAt: '2026-03-02T09:00:00Z' },
  ]);
});

test('failed migration: everything is rolled back, the step and its cause are told', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const state = await refusedAt(folder, [firstStep, failingStep]);
  expect(state).toMatchObject({
    reason: 'failed-migration',
    choices: ['try-again', 'restore-backup'],
    backups: ['shop-2026-03-02T090000Z-v1-before-upgrade.sqlite'],
  });
  expect(state.sentence).toContain('step 2, wrong column');
  const log = readFileSync(join(folder, 'logs', 'tillermark.log'), 'utf8');
  expect(log).toContain('never_there');
  const shop = await openAt(folder);
  expect(schemaVersionOf(shop.database.writer)).toBe(1);
  expect(notes(shop)).toEqual(['as it came']);
});

test('failed migration: the good steps before it are rolled back too', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const third = { ...failingStep, version: 3 };
  expect((await refusedAt(folder, [firstStep, secondStep, third])).reason).toBe('failed-migration');
  const shop = await openAt(folder);
  expect(shop.database.reader.pragma('table_info(limb)')).toHaveLength(2);
});

test('failed migration: a step that breaks references', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const breaking = {
    version: 2,
    name: 'breaks references',
    up: (db: ReturnType<typeof openWriter>) => {
      db.exec("INSERT INTO cut VALUES ('c', 'no such limb')");
    },
  };
  expect((await refusedAt(folder, [firstStep, breaking])).reason).toBe('failed-migration');
  expect(notes(await openAt(folder))).toEqual(['as it came']);
});

test('foreign keys are off inside a step and on again after it, also after a failure', () => {
  const db = openWriter(join(tempFolder(), 'shop.sqlite'));
  const keys = () => db.pragma('foreign_keys', { simple: true });
  let inside: unknown;
  const looking = {
    version: 1,
    name: 'looks',
    up: () => {
      inside = keys();
    },
  };
  migrate(db, [looking]);
  expect([inside, keys()]).toEqual([0, 1]);
  expect(() => migrate(db, [failingStep])).toThrow('wrong column');
  expect(keys()).toBe(1);
  db.close();
});

test('killed in the middle of a step: the old version and its data are still there', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  await (await child('storage/children/hang-in-migration.ts', folder)).kill();
  expect(statSync(join(folder, 'shop.sqlite-wal')).size).toBeGreaterThan(100_000);
  const shop = await openAt(folder);
  expect(schemaVersionOf(shop.database.writer)).toBe(1);
  expect(notes(shop)).toEqual(['as it came']);
  shop.close();
  expect((await openAt(folder, [firstStep, secondStep])).schemaVersion).toBe(2);
});

test('disk full: a step that outgrows the file (a page limit) rolls back', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const growing = {
    version: 2,
    name: 'grows',
    up: (db: ReturnType<typeof openWriter>) => {
      db.pragma('max_page_count = 20');
      const insert = db.prepare('INSERT INTO limb VALUES (?, ?)');
      for (let n = 0; n < 1000; n += 1) insert.run(`limb-${n}`, 'x'.repeat(1000));
    },
  };
  expect(await refusedAt(folder, [firstStep, growing])).toMatchObject({
    reason: 'disk-full',
    choices: ['try-again'],
  });
  expect(notes(await openAt(folder))).toEqual(['as it came']);
});

test('disk full: a real full disk during an upgrade (a tiny mounted disk)', async (context) => {
  const folder = tinyDisk(512);
  context.skip(folder === null, 'this user may not mount a tiny disk');
  if (folder === null) return;
  await shopWithLimb(folder);
  const growing = {
    version: 2,
    name: 'grows',
    up: (db: ReturnType<typeof openWriter>) => {
      db.pragma('cache_size = 5'); // spills to the disk inside the transaction
      const insert = db.prepare('INSERT INTO limb VALUES (?, ?)');
      for (let n = 0; n < 2000; n += 1) insert.run(`limb-${n}`, 'x'.repeat(1000));
    },
  };
  expect((await refusedAt(folder, [firstStep, growing])).reason).toBe('disk-full');
  expect(notes(await openAt(folder))).toEqual(['as it came']);
});
