import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright';

const hostFile = fileURLToPath(new URL('../../core/host/node-main.ts', import.meta.url));
const installed = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

export interface Program {
  /** Address with the token, as the program prints it. */
  url: string;
  child: ChildProcess;
}

/** Starts the program as `npm start` does without a window, on the given data folder. Port 0 is any free one. */
export async function startProgram(dataFolder: string, port = '0'): Promise<Program> {
  const child = spawn(
    process.execPath,
    [hostFile, `--data=${dataFolder}`, `--port=${port}`, '--no-open'],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  for await (const line of createInterface({ input: child.stdout })) {
    const url = /http:\/\/\S+/.exec(line)?.[0];
    if (url !== undefined) return { url, child };
  }
  throw new Error('the program ended before it printed its address');
}

/** Ends it politely, or as a power cut would. */
export async function stopProgram(
  { child }: Program,
  signal: NodeJS.Signals = 'SIGTERM',
): Promise<void> {
  // One that ended by itself is not waited for.
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill(signal);
  await gone;
}

/** The installed Chromium, or the one that Playwright brought. */
export function openBrowser(): Promise<Browser> {
  const executablePath =
    process.env.TILLERMARK_CHROMIUM ?? installed.find((path) => existsSync(path));
  return chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
  });
}
