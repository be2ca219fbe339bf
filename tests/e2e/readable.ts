import { expect } from 'vitest';
import { expect as see } from './page.ts';
import type { Session } from './session.ts';

type Scheme = 'light' | 'dark';

interface Look {
  look: string;
  scheme: Scheme;
  width: number;
  height: number;
}

export const everyLook: readonly Look[] = [
  { look: 'light', scheme: 'light', width: 1280, height: 860 },
  { look: 'small', scheme: 'light', width: 1024, height: 768 },
  // 1280 x 860 at 200 % zoom, and a hand-held screen.
  { look: 'zoomed', scheme: 'light', width: 640, height: 430 },
  { look: 'dark', scheme: 'dark', width: 1280, height: 860 },
  { look: 'narrow', scheme: 'dark', width: 390, height: 844 },
];

/** For a part of a screen that was looked at in every way. */
export const twoLooks = everyLook.filter(({ look }) => look === 'light' || look === 'narrow');

interface Readable {
  looks?: readonly Look[];
  /** Opens on the screen what is looked at. */
  prepare?: () => Promise<void>;
  /** Selector of what axe looks at, where the rest was looked at before. */
  within?: string;
  /** After a look, while the screen still stands so. */
  seen?: (look: string) => Promise<void>;
}

async function load(session: Session, path: string, scheme: Scheme): Promise<void> {
  const { page } = session;
  await page.evaluate((value) => localStorage.setItem('mantine-color-scheme-value', value), scheme);
  await page.goto(session.at(path));
  await see(page.getByRole('heading', { level: 1 })).toBeVisible();
  await see(page.getByText('Reading ...')).toHaveCount(0);
  const shown = await page.evaluate(() => document.documentElement.dataset.mantineColorScheme);
  expect(shown).toBe(scheme);
}

/** Opens a screen in light and in dark and asks at every width whether it can be read and used. */
export async function expectReadable(
  session: Session,
  name: string,
  path: string,
  { looks = everyLook, prepare, within, seen }: Readable = {},
): Promise<void> {
  const { page } = session;
  for (const scheme of ['light', 'dark'] as const) {
    const these = looks.filter((each) => each.scheme === scheme);
    for (const [index, { look, width, height }] of these.entries()) {
      await page.setViewportSize({ width, height });
      if (index === 0) {
        await load(session, path, scheme);
        await prepare?.();
      }
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, `${name}, ${look}`).toBeLessThanOrEqual(0);
      await session.accessible(`${name}, ${look}`, within);
      await session.look(`${name} ${look}`);
      await seen?.(look);
    }
  }
}
