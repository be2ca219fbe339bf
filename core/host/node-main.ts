import { spawn } from 'node:child_process';
import { parseArgs } from 'node:util';
import { dataFolderOf } from '../storage/data-folder.ts';
import { startCore } from './core.ts';
import { hostFileOf } from './host-file.ts';
import { type HttpDoor, openHttpDoor } from './http-door.ts';

const { values } = parseArgs({
  options: {
    data: { type: 'string' },
    port: { type: 'string' },
    open: { type: 'boolean', default: false },
    'no-open': { type: 'boolean', default: false },
  },
});

function openBrowser(url: string): void {
  const [command, args] =
    process.platform === 'win32'
      ? ['cmd', ['/c', 'start', '', url]]
      : process.platform === 'darwin'
        ? ['open', [url]]
        : ['xdg-open', [url]];
  const child = spawn(command as string, args as string[], { stdio: 'ignore', detached: true });
  child.on('error', () => console.log('Open the address above in a browser.'));
  child.unref();
}

async function door(
  core: Awaited<ReturnType<typeof startCore>>,
  folder: string,
): Promise<HttpDoor> {
  const { token, port } = hostFileOf(folder);
  const wanted = values.port === undefined ? port : Number(values.port);
  try {
    return await openHttpDoor(core, { port: wanted, token });
  } catch (error) {
    const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
    if (!taken || values.port !== undefined) throw error;
    return openHttpDoor(core, { port: 0, token });
  }
}

const dataFolder = dataFolderOf({ argument: values.data });
const core = await startCore({ dataFolder });
const http = await door(core, dataFolder);
const address = `${http.url}#token=${hostFileOf(dataFolder).token}`;
console.log(`Tillermark is open at ${address}`);
if (values.open && !values['no-open']) openBrowser(address);

async function stop(): Promise<void> {
  await http.close();
  await core.close();
  process.exit(0);
}
process.on('SIGINT', stop);
process.on('SIGTERM', stop);
