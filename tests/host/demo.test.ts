import { cpSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { demoFolderOf } from '../../core/host/demo.ts';
import { startProgram, stopProgram } from '../e2e/program.ts';
import { type Client, httpClient, httpDoor } from '../support/doors.ts';
import { shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { tempFolder } from '../support/temp-folder.ts';

const patience = 300_000;

async function programAt(dataFolder: string): Promise<{ core: Core; client: Client }> {
  const core = new Core({ dataFolder });
  onTestFinished(() => core.close());
  await core.settled();
  return { core, client: (await httpDoor(core)).client('') };
}

/** Until the demo shop is this far. */
async function filledTo(client: Client, share: number): Promise<void> {
  await vi.waitFor(
    async () => {
      const { startUp } = await client.system.status();
      if (startUp.phase === 'ready') return;
      expect(startUp).toMatchObject({ phase: 'filling-demo' });
      if (startUp.phase === 'filling-demo') expect(startUp.done).toBeGreaterThanOrEqual(share);
    },
    { timeout: patience, interval: 100 },
  );
}

/** Records and files of the shop's own folder; logs and the lock tell nothing of either. */
const kept = (folder: string) =>
  readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => !/^(logs|shop\.(lock|sqlite-))/.test(name))
    .sort();

/** A program of its own that is ended as a power cut would, with the demo shop half made. */
async function killedHalfway(own: string): Promise<void> {
  const program = await startProgram(own);
  onTestFinished(() => {
    program.child.kill('SIGKILL');
  });
  const token = new URL(program.url).hash.replace('#token=', '');
  const client = httpClient(new URL('/', program.url).href, token, '');
  await vi.waitFor(async () => expect((await client.system.status()).isNew).toBe(true), {
    timeout: 20_000,
  });
  await client.system.openDemo();
  await filledTo(client, 0.12);
  await stopProgram(program, 'SIGKILL');
}

test('a filling that is cut off is made anew, and the own folder stays as it was', {
  timeout: patience,
}, async () => {
  const own = join(tempFolder(), 'shop');
  await killedHalfway(own);
  expect(kept(demoFolderOf(own))).toContain('shop.sqlite');
  const { core, client } = await programAt(own);
  const before = kept(own);
  expect(await client.system.openDemo()).toMatchObject({ dataFolder: demoFolderOf(own) });
  await filledTo(client, 0.12);
  await expect(client.people.list()).rejects.toMatchObject({ code: 'NOT_READY' });
  expect(await client.system.leaveDemo()).toMatchObject({
    dataFolder: own,
    isNew: true,
    demoTrouble: null,
  });
  expect(kept(demoFolderOf(own))).toContain('.tillermark-demo.json');

  await client.system.openDemo();
  await core.settled();
  expect(await client.system.status()).toMatchObject({ startUp: { phase: 'ready' }, isNew: false });
  expect(await client.shop.get()).toMatchObject({ isDemo: true });
  const people = await client.people.list();
  const orders = await (await httpDoor(core))
    .client(people[0]?.id ?? '')
    .orders.board({ includeClosed: true });
  expect(new Set(orders.map((order) => order.number)).size).toBe(orders.length);
  expect(orders.length).toBeGreaterThan(25);
  await expect(client.system.openDemo()).rejects.toMatchObject({ code: 'CONFLICT' });

  expect(await client.system.leaveDemo()).toMatchObject({ dataFolder: own, isNew: true });
  await expect(client.system.leaveDemo()).rejects.toMatchObject({ code: 'CONFLICT' });
  expect(kept(own)).toEqual(before);
  await client.system.openDemo();
  await core.settled();
  expect(await client.people.list()).toEqual(people);

  // Opened by its own name it still says what it is, and leads back.
  const copy = `${join(tempFolder(), 'other')} demo`;
  await core.close();
  cpSync(demoFolderOf(own), copy, { recursive: true });
  const direct = await programAt(copy);
  expect(await direct.client.shop.get()).toMatchObject({ isDemo: true });
  expect(await direct.client.system.leaveDemo()).toMatchObject({
    dataFolder: copy.replace(/ demo$/, ''),
    isNew: true,
  });
});

test('a folder that is in the way is told and left alone', async () => {
  const own = join(tempFolder(), 'shop');
  const { core, client } = await programAt(own);
  mkdirSync(demoFolderOf(own));
  writeFileSync(join(demoFolderOf(own), 'photo.txt'), 'not a demo');
  await client.system.openDemo();
  await core.settled();
  const status = await client.system.status();
  expect(status).toMatchObject({ dataFolder: own, isNew: true, startUp: { phase: 'ready' } });
  expect(status.demoTrouble).toMatch(/in the way/);
  expect(readdirSync(demoFolderOf(own))).toEqual(['photo.txt']);
});

test('a shop with people in it is not left for the demo', async () => {
  const own = join(tempFolder(), 'shop');
  const { client } = await programAt(own);
  await client.setup.openShop({
    commandId: newCommandId(),
    shop: shopFields,
    owner: { name: 'Ida Penn', initials: 'IP' },
  });
  await expect(client.system.openDemo()).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(client.system.leaveDemo()).rejects.toMatchObject({ code: 'CONFLICT' });
  expect(await client.shop.get()).toMatchObject({ isDemo: false });
});

test('from a shop that cannot be opened the demo can still be looked at', async () => {
  const own = tempFolder();
  writeFileSync(join(own, 'shop.sqlite'), 'garbage '.repeat(2000));
  const { core, client } = await programAt(own);
  expect((await client.system.status()).startUp.phase).toBe('needs-you');
  await client.system.openDemo();
  await filledTo(client, 0);
  expect(await client.system.leaveDemo()).toMatchObject({
    dataFolder: own,
    startUp: { phase: 'needs-you', reason: 'corrupt' },
  });
  await core.settled();
});
