import { randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { createLog } from '../../core/storage/log.ts';
import { problemReport } from '../../core/storage/problem-report.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { openAt } from './open-test-shop.ts';

const facts = { version: '1.2.3', startUp: { phase: 'ready', schemaVersion: 1 } as const };

test('it holds versions and logs, and nothing of the shop', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  shop.database.writer.exec("INSERT INTO limb VALUES ('upper', 'Ada Hale')");
  const { log, close } = createLog(shop.folder.logs);
  log.info({ orderId: 'o-1' }, 'moved');
  await close();
  writeFileSync(join(shop.folder.logs, 'customers.csv'), 'Ada Hale');
  mkdirSync(join(shop.folder.logs, 'old'));
  const files = unzipSync(await problemReport(folder, facts));
  expect(Object.keys(files).toSorted()).toEqual(['about.json', 'logs/tillermark.log']);
  const texts = Object.values(files).map((bytes) => strFromU8(bytes));
  expect(texts.join('\n')).toContain('o-1');
  for (const text of texts) {
    expect(text).not.toContain('Ada Hale');
    expect(text).not.toContain(folder);
  }
  expect(JSON.parse(texts[0] ?? '')).toEqual({
    version: '1.2.3',
    startUp: { phase: 'ready', schemaVersion: 1 },
    platform: process.platform,
    arch: process.arch,
    node: process.versions.node,
  });
});

test('a refused start-up is told by its reason, without the sentence that names the folder', async () => {
  const folder = tempFolder();
  const bytes = await problemReport(folder, {
    version: '1.2.3',
    startUp: {
      phase: 'needs-you',
      reason: 'wrong-folder',
      sentence: `The folder ${folder} holds other things.`,
      choices: ['choose-folder'],
      backups: [],
    },
  });
  const about = strFromU8(unzipSync(bytes)['about.json'] ?? new Uint8Array());
  expect(JSON.parse(about)).toMatchObject({
    startUp: { phase: 'needs-you', reason: 'wrong-folder' },
  });
  expect(about).not.toContain(folder);
});

test('big logs come through whole', async () => {
  const folder = tempFolder();
  const shop = await openAt(folder);
  const big = randomBytes(1024 * 1024);
  writeFileSync(join(shop.folder.logs, '20260302-0900-01-tillermark.log'), big);
  const files = unzipSync(await problemReport(folder, facts));
  const kept = files['logs/20260302-0900-01-tillermark.log'] ?? new Uint8Array();
  expect(Buffer.from(kept).equals(big)).toBe(true);
});
