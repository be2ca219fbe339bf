import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';

const tour = fileURLToPath(new URL('tour', import.meta.url));

/** A picture of the tour in the README, made anew with TILLERMARK_TOUR=1. */
export async function tourPicture(page: Page, name: string): Promise<void> {
  if (process.env.TILLERMARK_TOUR !== '1') return;
  mkdirSync(tour, { recursive: true });
  // From the top of the screen, whichever part of it scrolls.
  await page.evaluate(() => {
    document.querySelector('h1')?.scrollIntoView({ block: 'end' });
  });
  await page.screenshot({ path: `${tour}/${name}.png` });
}
