import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { ShopError } from '../../shared/errors.ts';
import type { StartUpState } from '../../shared/start-up.ts';
import { z } from '../../shared/zod.ts';
import { dayOf } from '../shop/day.ts';
import type { OpenShop } from '../storage/context.ts';
import { folderAt, makeFolder } from '../storage/data-folder.ts';
import { takeLock } from '../storage/lock.ts';
import { StartUpRefusal } from '../storage/start-up-refusal.ts';

const suffix = ' demo';
/** Written first into the folder of a demo shop: only a folder that has it is ever emptied. */
const markerName = '.tillermark-demo.json';
const marker = z.object({ state: z.enum(['filling', 'filled']), on: z.iso.date().max(10) });
type Marker = z.infer<typeof marker>;

/** The demo shop lies beside the shop's own folder, never in it. */
export function demoFolderOf(dataFolder: string): string {
  return `${resolve(dataFolder)}${suffix}`;
}

/** The shop's own folder that a demo folder lies beside; null where it is no demo folder. */
export function ownFolderOf(demoFolder: string): string | null {
  const full = resolve(demoFolder);
  const ours = full.endsWith(suffix) && readMarker(full) !== null;
  return ours ? full.slice(0, -suffix.length) : null;
}

function readMarker(root: string): Marker | null {
  try {
    return marker.parse(JSON.parse(readFileSync(join(root, markerName), 'utf8')));
  } catch {
    return null;
  }
}

function writeMarker(root: string, content: Marker): void {
  writeFileSync(join(root, markerName), JSON.stringify(content), { flush: true });
}

/** Empties a demo folder, unless somebody else has it open. */
function emptyOut(root: string): void {
  const lock = takeLock(folderAt(root).lock);
  try {
    for (const name of readdirSync(root)) {
      if (name === markerName || name.startsWith('shop.lock')) continue;
      rmSync(join(root, name), { recursive: true, force: true });
    }
  } finally {
    lock.release();
  }
}

/**
 * Makes the folder of the demo shop, or clears one whose filling was cut off. Answers whether it
 * is still to be filled.
 * @throws StartUpRefusal wrong-folder where it holds what no demo put there, locked where another
 * program has it open.
 */
export function prepareDemoFolder(root: string, now: string): { mustFill: boolean } {
  const known = existsSync(root) ? readMarker(root) : null;
  if (known?.state === 'filled') return { mustFill: false };
  if (known === null && existsSync(root) && readdirSync(root).length > 0) {
    throw new StartUpRefusal(
      'wrong-folder',
      `The folder ${root} is in the way of the demo shop. Rename it, then try again.`,
    );
  }
  makeFolder(root);
  if (known !== null) emptyOut(root);
  writeMarker(root, { state: 'filling', on: dayOf(now) });
  return { mustFill: true };
}

/** Why there is no demo shop, in words a person can act on. */
export function demoTroubleOf(error: unknown): string {
  const told = error instanceof ShopError || error instanceof StartUpRefusal;
  return told
    ? error.message.replaceAll(/\p{Cc}/gu, ' ').slice(0, 1000)
    : 'The demo shop could not be made. Check the disk, then try again; your own shop is not touched.';
}

export interface FillOptions {
  root: string;
  onState(state: StartUpState): void;
  signal: AbortSignal;
}

/** Fills the demo shop up to today. @throws what the signal was aborted with. */
export async function fillDemo(shop: OpenShop, options: FillOptions): Promise<void> {
  const today = dayOf(shop.now());
  // Loaded when it is asked for: most shops never do.
  const { furnishDemo } = await import('../../demo-data/furnish.ts');
  await furnishDemo(shop, {
    today,
    onProgress: async (done, words) => {
      options.onState({ phase: 'filling-demo', done, words });
      // Lets the doors answer, and a person change their mind, between two steps.
      await new Promise((next) => setImmediate(next));
      options.signal.throwIfAborted();
    },
  });
  writeMarker(options.root, { state: 'filled', on: today });
}
