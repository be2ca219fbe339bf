import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { onTestFinished } from 'vitest';

export interface Child {
  /** Ends it as a crash would, without any chance to tidy up. */
  kill(): Promise<void>;
}

/** Runs a program of its own under tests/ and waits until it has said "there". */
export async function child(file: string, ...args: string[]): Promise<Child> {
  const path = join(import.meta.dirname, '..', file);
  const running = spawn(process.execPath, [path, ...args], { stdio: ['ignore', 'pipe', 'pipe'] });
  const kill = async () => {
    if (running.exitCode !== null || running.signalCode !== null) return;
    running.kill('SIGKILL');
    await once(running, 'exit');
  };
  onTestFinished(kill);
  await said(running, 'there');
  return { kill };
}

async function said(running: ChildProcess, word: string): Promise<void> {
  if (running.stdout === null || running.stderr === null) throw new Error('no pipes');
  let trouble = '';
  running.stderr.on('data', (chunk) => {
    trouble += chunk;
  });
  for await (const line of createInterface({ input: running.stdout })) {
    if (line === word) return;
  }
  throw new Error(`the child ended before it said "${word}": ${trouble}`);
}
