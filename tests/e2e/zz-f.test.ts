import { test } from 'vitest';
import { startProgram, stopProgram, openBrowser } from './program.ts';
import { readdirSync } from 'node:fs';
test('demo', async () => {
  const folder = `/tmp/f-demo/${readdirSync('/tmp/f-demo').filter((n) => /^\d+$/.test(n)).sort().at(-1)}`;
  const program = await startProgram(folder);
  const browser = await openBrowser();
  const page = await browser.newPage({ viewport: { width: 1280, height: 860 } });
  await page.goto(program.url);
  await page.getByRole('button').first().click();
  await page.waitForTimeout(2500);
  await page.screenshot({ path: '/tmp/f-demo/today.png' });
  await page.goto(new URL('today', program.url).href);
  await page.getByRole('link', { name: /26-0030/ }).first().click();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: '/tmp/f-demo/tasks.png' });
  await browser.close();
  await stopProgram(program);
}, 300_000);
