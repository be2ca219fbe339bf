import { readdirSync, readFileSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { kyselyLog, makeKysely } from '../../core/storage/kysely.ts';
import { createLog, silentLog } from '../../core/storage/log.ts';
import { openWriter } from '../../core/storage/open.ts';
import { tempFolder } from '../support/temp-folder.ts';

function linesOf(folder: string): Record<string, unknown>[] {
  const text = readFileSync(join(folder, 'tillermark.log'), 'utf8');
  return text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
}

test('a line is JSON with a time and no machine name', async () => {
  const folder = tempFolder();
  const { log, close } = createLog(folder);
  log.info({ orderId: 'o-1' }, 'moved');
  await close();
  const [line] = linesOf(folder);
  expect(Object.keys(line ?? {}).toSorted()).toEqual(['level', 'msg', 'orderId', 'time']);
  expect(line).toMatchObject({ level: 30, orderId: 'o-1', msg: 'moved' });
});

test('the log turns over at one megabyte and keeps ten old files', async () => {
  const folder = tempFolder();
  const { log, close } = createLog(folder);
  const filler = 'x'.repeat(10_000);
  for (let n = 0; n < 1400; n += 1) {
    log.info({ n, filler }, 'line');
    // The disk must keep up, as it does in a shop.
    if (n % 50 === 0) await new Promise((resolve) => setTimeout(resolve, 5));
  }
  await close();
  const names = readdirSync(folder).filter((name) => name.endsWith('tillermark.log'));
  expect(names).toHaveLength(11);
  const megabyte = 1024 * 1024;
  for (const name of names) {
    // A file turns over after the write that reached the size: one batch may stand above it.
    expect(statSync(join(folder, name)).size).toBeLessThan(2 * megabyte);
  }
  expect(linesOf(folder).at(-1)).toMatchObject({ n: 1399 });
});

test('an error leaves its data and the home folder out', async () => {
  const folder = tempFolder();
  const { log, close } = createLog(folder);
  const error = Object.assign(new Error(`cannot read ${homedir()}/shop`), {
    code: 'EIO',
    data: { customer: 'Ada Hale' },
  });
  log.error({ err: error }, 'bug');
  await close();
  const text = JSON.stringify(linesOf(folder));
  expect(text).toContain('EIO');
  expect(text).not.toContain('Ada Hale');
  expect(text).not.toContain(`${homedir()}/`);
});

function slowShop(folder: string) {
  const db = openWriter(join(folder, 'shop.sqlite'));
  db.exec('CREATE TABLE customer (id TEXT, name TEXT)');
  db.function('wait', (milliseconds) => {
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, Number(milliseconds));
    return 1;
  });
  const kept = createLog(folder);
  return { kysely: makeKysely(db, kyselyLog(kept.log)), close: kept.close };
}

test('a query over 40 ms leaves a line without its values; a quick one leaves none', async () => {
  const folder = tempFolder();
  const { kysely, close } = slowShop(folder);
  const quick = kysely.selectFrom('customer').select('id').where('name', '=', 'Ada Hale');
  await quick.execute();
  await sql`SELECT wait(${60}), ${'Ada Hale'}`.execute(kysely);
  await kysely.destroy();
  await close();
  const lines = linesOf(folder);
  expect(lines).toMatchObject([{ level: 40, msg: 'slow query', sql: 'SELECT wait(?), ?' }]);
  expect(Number(lines[0]?.ms)).toBeGreaterThanOrEqual(40);
  expect(JSON.stringify(lines)).not.toContain('Ada Hale');
});

test('a failed query leaves its code, not its values', async () => {
  const folder = tempFolder();
  const { kysely, close } = slowShop(folder);
  await expect(sql`SELECT ${'Ada Hale'} FROM nowhere`.execute(kysely)).rejects.toThrow('nowhere');
  await kysely.destroy();
  await close();
  const lines = linesOf(folder);
  expect(lines).toMatchObject([{ level: 50, msg: 'failed query', code: 'SQLITE_ERROR' }]);
  expect(JSON.stringify(lines)).not.toContain('Ada Hale');
});

test('the silent log takes lines and closes', async () => {
  const { log, close } = silentLog();
  expect(log.isLevelEnabled('fatal')).toBe(false);
  await close();
});
