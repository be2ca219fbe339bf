import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { takeLock } from '../../core/storage/lock.ts';
import { child } from '../support/child.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { openAt, refusedAt } from './open-test-shop.ts';

test('a second holder is refused at once and may take it after the release', () => {
  const path = join(tempFolder(), 'shop.lock');
  const first = takeLock(path);
  const before = performance.now();
  expect(() => takeLock(path)).toThrow('already open');
  // Far below any busy timeout: it must not wait for the other.
  expect(performance.now() - before).toBeLessThan(1000);
  first.release();
  takeLock(path).release();
});

test('locked: another process holds the shop; killed, it holds it no longer', async () => {
  const folder = tempFolder();
  (await openAt(folder)).close();
  const holder = await child('storage/children/hold-lock.ts', join(folder, 'shop.lock'));
  expect(await refusedAt(folder)).toMatchObject({
    reason: 'locked',
    choices: ['try-again', 'choose-folder'],
  });
  await holder.kill();
  expect((await openAt(folder)).isNew).toBe(false);
});

test('locked: the same program opened twice', async () => {
  const folder = tempFolder();
  const first = await openAt(folder);
  expect((await refusedAt(folder)).reason).toBe('locked');
  first.close();
  await openAt(folder);
});

test('a refusal leaves the lock free', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'shop.sqlite'), 'not a database at all, only words'.repeat(40));
  expect((await refusedAt(folder)).reason).toBe('corrupt');
  takeLock(join(folder, 'shop.lock')).release();
});

test('a lock file that another program made is named, not removed', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'shop.lock'), 'somebody else was here'.repeat(40));
  const state = await refusedAt(folder);
  expect(state.reason).toBe('not-our-file');
  expect(state.sentence).toContain('shop.lock');
});
