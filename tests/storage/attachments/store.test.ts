import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sha256Of } from '../../../core/storage/attachments/hash.ts';
import { AttachmentStore } from '../../../core/storage/attachments/store.ts';
import { child } from '../../support/child.ts';
import { tempFolder } from '../../support/temp-folder.ts';

const at = '2026-03-02T09:00:00.000Z';
const upper = Buffer.from('upper limb');
/** `printf 'upper limb' | sha256sum` */
const upperHash = 'a7f1899a2980bf1698f26e64c95bf99da785f2e123575f21497e8d9eaab0eff0';

function store(): { files: AttachmentStore; root: string } {
  const root = tempFolder();
  return { files: new AttachmentStore(root, () => at), root };
}

function everything(root: string): string[] {
  return readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1))
    .sort();
}

function age(path: string, days: number): void {
  const then = new Date(Date.parse(at) - days * 86_400_000);
  utimesSync(path, then, then);
}

describe('keeping', () => {
  test('the original lies under its hash, byte for byte', async () => {
    const { files, root } = store();
    const sha256 = await files.put(upper);
    expect(sha256).toBe(upperHash);
    expect(everything(root)).toEqual([`${sha256.slice(0, 2)}/${sha256}`]);
    expect(readFileSync(files.pathOf(sha256))).toEqual(upper);
    expect(Buffer.from(await files.read(sha256))).toEqual(upper);
  });

  test('the same bytes are written once, also when they come all at once', async () => {
    const { files, root } = store();
    const first = await files.put(upper);
    const { ino } = statSync(files.pathOf(first));
    const again = await Promise.all(Array.from({ length: 8 }, () => files.put(upper)));
    expect(new Set(again)).toEqual(new Set([first]));
    expect(statSync(files.pathOf(first)).ino).toBe(ino);
    expect(everything(root)).toHaveLength(1);
  });

  test('a file that no longer fits its name is set aside, not written over', async () => {
    const { files } = store();
    const sha256 = await files.put(upper);
    writeFileSync(files.pathOf(sha256), 'upper limx');
    await expect(files.read(sha256)).rejects.toMatchObject({ code: 'STORAGE' });
    await files.put(upper);
    expect(Buffer.from(await files.read(sha256))).toEqual(upper);
    expect(readFileSync(`${files.pathOf(sha256)}.damaged`, 'utf8')).toBe('upper limx');
  });

  test('a missing file says what to do', async () => {
    const { files } = store();
    await expect(files.read('a'.repeat(64))).rejects.toMatchObject({
      code: 'STORAGE',
      message: expect.stringContaining('Copy the folder back'),
    });
  });

  test.skipIf(process.getuid?.() === 0)(
    'a folder that cannot be written leaves nothing',
    async () => {
      const { files, root } = store();
      chmodSync(root, 0o500);
      await expect(files.put(upper)).rejects.toMatchObject({ code: 'EACCES' });
      chmodSync(root, 0o700);
      expect(everything(root)).toEqual([]);
    },
  );

  test('a write that fails half-way leaves nothing', async () => {
    const { files, root } = store();
    const sha256 = await files.put(upper);
    const other = store();
    // A file where the folder of this hash belongs stops the rename.
    writeFileSync(join(other.root, sha256.slice(0, 2)), 'in the way');
    await expect(other.files.put(upper)).rejects.toThrow();
    expect(everything(other.root)).toEqual([sha256.slice(0, 2)]);
    expect(everything(root)).toHaveLength(1);
  });
});

test('killed at any moment, what lies under a hash is whole, and the next start tidies up', async () => {
  const root = tempFolder();
  for (const waitMs of [0, 3, 7, 12]) {
    const writing = await child('storage/children/put-files.ts', root);
    await new Promise((resolve) => setTimeout(resolve, waitMs));
    await writing.kill();
    for (const name of everything(root).filter((each) => !each.startsWith('incoming'))) {
      expect(await sha256Of(readFileSync(join(root, name)))).toBe(name.split('/')[1]);
    }
  }
  const files = new AttachmentStore(root, () => at);
  await files.sweep(async () => true);
  expect(everything(root).filter((name) => name.startsWith('incoming'))).toEqual([]);
  expect(everything(root).length).toBeGreaterThanOrEqual(3);
});

describe('pictures made from an original', () => {
  test('are kept beside it, used again, and made again where they are gone', async () => {
    const { files, root } = store();
    const sha256 = await files.put(upper);
    let made = 0;
    const make = async () => {
      made += 1;
      return Buffer.from(`picture ${made}`);
    };
    const ask = async () => Buffer.from(await files.derived(sha256, 'thumb.webp', make)).toString();
    expect(await ask()).toBe('picture 1');
    expect(await ask()).toBe('picture 1');
    const path = `${files.pathOf(sha256)}.thumb.webp`;
    expect(everything(root)).toHaveLength(2);
    writeFileSync(path, '');
    expect(await ask()).toBe('picture 2');
    expect(readFileSync(path, 'utf8')).toBe('picture 2');
  });
});

describe('the sweep at start-up', () => {
  test('removes what was cut off while it was written', async () => {
    const { root } = store();
    mkdirSync(join(root, 'incoming'));
    writeFileSync(join(root, 'incoming', '123-1'), 'half a photogr');
    const files = new AttachmentStore(root, () => at);
    await files.sweep(async () => false);
    expect(everything(root)).toEqual([]);
    await files.put(upper);
    expect(everything(root)).toHaveLength(1);
  });

  test('removes an orphan with its pictures after 90 days, and not a day before', async () => {
    const { files, root } = store();
    const old = await files.put(Buffer.from('old'));
    await files.derived(old, 'thumb.webp', async () => Buffer.from('old, small'));
    const young = await files.put(Buffer.from('young'));
    const named = await files.put(Buffer.from('named'));
    age(files.pathOf(old), 91);
    age(files.pathOf(young), 89);
    age(files.pathOf(named), 400);
    expect(await files.sweep(async (sha256) => sha256 === named)).toEqual([old]);
    expect(everything(root)).toEqual(
      [young, named].map((sha256) => `${sha256.slice(0, 2)}/${sha256}`).sort(),
    );
  });

  test('a file that is added again while it waits to be swept is kept', async () => {
    const { files } = store();
    const sha256 = await files.put(upper);
    age(files.pathOf(sha256), 91);
    await files.put(upper);
    expect(await files.sweep(async () => false)).toEqual([]);
    expect(existsSync(files.pathOf(sha256))).toBe(true);
  });

  test('a file that comes while the sweep looks is written after it', async () => {
    const { files } = store();
    const sha256 = await files.put(upper);
    age(files.pathOf(sha256), 91);
    const sweeping = files.sweep(async () => {
      await new Promise((resolve) => setTimeout(resolve, 30));
      return false;
    });
    const again = files.put(upper);
    expect(await sweeping).toEqual([sha256]);
    await again;
    expect(Buffer.from(await files.read(sha256))).toEqual(upper);
  });

  test('leaves everything alone that is not its own', async () => {
    const { files, root } = store();
    mkdirSync(join(root, 'ab'));
    for (const name of ['ab/notes.txt', 'read me', `ab/${'c'.repeat(64)}`]) {
      writeFileSync(join(root, name), 'mine');
      age(join(root, name), 1000);
    }
    expect(await files.sweep(async () => false)).toEqual([]);
    expect(everything(root)).toHaveLength(3);
  });
});
