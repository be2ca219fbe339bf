import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest';
import { httpClient } from '../support/doors.ts';
import { shopFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { expect as see } from './page.ts';
import { openBrowser, startProgram, stopProgram } from './program.ts';
import { tourPicture } from './tour-picture.ts';

let browser: Browser;

beforeAll(async () => {
  browser = await openBrowser();
});

afterAll(async () => {
  await browser?.close();
});

/** The program on this folder, and a tab that shows what it says. */
async function shown(folder: string): Promise<{ page: Page; url: string; stop(): Promise<void> }> {
  const program = await startProgram(folder);
  const stop = async () => {
    if (program.child.exitCode === null) await stopProgram(program);
  };
  onTestFinished(stop);
  const page = await browser.newPage();
  page.setDefaultTimeout(10_000);
  onTestFinished(() => page.close());
  await page.goto(program.url);
  return { page, url: program.url, stop };
}

function clientOf(url: string) {
  return httpClient(new URL('/', url).href, new URL(url).hash.replace('#token=', ''), '');
}

async function namedShop(folder: string): Promise<void> {
  const { url, stop } = await shown(folder);
  await clientOf(url).setup.openShop({
    commandId: newCommandId(),
    shop: shopFields,
    owner: { name: 'Ida Penn', initials: 'IP' },
  });
  await stop();
}

test('a folder of other things is left as it is, and another one opens', async () => {
  const folder = join(tempFolder(), 'holiday');
  mkdirSync(folder);
  writeFileSync(join(folder, 'photo.txt'), 'not a shop');
  const { page } = await shown(folder);
  await see(page.getByRole('heading', { name: 'This folder holds no shop' })).toBeVisible();
  expect(readdirSync(folder)).toEqual(['photo.txt']);
  await page.getByLabel('Full path of the folder').fill(join(tempFolder(), 'shop'));
  await page.getByRole('button', { name: 'Open this folder' }).click();
  await see(page.getByRole('heading', { name: 'Open your shop' })).toBeVisible();
});

test('a damaged file is told, and a backup restored', async () => {
  const folder = tempFolder();
  await namedShop(folder);
  const { url, stop } = await shown(folder);
  const owner = await clientOf(url).people.list();
  const token = new URL(url).hash.replace('#token=', '');
  await httpClient(new URL('/', url).href, token, owner[0]?.id ?? '').system.backUpNow();
  await stop();
  writeFileSync(join(folder, 'shop.sqlite'), 'damaged '.repeat(4000));
  const { page } = await shown(folder);
  await see(page.getByRole('heading', { name: 'The shop file is damaged' })).toBeVisible();
  await page.getByRole('button', { name: 'Restore this backup' }).click();
  await see(page.getByRole('heading', { name: 'Who is working?' })).toBeVisible();
  await see(page.getByRole('button', { name: /Ida Penn/ })).toBeVisible();
});

test('a shop open elsewhere is told, and opens when it is free', async () => {
  const folder = tempFolder();
  const first = await shown(folder);
  const second = await shown(folder);
  await see(second.page.getByRole('heading', { name: 'The shop is already open' })).toBeVisible();
  await first.stop();
  await second.page.getByRole('button', { name: 'Try again' }).click();
  await see(second.page.getByRole('heading', { name: 'Open your shop' })).toBeVisible();
});

test('a file of a newer program is told and not touched', async () => {
  const folder = tempFolder();
  await namedShop(folder);
  const db = new Database(join(folder, 'shop.sqlite'));
  db.pragma('user_version = 9000');
  db.close();
  const { page } = await shown(folder);
  await see(
    page.getByRole('heading', { name: 'The shop file is newer than this program' }),
  ).toBeVisible();
});

test('the demo shop can be looked at, cancelled, opened again and left', async () => {
  const own = join(tempFolder(), 'shop');
  const { page, url } = await shown(own);
  await page.getByRole('button', { name: 'Open the demo shop' }).click();
  await see(page.getByRole('heading', { name: 'Making the demo shop' })).toBeVisible();
  await see(page.getByRole('progressbar')).toBeVisible();
  await page.getByRole('button', { name: 'Cancel and go back' }).click();
  await see(page.getByRole('heading', { name: 'Open your shop' })).toBeVisible();

  await page.getByRole('button', { name: 'Open the demo shop' }).click();
  const owner = page.getByRole('button', { name: /Petra Lindqvold/ });
  await see(owner).toBeVisible({ timeout: 220_000 });
  await see(page.getByText('Invented people. Nothing here is real.')).toBeVisible();
  await owner.click();
  await see(page.getByRole('heading', { name: 'Today', exact: true })).toBeVisible();
  await see(page.getByText('Gwendolyn Sharplyss').first()).toBeVisible();
  await page.setViewportSize({ width: 1280, height: 860 });
  await tourPicture(page, 'today');
  await page.getByRole('link', { name: 'Board' }).click();
  await see(page.getByText('Kestrow Whinchat').first()).toBeVisible();
  await see(page.getByText('Do not draw: 1 stop finding').first()).toBeVisible();
  await tourPicture(page, 'board');

  await page.getByRole('button', { name: 'Leave the demo' }).click();
  await see(page.getByRole('heading', { name: 'Open your shop' })).toBeVisible();
  expect(await clientOf(url).system.status()).toMatchObject({ dataFolder: own, isNew: true });
  expect(await clientOf(url).people.list()).toEqual([]);
}, 240_000);
