import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { hostFileOf } from '../../core/host/host-file.ts';
import { httpDoor } from '../support/doors.ts';
import { tempFolder } from '../support/temp-folder.ts';

function coreAt(dataFolder: string): Core {
  const core = new Core({ dataFolder });
  onTestFinished(() => core.close());
  return core;
}

test('a folder of other things asks for another one, and the choice opens the shop', async () => {
  const wrong = join(tempFolder(), 'holiday');
  mkdirSync(wrong);
  writeFileSync(join(wrong, 'photo.txt'), 'not a shop');
  const core = coreAt(wrong);
  await core.settled();
  const client = (await httpDoor(core)).client('');
  const status = await client.system.status();
  expect(status.startUp).toMatchObject({ phase: 'needs-you', reason: 'wrong-folder' });
  await expect(client.people.list()).rejects.toMatchObject({ code: 'NOT_READY' });
  await expect(client.system.resolve({ choice: 'restore-backup' })).rejects.toMatchObject({
    code: 'CONFLICT',
  });
  const right = join(tempFolder(), 'shop');
  const opened = await client.system.resolve({ choice: 'choose-folder', argument: right });
  expect(opened).toMatchObject({ startUp: { phase: 'ready' }, dataFolder: right, isNew: true });
});

test('a problem report can be saved while the shop cannot be opened', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'shop.sqlite'), 'garbage '.repeat(2000));
  const core = coreAt(folder);
  await core.settled();
  const client = (await httpDoor(core)).client('');
  expect((await client.system.status()).startUp).toMatchObject({ reason: 'corrupt' });
  const report = await client.system.problemReport();
  expect(report.size).toBeGreaterThan(100);
});

test('a second program on the same folder is told that the shop is open elsewhere', async () => {
  const folder = tempFolder();
  const first = coreAt(folder);
  await first.settled();
  const second = coreAt(folder);
  expect(await second.settled()).toMatchObject({ phase: 'needs-you', reason: 'locked' });
  await first.close();
  const client = (await httpDoor(second)).client('');
  expect((await client.system.resolve({ choice: 'try-again' })).startUp.phase).toBe('ready');
});

test('two people who answer a start-up screen at once open the shop once', async () => {
  const folder = tempFolder();
  const first = coreAt(folder);
  await first.settled();
  const second = coreAt(folder);
  await second.settled();
  await first.close();
  const door = await httpDoor(second);
  const answers = await Promise.allSettled(
    [door.client(''), door.client(''), door.client('')].map((client) =>
      client.system.resolve({ choice: 'try-again' }),
    ),
  );
  expect(answers.some((answer) => answer.status === 'fulfilled')).toBe(true);
  for (const answer of answers) {
    if (answer.status === 'rejected') expect(answer.reason).toMatchObject({ code: 'CONFLICT' });
  }
  expect((await second.status()).startUp.phase).toBe('ready');
});

test('the address of the program survives a restart, and only its owner can read it', async () => {
  const folder = tempFolder();
  const known = hostFileOf(folder);
  expect(hostFileOf(folder)).toEqual(known);
  expect(known.token).toMatch(/^[0-9a-f]{64}$/);
  if (process.platform === 'win32') return;
  expect(statSync(join(folder, 'host.json')).mode & 0o777).toBe(0o600);
});
