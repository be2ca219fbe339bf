import { execFile, spawn } from 'node:child_process';
import {
  copyFileSync,
  mkdirSync,
  readFileSync,
  realpathSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  chooseWay,
  fetchWindowProgram,
  hostArguments,
  isStale,
  mayFetch,
  nodeRefusal,
  readArguments,
  reasonLine,
  windowArguments,
  windowProgram,
} from '../../start.mjs';
import { tempFolder } from '../support/temp-folder.ts';

function put(root: string, path: string, text: string): string {
  const file = join(root, path);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  return file;
}

test.each([
  ['20.19.0', false],
  ['22.17.1', false],
  ['22.18.0', true],
  ['23.5.0', false],
  ['24.0.0', true],
  ['26.10.0', true],
])('Node %s: %s', (version, isGood) => {
  const refusal = nodeRefusal(version);
  if (isGood) expect(refusal).toBeNull();
  else expect(refusal).toContain(version);
});

describe('the command line', () => {
  test('may be empty', () => {
    expect(readArguments([])).toEqual({ data: null, port: null, open: true, browser: false });
  });

  test('passes the folder, the port and no-open on', () => {
    expect(readArguments(['--data=/a b', '--port=4711', '--no-open', '--browser'])).toEqual({
      data: '/a b',
      port: '4711',
      open: false,
      browser: true,
    });
  });

  test.each(['--data=', '--data', '--port=http', '--port=123456', '--prot=1', 'shop'])(
    '%s is refused in one sentence',
    (argument) => {
      expect(readArguments([argument])).toEqual({
        problem: expect.stringContaining(`${argument} is not understood.`),
      });
    },
  );

  test('reaches the browser host and the window', () => {
    const options = { data: '/shop', port: '0', open: false, browser: false };
    expect(hostArguments(options)).toEqual(['--no-open', '--data=/shop', '--port=0']);
    expect(windowArguments('/root', options)).toEqual(['/root', '--data=/shop']);
    const none = { data: null, port: null, open: true, browser: false };
    expect(hostArguments(none)).toEqual(['--open']);
    expect(windowArguments('/root', none)).toEqual(['/root']);
  });
});

describe('window or browser', () => {
  const facts = {
    browserAsked: false,
    isRoot: false,
    hasScreen: true,
    hasWindowProgram: true,
    mayFetch: true,
  };
  test.each([
    [{}, { way: 'window' }],
    [{ browserAsked: true }, { way: 'browser', reason: 'asked' }],
    [{ isRoot: true }, { way: 'browser', reason: 'root' }],
    [{ hasScreen: false }, { way: 'browser', reason: 'no-screen' }],
    [{ hasWindowProgram: false }, { way: 'fetch' }],
    [
      { hasWindowProgram: false, mayFetch: false },
      { way: 'browser', reason: 'missing' },
    ],
    // Nothing is fetched that could not be shown.
    [
      { hasWindowProgram: false, isRoot: true },
      { way: 'browser', reason: 'root' },
    ],
    [
      { hasWindowProgram: false, hasScreen: false },
      { way: 'browser', reason: 'no-screen' },
    ],
  ])('%j', (given, way) => expect(chooseWay({ ...facts, ...given })).toEqual(way));

  test('the reason is one line', () => {
    expect(reasonLine('missing', true)).toBe(
      'No window program here, so Tillermark opens in your browser:',
    );
    expect(reasonLine('root', true)).toContain('refuses to run as root');
    expect(reasonLine('asked', false)).toBe('Tillermark waits for your browser:');
  });
});

describe('the window program', () => {
  test('is there when its note and its file are', () => {
    const root = tempFolder();
    expect(windowProgram(root)).toBeNull();
    put(root, 'node_modules/electron/path.txt', 'electron\n');
    expect(windowProgram(root)).toBeNull();
    const file = put(root, 'node_modules/electron/dist/electron', '');
    expect(windowProgram(root)).toBe(file);
  });

  function withInstaller(script: string): string {
    const root = tempFolder();
    put(root, 'node_modules/electron/package.json', '{"version":"45.5.0"}');
    put(root, 'node_modules/electron/install.js', script);
    return root;
  }

  test('is fetched by the installer of its package', async () => {
    const root = withInstaller(`
      const fs = require('node:fs');
      fs.mkdirSync(__dirname + '/dist');
      fs.writeFileSync(__dirname + '/dist/electron', '');
      fs.writeFileSync(__dirname + '/path.txt', 'electron');`);
    expect(mayFetch(root, {})).toBe(true);
    expect(await fetchWindowProgram(root, 10_000)).toBe(true);
    expect(windowProgram(root)).not.toBeNull();
  });

  test.each([
    ['fails', 'process.exit(1)', 10_000],
    ['does nothing', '', 10_000],
    ['never ends', 'setInterval(() => {}, 1000)', 300],
  ])('an installer that %s is tried once for its version', async (_what, script, patience) => {
    const root = withInstaller(script);
    expect(await fetchWindowProgram(root, patience)).toBe(false);
    expect(mayFetch(root, {})).toBe(false);
    put(root, 'node_modules/electron/package.json', '{"version":"45.6.0"}');
    expect(mayFetch(root, {})).toBe(true);
  });

  test('is not fetched where that is forbidden or the package is missing', () => {
    const root = withInstaller('');
    expect(mayFetch(root, { ELECTRON_SKIP_BINARY_DOWNLOAD: '1' })).toBe(false);
    expect(mayFetch(root, { ELECTRON_SKIP_BINARY_DOWNLOAD: '' })).toBe(true);
    expect(mayFetch(tempFolder(), {})).toBe(false);
  });
});

