import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { backUp, keptRoutine, listBackups, restoreBackup } from '../../core/storage/backup.ts';
import type { ReadyShop } from '../../core/storage/start-up.ts';
import { child } from '../support/child.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { at, notes, openAt, refusedAt, shopWithLimb } from './open-test-shop.ts';
import { firstStep, secondStep } from './steps.ts';

function fill(shop: ReadyShop, rows: number): void {
  const insert = shop.database.writer.prepare('INSERT INTO limb VALUES (?, ?)');
  for (let n = 0; n < rows; n += 1) insert.run(`limb-${n}`, 'x'.repeat(500));
}

function read(path: string, sql: string): unknown {
  const db = new Database(path, { readonly: true });
  try {
    return db.prepare(sql).pluck().get();
  } finally {
    db.close();
  }
}

test('a backup made during writes is whole, of one moment, and one plain file', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  fill(shop, 4000);
  let writes = 0;
  const late = shop.database.writer.prepare("INSERT INTO limb VALUES (?, 'late')");
  let finished = false;
  const making = backUp(shop.database.writer, folder, at).finally(() => {
    finished = true;
  });
  while (!finished) {
    late.run(`late-${writes}`);
    writes += 1;
    await new Promise((resolve) => setImmediate(resolve));
  }
  const made = await making;
  expect(made).toMatchObject({
    name: 'shop-2026-03-02T090000Z-v1.sqlite',
    madeAt: '2026-03-02T09:00:00Z',
    schemaVersion: 1,
  });
  // More than one write fell into the copying, and none of those into the copy.
  expect(writes).toBeGreaterThan(5);
  const path = join(folder, 'backups', made.name);
  expect(read(path, "SELECT count(*) FROM limb WHERE note <> 'late'")).toBe(4000);
  expect(read(path, "SELECT count(*) FROM limb WHERE note = 'late'")).toBeLessThan(3);
  expect(read(path, 'PRAGMA quick_check')).toBe('ok');
  expect(readdirSync(join(folder, 'backups'))).toEqual([made.name]);
});

test('a backup made while a write is open holds all before it and nothing of it', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  fill(shop, 100);
  shop.database.writer.exec("BEGIN IMMEDIATE; INSERT INTO limb VALUES ('open', 'not yet');");
  const made = await backUp(shop.database.writer, folder, at);
  shop.database.writer.exec('ROLLBACK');
  expect(read(join(folder, 'backups', made.name), 'SELECT count(*) FROM limb')).toBe(100);
});

test('two backups at the same moment do not disturb each other', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  fill(shop, 2000);
  const { writer } = shop.database;
  await Promise.all([backUp(writer, folder, at), backUp(writer, folder, at)]);
  expect(listBackups(folder)).toHaveLength(1);
});

test('only the newest routine backups are kept; those before an upgrade stay', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder, [firstStep, secondStep]);
  const stamp = (n: number) => `2026-04-${String(n).padStart(2, '0')}T09:00:00.000Z`;
  for (let n = 1; n <= keptRoutine + 2; n += 1) {
    await backUp(shop.database.writer, folder, stamp(n));
  }
  const names = listBackups(folder).map((backup) => backup.name);
  expect(names).toHaveLength(keptRoutine + 1);
  expect(names[0]).toBe(`shop-2026-04-${keptRoutine + 2}T090000Z-v2.sqlite`);
  expect(names.at(-2)).toBe('shop-2026-04-03T090000Z-v2.sqlite');
  expect(names.at(-1)).toBe('shop-2026-03-02T090000Z-v1-before-upgrade.sqlite');
});

test('a restore brings the old state back and keeps the present file', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.database.writer.exec("UPDATE limb SET note = 'later work'");
  shop.close();
  await restoreBackup(folder, made.name, '2026-03-03T10:11:12.345Z');
  const aside = join(folder, 'shop.sqlite.aside-2026-03-03T101112.345Z');
  expect(read(aside, 'SELECT note FROM limb')).toBe('later work');
  expect(notes(await openAt(folder))).toEqual(['as it came']);
  expect(existsSync(join(folder, 'backups', made.name))).toBe(true);
});

test('a restore takes the log of a crashed shop aside with its file', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.close();
  await (await child('storage/children/write-and-hang.ts', join(folder, 'shop.sqlite'))).kill();
  await restoreBackup(folder, made.name, at);
  expect(notes(await openAt(folder))).toEqual(['as it came']);
  const aside = new Database(join(folder, 'shop.sqlite.aside-2026-03-02T090000.000Z'));
  expect(aside.prepare('SELECT count(*) FROM limb').pluck().get()).toBe(2);
  aside.close();
});

test('two restores at one moment keep both files', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.close();
  await restoreBackup(folder, made.name, at);
  await restoreBackup(folder, made.name, at);
  const kept = readdirSync(folder).filter((name) => name.includes('.aside-'));
  expect(kept).toHaveLength(2);
});

test('a damaged shop is opened again from its backup', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder);
  await backUp(shop.database.writer, folder, at);
  shop.close();
  const damaged = 'no database any more'.repeat(100);
  writeFileSync(join(folder, 'shop.sqlite'), damaged);
  const [name = ''] = (await refusedAt(folder)).backups;
  await restoreBackup(folder, name, at);
  expect(notes(await openAt(folder))).toEqual(['as it came']);
  const aside = join(folder, 'shop.sqlite.aside-2026-03-02T090000.000Z');
  expect(readFileSync(aside, 'utf8')).toBe(damaged);
});

test('a restore cut off between its renames is asked for again, not taken for a new shop', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.close();
  rmSync(join(folder, 'shop.sqlite'));
  const state = await refusedAt(folder);
  expect(state).toMatchObject({ reason: 'corrupt', backups: [made.name] });
  await restoreBackup(folder, made.name, at);
  expect(notes(await openAt(folder))).toEqual(['as it came']);
});

test('a damaged backup is refused and the shop file stays', async () => {
  const folder = tempFolder();
  await shopWithLimb(folder);
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.close();
  writeFileSync(join(folder, 'backups', made.name), 'garbage'.repeat(1000));
  const before = readFileSync(join(folder, 'shop.sqlite'));
  await expect(restoreBackup(folder, made.name, at)).rejects.toMatchObject({ code: 'BAD_INPUT' });
  expect(readFileSync(join(folder, 'shop.sqlite')).equals(before)).toBe(true);
  expect(readdirSync(folder).filter((name) => name.includes('restored'))).toEqual([]);
});

test.each(['no-such.sqlite', '../shop.sqlite', ''])(
  'a backup named "%s" is refused',
  async (name) => {
    const folder = tempFolder();
    await shopWithLimb(folder);
    await expect(restoreBackup(folder, name, at)).rejects.toMatchObject({ code: 'BAD_INPUT' });
  },
);

test('a shop that another process has open is not restored under it', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  const made = await backUp(shop.database.writer, folder, at);
  shop.close();
  await child('storage/children/hold-lock.ts', join(folder, 'shop.lock'));
  await expect(restoreBackup(folder, made.name, at)).rejects.toMatchObject({ code: 'CONFLICT' });
  expect(readdirSync(folder).filter((name) => name.includes('.aside-'))).toEqual([]);
});
