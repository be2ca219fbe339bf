import { execFile } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { promisify } from 'node:util';
import vm from 'node:vm';
import { Worker } from 'node:worker_threads';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { buildDesktop } from '../../electron/build.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { usualBenchPolicy } from '../../shared/bench-policy.ts';
import { tagSample } from '../core/papers/sample-data.ts';
import { longbowInput } from '../support/plan-input.ts';
import { tempFolder } from '../support/temp-folder.ts';

const root = join(import.meta.dirname, '../..');
let built: string;

beforeAll(async () => {
  // Inside the project, so that the built files find their packages.
  mkdirSync(join(root, 'tests/output'), { recursive: true });
  built = mkdtempSync(join(root, 'tests/output/desktop-'));
  await buildDesktop(built);
});
afterAll(() => rmSync(built, { recursive: true, force: true }));

const text = (name: string) => readFileSync(join(built, name), 'utf8');

/** Every module a built file asks for when it runs. */
const asked = (code: string) =>
  [
    ...code.matchAll(/^import .*? from "([^"]+)"/gm),
    ...code.matchAll(/^} from "([^"]+)"/gm),
    ...code.matchAll(/^import "([^"]+)"/gm),
    ...code.matchAll(/\bimport\("([^"]+)"\)/g),
    ...code.matchAll(/\brequire\("([^"]+)"\)/g),
  ].map(([, name = '']) => name);

describe('the preload', () => {
  test('is one plain script that requires electron and nothing else', () => {
    const code = text('preload.cjs');
    expect(asked(code)).toEqual(['electron']);
    expect(code).not.toMatch(/^\s*(import|export)\b/m);
    expect(() => new vm.Script(code)).not.toThrow();
  });

  /** Runs the built file as a sandboxed preload would be, in a page of our own. */
  function runPreload() {
    const pageListeners: ((event: { source: unknown; data: unknown }) => void)[] = [];
    const mainListeners: Record<string, (event: { ports: unknown[] }) => void> = {};
    const window = {
      addEventListener: (_: string, listener: (typeof pageListeners)[number]) =>
        pageListeners.push(listener),
      postMessage: vi.fn(),
    };
    const electron = {
      contextBridge: { exposeInMainWorld: vi.fn() },
      ipcRenderer: {
        send: vi.fn(),
        invoke: vi.fn(async () => ({ ok: true })),
        on: (channel: string, listener: (event: { ports: unknown[] }) => void) => {
          mainListeners[channel] = listener;
        },
      },
    };
    vm.runInNewContext(text('preload.cjs'), {
      require: () => electron,
      window,
      location: { origin: 'tillermark://app' },
    });
    const say = (source: unknown, data: unknown) => {
      for (const listener of pageListeners) listener({ source, data });
    };
    return { window, electron, say, mainListeners };
  }

  test('asks for a port for its own page only', () => {
    const { window, electron, say } = runPreload();
    say({ a: 'frame or opener' }, 'tillermark:core-port-please');
    say(null, 'tillermark:core-port-please');
    say(window, 'something else');
    expect(electron.ipcRenderer.send).not.toHaveBeenCalled();
    say(window, 'tillermark:core-port-please');
    expect(electron.ipcRenderer.send.mock.calls).toEqual([['core-port-please']]);
  });

  test('hands the port to its own origin and to no other', () => {
    const { window, mainListeners } = runPreload();
    const port = { a: 'port' };
    mainListeners['core-port']?.({ ports: [port] });
    mainListeners['core-port']?.({ ports: [] });
    expect(window.postMessage.mock.calls).toEqual([
      ['tillermark:core-port', 'tillermark://app', [port]],
    ]);
  });

  test('offers the page two things and no more', async () => {
    const { electron } = runPreload();
    const [name, offered] = electron.contextBridge.exposeInMainWorld.mock.calls[0] ?? [];
    expect(name).toBe('tillermarkDesktop');
    expect(Object.keys(offered)).toEqual(['openPdf', 'chooseFolder']);
    const bytes = new ArrayBuffer(4);
    await offered.openPdf('a.pdf', bytes);
    await offered.chooseFolder('ignored');
    expect(electron.ipcRenderer.invoke.mock.calls).toEqual([
      ['open-pdf', 'a.pdf', bytes],
      ['choose-folder'],
    ]);
  });
});

describe.each(['main.js', 'core-utility.mjs', 'paper-worker.mjs'])('%s', (file) => {
  test('leaves every package outside', () => {
    const code = text(file);
    const ours = asked(code).filter((name) => name.startsWith('.'));
    expect(ours).toEqual([]);
    expect(asked(code).length).toBeGreaterThan(2);
    expect(code).not.toContain('node_modules/');
  });

  test('asks only for Node, Electron and packages', () => {
    const packages = asked(text(file)).filter(
      (name) => !name.startsWith('node:') && !builtinModules.includes(name) && name !== 'electron',
    );
    for (const name of packages) expect(name).toMatch(/^(@[\w-]+\/)?[\w-]+(\/[\w-]+)*$/);
  });
});

test('the main process asks for nothing but Node and Electron', () => {
  const others = asked(text('main.js')).filter((name) => !name.startsWith('node:'));
  expect(new Set(others)).toEqual(new Set(['electron']));
});

test.each(['better-sqlite3', 'kysely', 'zod', 'pino'])(
  '%s stays outside the core process',
  (name) => expect(asked(text('core-utility.mjs'))).toContain(name),
);

test('pdfkit stays outside the paper worker', () => {
  expect(asked(text('paper-worker.mjs'))).toContain('pdfkit');
});

test('the core process knows no Electron', () => {
  expect(asked(text('core-utility.mjs'))).not.toContain('electron');
});

test('the built paper worker draws a paper in our own font', async () => {
  const worker = new Worker(join(built, 'paper-worker.mjs'));
  onTestFinished(async () => void (await worker.terminate()));
  worker.postMessage({ id: 1, job: { kind: 'shipping-tag', data: tagSample } });
  const [answer] = await once(worker, 'message');
  expect(answer).toMatchObject({ id: 1, pdf: {} });
  expect(Buffer.from(answer.pdf.bytes).toString('latin1')).toMatch(/^%PDF-.*FontFile2/s);
});

test('the limb worker asks for Node and zod alone, and answers', async () => {
  expect(asked(text('limb-worker.mjs')).toSorted()).toEqual(['node:worker_threads', 'zod']);
  const worker = new Worker(join(built, 'limb-worker.mjs'));
  onTestFinished(async () => void (await worker.terminate()));
  const rules = { limits: usualBenchPolicy.limits, stripThou: 1.4 };
  const asking = { input: longbowInput, detail: 'sliding' };
  worker.postMessage({ id: 1, job: { kind: 'reckon', what: { asked: asking, rules } } });
  const [answer] = await once(worker, 'message');
  expect(answer).toMatchObject({ id: 1, answer: { recommended: 'narrowing' } });
});

test('the built core process opens a shop, answers through a port and ends', async () => {
  const data = join(tempFolder(), 'shop');
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [
      '--import',
      join(import.meta.dirname, 'core-in-node.ts'),
      join(built, 'core-utility.mjs'),
      `--data=${data}`,
    ],
    { timeout: 15_000 },
  );
  expect(JSON.parse(stdout)).toMatchObject({
    version: packageJson.version,
    dataFolder: data,
    startUp: { phase: 'ready' },
  });
});