test('a build is due when it is missing or older than any source, however deep', () => {
  const root = tempFolder();
  const source = put(root, 'renderer/deep/er/page.tsx', '');
  expect(isStale(root, 'dist/index.html', ['renderer'])).toBe(true);
  const output = put(root, 'dist/index.html', '');
  utimesSync(source, 1000, 1000);
  utimesSync(output, 2000, 2000);
  expect(isStale(root, 'dist/index.html', ['renderer', 'no-such-folder'])).toBe(false);
  utimesSync(source, 3000, 3000);
  expect(isStale(root, 'dist/index.html', ['renderer'])).toBe(true);
});

describe('npm start, from a small program of the same shape', () => {
  function smallProgram(hostScript: string): string {
    const root = realpathSync(tempFolder());
    copyFileSync(join(import.meta.dirname, '../../start.mjs'), join(root, 'start.mjs'));
    put(root, 'renderer/vite.config.ts', '');
    put(root, 'core/host/node-main.ts', hostScript);
    put(
      root,
      'node_modules/vite/bin/vite.js',
      `const fs = require('node:fs');
       fs.appendFileSync('built.log', process.argv.slice(2).join(' ') + '\\n');
       fs.mkdirSync('dist/renderer', { recursive: true });
       fs.writeFileSync('dist/renderer/index.html', '');`,
    );
    return root;
  }

  const start = (root: string, ...given: string[]) =>
    new Promise<{ code: unknown; out: string; err: string }>((done) => {
      execFile(process.execPath, [join(root, 'start.mjs'), ...given], (error, out, err) =>
        done({ code: error === null ? 0 : error.code, out, err }),
      );
    });

  const echo = 'console.log(JSON.stringify(process.argv.slice(2))); process.exitCode = 7;';

  test('builds once, says why, runs the host and ends with its code', async () => {
    const root = smallProgram(echo);
    const given = ['--browser', '--no-open', '--data=/shop', '--port=0'];
    const first = await start(root, ...given);
    expect(first.out.split('\n')).toEqual([
      'Building the page, a moment ...',
      'Tillermark waits for your browser:',
      '["--no-open","--data=/shop","--port=0"]',
      '',
    ]);
    expect(first.code).toBe(7);
    const second = await start(root, ...given);
    expect(second.out).not.toContain('Building');
    expect(readFileSync(join(root, 'built.log'), 'utf8')).toBe(
      'build --config renderer/vite.config.ts\n',
    );
  });

  test('a build that fails is shown and nothing is opened', async () => {
    const root = smallProgram(echo);
    put(root, 'node_modules/vite/bin/vite.js', 'console.error("line 3"); process.exit(1);');
    const { code, out, err } = await start(root, '--browser');
    expect(code).toBe(1);
    expect(err).toContain('line 3');
    expect(err).toContain('could not be built');
    expect(out).not.toContain('--open');
  });

  test('an argument it does not know ends it before anything is built', async () => {
    const root = smallProgram(echo);
    const { code, out, err } = await start(root, '--brwoser');
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('--brwoser is not understood');
  });

  test.runIf(process.platform !== 'win32').each(['SIGINT', 'SIGTERM'] as const)(
    '%s reaches the host, which closes in its own way',
    async (signal) => {
      const root = smallProgram(
        `process.on('${signal}', () => process.exit(5)); setTimeout(() => {}, 5000); console.log('up');`,
      );
      const child = spawn(process.execPath, [join(root, 'start.mjs'), '--browser'], {
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      let out = '';
      child.stdout.on('data', (text: Buffer) => {
        out += text;
        if (out.includes('up')) child.kill(signal);
      });
      const code = await new Promise((done) => child.on('exit', done));
      expect(code).toBe(5);
    },
  );
});
