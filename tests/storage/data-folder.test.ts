import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dataFolderOf } from '../../core/storage/data-folder.ts';
import { takeWritingAway, tinyDisk } from '../support/limited-disk.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { openAt, refusedAt } from './open-test-shop.ts';

describe('the usual place', () => {
  const home = '/home/owner';
  test.each([
    ['linux', {}, '/home/owner/.local/share/tillermark'],
    ['linux', { XDG_DATA_HOME: '/data' }, '/data/tillermark'],
    ['linux', { XDG_DATA_HOME: '' }, '/home/owner/.local/share/tillermark'],
    ['linux', { XDG_DATA_HOME: 'relative' }, '/home/owner/.local/share/tillermark'],
    ['darwin', {}, '/home/owner/Library/Application Support/Tillermark'],
    ['win32', { APPDATA: '/roaming' }, '/roaming/Tillermark'],
  ] as const)('on %s with %o', (platform, env, place) => {
    expect(dataFolderOf({ env, platform, home })).toBe(place);
  });

  test('the command line goes before TILLERMARK_DATA, which goes before the usual place', () => {
    const env = { TILLERMARK_DATA: '/elsewhere' };
    expect(dataFolderOf({ argument: '/named', env, home })).toBe('/named');
    expect(dataFolderOf({ env, home })).toBe('/elsewhere');
  });

  test('a test that names no folder is refused', () => {
    expect(process.env.NODE_ENV).toBe('test');
    const env = { ...process.env };
    delete env.TILLERMARK_DATA;
    expect(() => dataFolderOf({ env })).toThrow('A test must name its data folder.');
  });
});

test('a folder that is not there yet is made, with its rooms', async () => {
  const folder = join(tempFolder(), 'new', 'shop');
  await openAt(folder);
  expect(readdirSync(folder)).toEqual(
    expect.arrayContaining(['shop.sqlite', 'shop.lock', 'backups', 'logs', 'attachments']),
  );
});

test('wrong folder: one that holds other things is refused and left without a trace', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'letter.txt'), 'Dear customer');
  const state = await refusedAt(folder);
  expect(state).toMatchObject({
    reason: 'wrong-folder',
    choices: ['choose-folder', 'try-again'],
    backups: [],
  });
  expect(readdirSync(folder)).toEqual(['letter.txt']);
});

test('what our host and the system leave in a folder does not make it wrong', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'host.json'), '{}');
  writeFileSync(join(folder, '.DS_Store'), '');
  expect((await openAt(folder)).isNew).toBe(true);
});

test('wrong folder: a file in its place, or on the way to it', async () => {
  const file = join(tempFolder(), 'a-file');
  writeFileSync(file, 'x');
  for (const path of [file, join(file, 'below')]) {
    const state = await refusedAt(path);
    expect(state.reason).toBe('wrong-folder');
    expect(state.sentence).toContain('is not a folder');
  }
});

test('a path with line breaks still gives a sentence that the contract carries', async () => {
  const file = join(tempFolder(), 'two\nlines');
  writeFileSync(file, 'x');
  expect((await refusedAt(file)).sentence).not.toContain('\n');
});

test.skipIf(process.platform !== 'linux')(
  'not writable: a folder that the kernel will not make (/proc)',
  async () => {
    expect((await refusedAt('/proc/tillermark')).reason).toBe('not-writable');
  },
);

test('not writable: a read-only folder (mode, or the immutable flag for root)', async (context) => {
  const folder = tempFolder();
  context.skip(!takeWritingAway(folder), 'this system cannot take writing away from this user');
  expect(await refusedAt(folder)).toMatchObject({
    reason: 'not-writable',
    choices: ['try-again', 'choose-folder'],
  });
  expect(readdirSync(folder)).toEqual([]);
});

test('not writable: a shop whose folder became read-only opens again afterwards', async (context) => {
  const folder = join(tempFolder(), 'shop');
  mkdirSync(folder);
  (await openAt(folder)).close();
  context.skip(!takeWritingAway(folder), 'this system cannot take writing away from this user');
  expect((await refusedAt(folder)).reason).toBe('not-writable');
  expect(existsSync(join(folder, 'shop.sqlite'))).toBe(true);
});

test('disk full: a disk without room for one byte (a tiny mounted disk)', async (context) => {
  const folder = tinyDisk(64);
  context.skip(folder === null, 'this user may not mount a tiny disk');
  if (folder === null) return;
  expect(() => writeFileSync(join(folder, '.fill'), Buffer.alloc(128 * 1024))).toThrow('ENOSPC');
  expect(await refusedAt(folder)).toMatchObject({ reason: 'disk-full', choices: ['try-again'] });
});
