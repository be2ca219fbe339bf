import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { tempFolder } from '../support/temp-folder.ts';
import { openAt, refusedAt } from './open-test-shop.ts';

test('the writer has the storage rules set', async () => {
  const { writer } = (await openAt(tempFolder())).database;
  const value = (name: string) => writer.pragma(name, { simple: true });
  expect(value('journal_mode')).toBe('wal');
  expect(value('synchronous')).toBe(2); // FULL
  expect(value('foreign_keys')).toBe(1);
  expect(value('trusted_schema')).toBe(0);
  expect(value('busy_timeout')).toBe(5000);
  expect(value('application_id')).toBe(0x54494c4c);
  expect(value('user_version')).toBe(1);
});

test('the writer refuses a broken reference', async () => {
  const { writer } = (await openAt(tempFolder())).database;
  expect(() => writer.exec("INSERT INTO cut VALUES ('c', 'no such limb')")).toThrow('FOREIGN KEY');
});

test('the reader sees what is committed and cannot write', async () => {
  const { writer, reader } = (await openAt(tempFolder())).database;
  writer.exec("INSERT INTO limb VALUES ('upper', 'seen')");
  expect(reader.prepare('SELECT note FROM limb').pluck().get()).toBe('seen');
  expect(() => reader.exec("INSERT INTO limb VALUES ('lower', 'no')")).toThrow('readonly');
  expect(reader.pragma('query_only', { simple: true })).toBe(1);
});

test('closing folds the log in and leaves one file', async () => {
  const folder = tempFolder();
  (await openAt(folder)).close();
  expect(readdirSync(folder).filter((name) => name.startsWith('shop.sqlite'))).toEqual([
    'shop.sqlite',
  ]);
});

test.each([
  ['its mark', 'PRAGMA application_id = 7'],
  ['its tables', 'CREATE TABLE recipe (id)'],
])(
  "not our file: another program's database, told by %s, stays byte for byte",
  async (_by, sql) => {
    const folder = tempFolder();
    const path = join(folder, 'shop.sqlite');
    const theirs = new Database(path);
    theirs.exec(sql);
    theirs.close();
    const before = readFileSync(path);
    expect(await refusedAt(folder)).toMatchObject({ reason: 'not-our-file' });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(readdirSync(folder).toSorted()).toEqual(['shop.lock', 'shop.sqlite']);
  },
);
