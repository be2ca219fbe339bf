import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { type Client, httpClient, portClient, token } from '../support/doors.ts';
import { customerFields, shopFields } from '../support/fixtures.ts';
import { seededRandom } from '../support/random.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { newCommandId } from '../support/test-shop.ts';

/** `npm run campaign` asks for more. */
const kills = Number(process.env.TILLERMARK_KILLS ?? 50);
const childFile = fileURLToPath(new URL('core-child.ts', import.meta.url));

interface RunningCore {
  child: ChildProcess;
  url: string;
}

async function start(folder: string): Promise<RunningCore> {
  const child = fork(childFile, [folder, token], { serialization: 'advanced', stdio: 'ignore' });
  const [first] = (await once(child, 'message')) as [string];
  const { url } = JSON.parse(first) as { url: string };
  return { child, url };
}

/** The parent's end of the child's channel, in the shape of a message port. */
function childPort(child: ChildProcess) {
  return {
    addEventListener(type: string, listener: (event: { data?: unknown }) => void) {
      if (type === 'message') child.on('message', (data) => listener({ data }));
      if (type === 'close') child.on('exit', () => listener({}));
    },
    postMessage(data: unknown) {
      if (child.connected) child.send(data as string, () => {});
    },
  };
}

interface Sent {
  commandId: string;
  name: string;
  acknowledged: boolean;
}

/** Sends one command after another until the core dies under it. */
async function stream(client: Client, label: string, sent: Sent[]): Promise<void> {
  for (;;) {
    const command = {
      commandId: newCommandId(),
      name: `${label} ${sent.length}`,
      acknowledged: false,
    };
    sent.push(command);
    try {
      await client.customers.add({
        commandId: command.commandId,
        ...customerFields,
        name: command.name,
      });
      command.acknowledged = true;
    } catch {
      return;
    }
  }
}

async function kill({ child }: RunningCore): Promise<void> {
  const gone = once(child, 'exit');
  child.kill('SIGKILL');
  await gone;
}

/** Names stored in the file, read by a connection of the test's own. */
function storedNames(folder: string): string[] {
  const db = new Database(`${folder}/shop.sqlite`, { readonly: true });
  const rows = db.prepare('SELECT name FROM customer').all() as { name: string }[];
  const check = db.pragma('quick_check', { simple: true });
  db.close();
  expect(check).toBe('ok');
  return rows.map((row) => row.name);
}

test(`killed at ${kills} random moments: every acknowledged command is there, none twice after retry`, async () => {
  const random = seededRandom(20_261_125);
  const folder = tempFolder();
  const sent: Sent[] = [];
  let personId = '';
  for (let round = 0; round < kills; round += 1) {
    const core = await start(folder);
    if (personId === '') {
      const setup = {
        commandId: newCommandId(),
        shop: shopFields,
        owner: { name: 'Ida Penn', initials: 'IP' },
      };
      personId = (await httpClient(core.url, token, '').setup.openShop(setup)).personId;
    }
    const overHttp = httpClient(core.url, token, personId);
    const overPort = portClient(childPort(core.child) as never, personId);
    const lost = sent.filter((command) => !command.acknowledged);
    for (const [i, command] of lost.entries()) {
      const client = i % 2 === 0 ? overHttp : overPort;
      await client.customers.add({
        commandId: command.commandId,
        ...customerFields,
        name: command.name,
      });
      command.acknowledged = true;
    }
    const streams = [
      stream(overHttp, 'http', sent),
      stream(overHttp, 'http again', sent),
      stream(overPort, 'port', sent),
    ];
    await new Promise((resolve) => setTimeout(resolve, random() * 120));
    await kill(core);
    await Promise.all(streams);
  }
  const names = storedNames(folder);
  const acknowledged = sent
    .filter((command) => command.acknowledged)
    .map((command) => command.name);
  expect(acknowledged.length).toBeGreaterThan(kills * 3);
  expect(acknowledged.filter((name) => !names.includes(name))).toEqual([]);
  expect(new Set(names).size).toBe(names.length);
});
