import { existsSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { checkPaper } from '../../electron/paper.ts';
import { setupPrinting } from '../../electron/printing.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { ask, strangers } from './senders.ts';
import { app, resetStandIn, shell } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

const bytesOf = (text: string) => new TextEncoder().encode(text).buffer;
const pdf = bytesOf('%PDF-1.7\n');
const name = '26-0147 work order.pdf';
const openPdf = (...given: unknown[]) => ask('open-pdf', given);

beforeEach(() => {
  resetStandIn();
  app.paths.temp = tempFolder();
  setupPrinting();
});

test('a paper is written under its name, for this person only, and opened', async () => {
  expect(await openPdf(name, pdf)).toEqual({ ok: true });
  const [file = ''] = shell.opened;
  expect(basename(file)).toBe(name);
  expect(file.startsWith(`${app.paths.temp}/tillermark-papers-`)).toBe(true);
  expect(readFileSync(file, 'utf8')).toBe('%PDF-1.7\n');
  if (process.platform === 'win32') return;
  expect(statSync(file).mode & 0o077).toBe(0);
  expect(statSync(dirname(dirname(file))).mode & 0o077).toBe(0);
});

test('a second paper of the same name leaves the first as it was', async () => {
  await openPdf(name, pdf);
  await openPdf(name, bytesOf('%PDF-2.0\n'));
  const [first = '', second = ''] = shell.opened;
  expect(readFileSync(first, 'utf8')).toBe('%PDF-1.7\n');
  expect(readFileSync(second, 'utf8')).toBe('%PDF-2.0\n');
  expect(dirname(dirname(first))).toBe(dirname(dirname(second)));
});

test('the papers go when the program ends', async () => {
  await openPdf(name, pdf);
  const [file = ''] = shell.opened;
  expect(existsSync(file)).toBe(true);
  app.emit('quit');
  expect(existsSync(dirname(dirname(file)))).toBe(false);
});

test('without a viewer the person is told what to do', async () => {
  shell.problem = 'no application is registered';
  expect(await openPdf(name, pdf)).toEqual({
    ok: false,
    message: 'No program opened the paper: install a PDF viewer, or save the paper instead.',
  });
});

test('a folder that cannot be written is an answer, not a crash', async () => {
  app.paths.temp = '/nowhere/at/all';
  expect(await openPdf(name, pdf)).toMatchObject({ ok: false });
  expect(shell.opened).toEqual([]);
});

describe('names that are refused', () => {
  test.each([
    '../x.pdf',
    'a/b.pdf',
    'a\\b.pdf',
    '/etc/x.pdf',
    'C:x.pdf',
    '.pdf',
    ' .pdf',
    '.hidden.pdf',
    'x.exe',
    'x.pdf.exe',
    'x.pdf ',
    'x',
    '',
    'tab\t.pdf',
    'nul\0.pdf',
    'line\nend.pdf',
    'right\u202eleft.pdf',
    'line\u2028end.pdf',
    'what?.pdf',
    'NUL.pdf',
    'com1.pdf',
    `${'x'.repeat(117)}.pdf`,
    `${'弓'.repeat(90)}.pdf`,
    7,
    null,
    undefined,
    { toString: () => 'x.pdf' },
    ['x.pdf'],
  ])('%j', async (bad) => {
    expect(await openPdf(bad, pdf)).toMatchObject({ ok: false });
    expect(shell.opened).toEqual([]);
  });
});

test.each(['a.pdf', 'A.PDF', `${'x'.repeat(116)}.pdf`, '26-0147 étiquette 弓 (2).pdf'])(
  'the name %j is taken',
  (good) => expect(checkPaper(good, pdf).ok).toBe(true),
);

describe('content that is refused', () => {
  test.each([
    ['a page', bytesOf('<html>')],
    ['nothing', new ArrayBuffer(0)],
    ['a start cut short', bytesOf('%PDF')],
    ['a start that comes late', bytesOf(' %PDF-1.7')],
    ['text', '%PDF-1.7'],
    ['a list', [0x25, 0x50, 0x44, 0x46, 0x2d]],
    ['null', null],
  ])('%s', async (_what, bad) => {
    expect(await openPdf(name, bad)).toMatchObject({ ok: false });
    expect(shell.opened).toEqual([]);
  });

  test('a byte over 50 MB, and not a byte less', () => {
    const limit = 50 * 1024 * 1024;
    const big = new Uint8Array(limit + 1);
    big.set(new Uint8Array(pdf));
    expect(checkPaper(name, big.buffer)).toMatchObject({ ok: false });
    expect(checkPaper(name, big.buffer.slice(0, limit)).ok).toBe(true);
  });
});

test.each(strangers)('%s opens no paper', async (_who, from) => {
  await expect(ask('open-pdf', [name, pdf], from)).rejects.toThrow('may not ask');
  expect(shell.opened).toEqual([]);
});
