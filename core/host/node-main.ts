import { spawn } from 'node:child_process';
import { parseArgs } from 'node:util';
import { dataFolderOf } from '../storage/data-folder.ts';
import { type Core, startCore } from './core.ts';
import { type HostFile, hostFileOf } from './host-file.ts';
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

/** The port asked for on the command line, or null where none was. */
function askedPort(): number | null {
  if (values.port === undefined) return null;
  const port = Number(values.port);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  console.error(`--port=${values.port} is no port. Give a number from 0 (any free one) to 65535.`);
  process.exit(1);
}

/** The usual port of this shop, or any free one where another program has it. */
async function openDoor(core: Core, { token, port }: HostFile): Promise<HttpDoor> {
  const asked = askedPort();
  try {
    return await openHttpDoor(core, { port: asked ?? port, token });
  } catch (error) {
    const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
    if (!taken || asked !== null) throw error;
    return openHttpDoor(core, { port: 0, token });
  }
}

const dataFolder = dataFolderOf({ argument: values.data });
const hostFile = hostFileOf(dataFolder);
const core = await startCore({ dataFolder });
const http = await openDoor(core, hostFile);
const address = `${http.url}#token=${hostFile.token}`;
console.log(`Tillermark is open at ${address}`);
if (values.open && !values['no-open']) openBrowser(address);

async function stop(): Promise<void> {
  await http.close();
  await core.close();
  process.exit(0);
}
process.on('SIGINT', stop);
process.on('SIGTERM', stop);
