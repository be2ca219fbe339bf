import { existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { backUp } from '../../core/storage/backup.ts';
import { child } from '../support/child.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { at, attempt, notes, openAt, refusedAt, shopWithLimb } from './open-test-shop.ts';
import { firstStep, secondStep } from './steps.ts';

const databaseOf = (folder: string) => join(folder, 'shop.sqlite');

test('a new shop goes through every phase but the backup', async () => {
  const { result, phases } = await attempt(tempFolder());
  expect(result).toMatchObject({ phase: 'ready', schemaVersion: 1, isNew: true });
  expect(phases).toEqual(['locating', 'locking', 'opening', 'checking', 'migrating', 'ready']);
});

test('a shop that is up to date opens with what was in it', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const { result, phases } = await attempt(folder);
  expect(phases).toEqual(['locating', 'locking', 'opening', 'checking', 'ready']);
  if (result.phase !== 'ready') throw new Error(result.sentence);
  expect(result.isNew).toBe(false);
  expect(notes(result)).toEqual(['as it came']);
});

test('a shop left by a crash opens with all that was committed', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const writing = await child('storage/children/write-and-hang.ts', databaseOf(folder));
  await writing.kill();
  expect(existsSync(`${databaseOf(folder)}-wal`)).toBe(true);
  expect(notes(await openAt(folder))).toEqual(['committed', 'as it came']);
});

test('newer file: refused, and the file stays byte for byte', async () => {
  const folder = tempFolder();
  (await openAt(folder, [firstStep, secondStep])).close();
  const before = readFileSync(databaseOf(folder));
  const state = await refusedAt(folder, [firstStep]);
  expect(state).toMatchObject({ reason: 'newer-file', choices: ['try-again', 'choose-folder'] });
  expect(state.sentence).toContain('version 2');
  expect(readFileSync(databaseOf(folder)).equals(before)).toBe(true);
});

test('newer file: its unfolded log is left to the newer program too', async () => {
  const folder = tempFolder();
  (await openAt(folder, [firstStep, secondStep])).close();
  await (await child('storage/children/write-and-hang.ts', databaseOf(folder))).kill();
  const before = readFileSync(databaseOf(folder));
  const log = readFileSync(`${databaseOf(folder)}-wal`);
  expect(log.length).toBeGreaterThan(0);
  expect((await refusedAt(folder, [firstStep])).reason).toBe('newer-file');
  expect(readFileSync(databaseOf(folder)).equals(before)).toBe(true);
  expect(readFileSync(`${databaseOf(folder)}-wal`).equals(log)).toBe(true);
});

test('newer file: one outside WAL mode is not turned into it', async () => {
  const folder = tempFolder();
  (await openAt(folder, [firstStep, secondStep])).close();
  const db = new Database(databaseOf(folder));
  db.pragma('journal_mode = DELETE');
  db.close();
  const before = readFileSync(databaseOf(folder));
  expect((await refusedAt(folder, [firstStep])).reason).toBe('newer-file');
  expect(readFileSync(databaseOf(folder)).equals(before)).toBe(true);
});

test('corrupt: a garbage header; without a backup none is offered', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const bytes = readFileSync(databaseOf(folder));
  bytes.fill(0xa5, 0, 100);
  writeFileSync(databaseOf(folder), bytes);
  expect(await refusedAt(folder)).toMatchObject({
    reason: 'corrupt',
    choices: ['choose-folder', 'try-again'],
    backups: [],
  });
  expect(readFileSync(databaseOf(folder)).equals(bytes)).toBe(true);
});

test('corrupt: flipped pages; the backups are offered, newest first', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  const insert = shop.database.writer.prepare('INSERT INTO limb VALUES (?, ?)');
  for (let n = 0; n < 500; n += 1) insert.run(`limb-${n}`, 'x'.repeat(200));
  const old = await backUp(shop.database.writer, folder, '2026-03-01T09:00:00.000Z');
  const recent = await backUp(shop.database.writer, folder, '2026-03-02T08:00:00.000Z');
  shop.close();
  const bytes = readFileSync(databaseOf(folder));
  for (let n = 4096 * 4; n < bytes.length; n += 1) bytes[n] = ~(bytes[n] ?? 0) & 0xff;
  writeFileSync(databaseOf(folder), bytes);
  expect(await refusedAt(folder)).toMatchObject({
    reason: 'corrupt',
    choices: ['restore-backup', 'choose-folder', 'try-again'],
    backups: [recent.name, old.name],
  });
});

test('corrupt: a file cut short', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  truncateSync(databaseOf(folder), 4096);
  expect((await refusedAt(folder)).reason).toBe('corrupt');
});

test('corrupt: references that lead nowhere', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  shop.database.writer.pragma('foreign_keys = OFF');
  shop.database.writer.exec("INSERT INTO cut VALUES ('c', 'no such limb')");
  shop.close();
  expect((await refusedAt(folder)).reason).toBe('corrupt');
});

test('corrupt: a file emptied under its backups is not taken for a new shop', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  await backUp(shop.database.writer, folder, at);
  shop.close();
  truncateSync(databaseOf(folder), 0);
  expect(await refusedAt(folder)).toMatchObject({
    reason: 'corrupt',
    choices: ['restore-backup', 'choose-folder', 'try-again'],
  });
});

test('why it was refused is kept in the log, without the folder name', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  writeFileSync(databaseOf(folder), 'no database'.repeat(100));
  await refusedAt(folder);
  const log = readFileSync(join(folder, 'logs', 'tillermark.log'), 'utf8');
  const line: unknown = JSON.parse(log.trim());
  expect(line).toMatchObject({
    time: at,
    reason: 'corrupt',
    err: { code: 'SQLITE_NOTADB' },
    msg: 'start-up refused',
  });
  expect(log).not.toContain(folder);
});

test('what a cut-off backup left is cleared at the next start', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const left = join(folder, 'backups', '.shop-2026-03-01T090000Z-v1.sqlite.77-1.part');
  writeFileSync(left, 'half a copy');
  await openAt(folder);
  expect(readdirSync(join(folder, 'backups'))).toEqual([]);
});
