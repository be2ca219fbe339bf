import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { setupProtocol, setupScheme } from '../../electron/protocol.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { app, protocol, resetStandIn } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

let get: (url: string, init?: RequestInit) => Promise<Response>;

beforeEach(async () => {
  resetStandIn();
  app.appPath = tempFolder();
  const renderer = join(app.appPath, 'dist/renderer');
  mkdirSync(join(renderer, 'assets'), { recursive: true });
  mkdirSync(join(app.appPath, 'dist/renderer-secret'));
  writeFileSync(join(renderer, 'index.html'), '<title>Tillermark</title>');
  writeFileSync(join(renderer, 'assets/a b.js'), 'export {};');
  writeFileSync(join(renderer, 'assets/read.wasm'), new Uint8Array([0, 97, 115, 109]));
  writeFileSync(join(app.appPath, 'package.json'), 'secret');
  writeFileSync(join(app.appPath, 'dist/renderer-secret/x.js'), 'secret');
  setupScheme();
  await app.whenReady();
  setupProtocol();
  get = async (url, init) => {
    const handler = protocol.handlers.get('tillermark');
    if (handler === undefined) throw new Error('no handler');
    return handler(new Request(url, init));
  };
});

test('the scheme is a first-class one before the app is ready', () => {
  expect(protocol.schemes).toEqual([
    { scheme: 'tillermark', privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
});

test.each([
  ['tillermark://app/', 'text/html; charset=utf-8'],
  ['tillermark://app/index.html', 'text/html; charset=utf-8'],
  ['tillermark://app/orders/26-0147', 'text/html; charset=utf-8'],
  ['tillermark://app/assets', 'text/html; charset=utf-8'],
  ['tillermark://app/assets/a%20b.js?v=1', 'text/javascript; charset=utf-8'],
  ['tillermark://app/assets/read.wasm', 'application/wasm'],
])('%s is served as %s', async (url, type) => {
  const response = await get(url);
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe(type);
  if (type.startsWith('text/html')) expect(await response.text()).toContain('<title>Tillermark');
});

test('bytes arrive whole', async () => {
  const response = await get('tillermark://app/assets/read.wasm');
  expect([...(await response.bytes())]).toEqual([0, 97, 115, 109]);
});

test('a missing file is missing, not the start page', async () => {
  const response = await get('tillermark://app/assets/gone.js');
  expect(response.status).toBe(404);
});

test.each([
  'tillermark://app/../package.json',
  'tillermark://app/..%2f..%2fpackage.json',
  'tillermark://app/%2e%2e/%2e%2e/package.json',
  'tillermark://app/assets/..%2f..%2f..%2fpackage.json',
  'tillermark://app/..%5c..%5cpackage.json',
  'tillermark://app/..%2frenderer-secret%2fx.js',
  'tillermark://app//etc/passwd.txt',
  'tillermark://app/C:%5cwindows%5cwin.ini',
  'tillermark://app/%00.js',
  'tillermark://app/%zz.js',
  'tillermark://elsewhere/index.html',
  'tillermark://app.elsewhere/index.html',
])('%s reaches nothing outside the page', async (url) => {
  const response = await get(url);
  expect([403, 404]).toContain(response.status);
  expect(await response.text()).not.toContain('secret');
});

test('only reading is served', async () => {
  expect((await get('tillermark://app/', { method: 'POST', body: 'x' })).status).toBe(405);
});

describe('the content policy', () => {
  test.each(['tillermark://app/', 'tillermark://app/assets/gone.js'])('of %s', async (url) => {
    const policy = (await get(url)).headers.get('content-security-policy')?.split('; ');
    expect(policy).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self' 'unsafe-inline'",
        "img-src 'self' blob: data:",
        "font-src 'self' data:",
        "connect-src 'self'",
        "worker-src 'self' blob:",
        'frame-src blob:',
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
      ]),
    );
  });
});
