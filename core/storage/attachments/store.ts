import { existsSync } from 'node:fs';
import { mkdir, open, readFile, rename, rm, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { ShopError } from '../../../shared/errors.ts';
import { syncFolder } from '../durable.ts';
import { sha256Of } from './hash.ts';
import { clearIncoming, incomingFolder, removeOrphans } from './sweep.ts';

/** Pictures made from an original: they can be made again at any time. */
export type Derived = 'thumb.webp' | 'screen.webp';

/**
 * Files by what is in them: an original lies under the SHA-256 of its bytes, byte for byte as it
 * came, and is never written over. Records refer to it by that hash.
 */
export class AttachmentStore {
  readonly #root: string;
  readonly #now: () => string;
  #written = 0;
  /** One hand at a time writes a file, and none while the sweep looks. */
  readonly #busy = new Map<string, Promise<void>>();
  #sweeping: Promise<unknown> = Promise.resolve();

  /** @param root the attachments folder of a data folder whose lock is held. */
  constructor(root: string, now: () => string) {
    this.#root = root;
    this.#now = now;
  }

  /** Where the original lies. */
  pathOf(sha256: string): string {
    return join(this.#root, sha256.slice(0, 2), sha256);
  }

  /** Keeps the bytes safe on disk before any record names them. Returns their hash. */
  async put(bytes: Uint8Array): Promise<string> {
    const sha256 = await sha256Of(bytes);
    await this.#sweeping;
    const before = this.#busy.get(sha256) ?? Promise.resolve();
    const mine = before.catch(() => undefined).then(() => this.#putOnce(sha256, bytes));
    this.#busy.set(sha256, mine);
    try {
      await mine;
    } finally {
      if (this.#busy.get(sha256) === mine) this.#busy.delete(sha256);
    }
    return sha256;
  }

  /** @throws ShopError STORAGE where the file is gone or is not what it was. */
  async read(sha256: string): Promise<Uint8Array> {
    const bytes = await readIfThere(this.pathOf(sha256));
    if (bytes === null) {
      throw new ShopError(
        'STORAGE',
        'This file is missing from the attachments folder of the shop. Copy the folder back from your own backup.',
      );
    }
    if ((await sha256Of(bytes)) !== sha256) {
      throw new ShopError(
        'STORAGE',
        'This file was damaged on the disk. Copy the attachments folder back from your own backup, or add the file again.',
      );
    }
    return bytes;
  }

  /** The kept picture, or a new one where there is none. */
  async derived(
    sha256: string,
    kind: Derived,
    make: () => Promise<Uint8Array>,
  ): Promise<Uint8Array> {
    const path = `${this.pathOf(sha256)}.${kind}`;
    const kept = await readIfThere(path);
    if (kept !== null && kept.length > 0) return kept;
    const bytes = await make();
    await this.#sweeping;
    await this.#write(path, bytes);
    return bytes;
  }

  /**
   * Removes what a cut-off run left behind, and originals that no record names and nobody touched
   * for 90 days. Call once, at start-up: what is being written waits until it is done.
   * @param isNamed whether a record names the hash, asked file by file.
   */
  async sweep(isNamed: (sha256: string) => Promise<boolean>): Promise<string[]> {
    const sweeping = this.#sweep(isNamed);
    this.#sweeping = sweeping.catch(() => undefined);
    return sweeping;
  }

  async #sweep(isNamed: (sha256: string) => Promise<boolean>): Promise<string[]> {
    await clearIncoming(this.#root);
    return removeOrphans(this.#root, this.#now(), isNamed);
  }

  async #putOnce(sha256: string, bytes: Uint8Array): Promise<void> {
    const path = this.pathOf(sha256);
    const there = await readIfThere(path);
    if (there !== null) {
      if ((await sha256Of(there)) === sha256) {
        // Young again: the record that will name it is not written yet.
        const now = new Date(this.#now());
        await utimes(path, now, now);
        return;
      }
      await setAside(path);
    }
    await this.#write(path, bytes);
  }

  /** Whole or not at all: a cut leaves only a file in the incoming folder. */
  async #write(path: string, bytes: Uint8Array): Promise<void> {
    this.#written += 1;
    const incoming = join(this.#root, incomingFolder);
    const temporary = join(incoming, `${process.pid}-${this.#written}`);
    await mkdir(incoming, { recursive: true });
    try {
      const handle = await open(temporary, 'wx');
      try {
        await handle.writeFile(bytes);
        await handle.sync();
      } finally {
        await handle.close();
      }
      const folder = dirname(path);
      const isNew = !existsSync(folder);
      if (isNew) await mkdir(folder, { recursive: true });
      await rename(temporary, path);
      syncFolder(folder);
      if (isNew) syncFolder(this.#root);
    } catch (error) {
      await rm(temporary, { force: true });
      throw error;
    }
  }
}

async function readIfThere(path: string): Promise<Uint8Array | null> {
  try {
    return await readFile(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

/** Bytes that no longer fit their name are kept under another: a person may still need them. */
async function setAside(path: string): Promise<void> {
  let aside = `${path}.damaged`;
  for (let n = 2; existsSync(aside); n += 1) aside = `${path}.damaged-${n}`;
  await rename(path, aside);
}
