/**
 * The real window over the real core, with a data folder of its own.
 * Run by run.mjs, which builds first: node tests/desktop/desktop.ts WINDOW-PROGRAM
 */
import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright';

/** The first screen, ms: start of the program, first migration and a slow machine. */
const firstScreenPatience = 30_000;

interface Desktop {
  app: ElectronApplication;
  page: Page;
}

async function launch(scratch: string): Promise<Desktop> {
  const [executablePath] = process.argv.slice(2);
  assert.ok(executablePath, 'name the window program');
  const args = [
    join(import.meta.dirname, '../..'),
    `--data=${join(scratch, 'shop')}`,
    // A lock and cookies of its own: a Tillermark that is open on this machine is left alone.
    `--user-data-dir=${join(scratch, 'browser')}`,
  ];
  // Chromium has no sandbox for root, as in a build container.
  const chromiumSandbox = process.platform !== 'linux' || process.getuid?.() !== 0;
  const app = await _electron.launch({ executablePath, args, chromiumSandbox });
  return { app, page: await app.firstWindow() };
}

const tests: Record<string, (desktop: Desktop) => Promise<void>> = {
  'the window opens under its name and at least at its least size': async ({ app }) => {
    const window = await app.evaluate(({ BrowserWindow }) => {
      const [first] = BrowserWindow.getAllWindows();
      return { title: first?.getTitle(), least: first?.getMinimumSize() };
    });
    assert.match(window.title ?? '', /Tillermark/);
    assert.deepEqual(window.least, [1024, 700]);
  },

  'the page is ours and reaches the core: the first screen has its heading': async ({ page }) => {
    assert.equal(new URL(page.url()).protocol, 'tillermark:');
    const heading = page.getByRole('heading').first();
    await heading.waitFor({ timeout: firstScreenPatience });
    const port = await page.evaluate(
      () =>
        new Promise<boolean>((answer) => {
          window.addEventListener('message', ({ data, ports }) => {
            if (data === 'tillermark:core-port') answer(ports.length === 1);
          });
          setTimeout(() => answer(false), 5000);
          window.postMessage('tillermark:core-port-please', location.origin);
        }),
    );
    assert.ok(port, 'no port came back');
  },

  'the page is isolated and sandboxed': async ({ app }) => {
    const preferences = await app.evaluate(({ BrowserWindow }) => {
      const contents = BrowserWindow.getAllWindows()[0]?.webContents;
      // Electron has the method and leaves it out of its types.
      return (contents as unknown as { getLastWebPreferences(): object }).getLastWebPreferences();
    });
    const wanted = {
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
    };
    for (const [name, value] of Object.entries(wanted)) {
      assert.equal(Reflect.get(preferences, name), value, name);
    }
  },

  'the page has no Node, only what it was given': async ({ page }) => {
    const found = await page.evaluate(() => ({
      node: ['process', 'require', 'module', 'Buffer'].filter((name) => name in window),
      given: Object.keys(window.tillermarkDesktop ?? {}).sort(),
    }));
    assert.deepEqual(found, { node: [], given: ['chooseFolder', 'openPdf'] });
  },

  'a link opens outside and makes no window of ours': async ({ app, page }) => {
    await app.evaluate(({ shell }) => {
      const opened: string[] = [];
      Object.assign(globalThis, { opened });
      shell.openExternal = async (url) => void opened.push(url);
    });
    const link = 'https://example.org/';
    assert.equal(await page.evaluate((url) => window.open(url) === null, link), true);
    assert.equal(await page.evaluate(() => window.open('file:///') === null), true);
    assert.equal(app.windows().length, 1);
    assert.deepEqual(await app.evaluate(() => Reflect.get(globalThis, 'opened')), [link]);
  },

  'the page cannot be led elsewhere': async ({ page }) => {
    await page.evaluate(() => {
      location.href = 'https://example.org/';
    });
    await page.waitForTimeout(500);
    assert.equal(new URL(page.url()).protocol, 'tillermark:');
  },

  'the program ends when it is told to': async ({ app }) => {
    const program = app.process();
    assert.equal(program.exitCode, null);
    await app.close();
    assert.equal(program.exitCode, 0);
  },
};

async function main(): Promise<void> {
  const scratch = mkdtempSync(join(tmpdir(), 'tillermark-desktop-'));
  const count = { passed: 0, failed: 0 };
  try {
    const desktop = await launch(scratch);
    for (const [name, test] of Object.entries(tests)) {
      try {
        await test(desktop);
        count.passed++;
        console.log(`ok      ${name}`);
      } catch (error) {
        count.failed++;
        console.log(`FAILED  ${name}\n${error instanceof Error ? error.stack : error}`);
      }
    }
    if (desktop.app.process().exitCode === null) desktop.app.process().kill('SIGKILL');
  } catch (error) {
    count.failed++;
    console.log(`FAILED  the window did not open\n${error instanceof Error ? error.stack : error}`);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  console.log(`tests: ${count.passed} passed, ${count.failed} failed`);
  process.exitCode = count.failed === 0 ? 0 : 1;
}

await main();
