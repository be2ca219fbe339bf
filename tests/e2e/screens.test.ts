import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { orderGoingHome, orderInFinalCheck } from './orders-leaving.ts';
import { expect as see } from './page.ts';
import { type SeededShop, seedShop } from './seeded-shop.ts';
import { Session } from './session.ts';

let session: Session;
let shop: SeededShop;
let lastLook: string;
let homeward: string;

beforeAll(async () => {
  session = await Session.open();
  shop = await seedShop(session.program.url);
  lastLook = await orderInFinalCheck(shop.client);
  homeward = await orderGoingHome(shop.client);
  const { page } = session;
  await page.goto(session.program.url);
  await page.getByRole('button', { name: /Ida Penn/ }).click();
  await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const screens: [string, () => string][] = [
  ['today', () => 'today'],
  ['board', () => 'board'],
  ['intake', () => 'intake'],
  ['customers', () => 'customers'],
  ['customer', () => `customers/${shop.customerId}`],
  ['bow', () => `bows/${shop.bowId}`],
  ['order', () => `orders/${shop.orders.normal}`],
  ['order with long data', () => `orders/${shop.orders.long}`],
  ['order with a stop finding', () => `orders/${shop.orders.stopped}`],
  ['order in final check', () => `orders/${lastLook}`],
  ['order going home', () => `orders/${homeward}`],
  ['unpacking table', () => `orders/${lastLook}/unpacking`],
  ['unpacking table with a stop finding', () => `orders/${homeward}/unpacking`],
  ['settings', () => 'settings'],
  ['unknown page', () => 'no-such-page'],
];

const looks = [
  { look: 'light', scheme: 'light', width: 1280, height: 860 },
  { look: 'dark', scheme: 'dark', width: 1280, height: 860 },
  { look: 'small', scheme: 'light', width: 1024, height: 768 },
  // 1280 x 860 at 200 % zoom, and a hand-held screen.
  { look: 'zoomed', scheme: 'light', width: 640, height: 430 },
  { look: 'narrow', scheme: 'dark', width: 390, height: 844 },
] as const;

test.each(screens)(
  '%s: readable in light and dark, at every width, no sideways scroll',
  async (name, path) => {
    const { page } = session;
    for (const { look, scheme, width, height } of looks) {
      await page.setViewportSize({ width, height });
      await page.evaluate(
        (value) => localStorage.setItem('mantine-color-scheme-value', value),
        scheme,
      );
      await page.goto(session.at(path()));
      await see(page.getByRole('heading', { level: 1 })).toBeVisible();
      await see(page.getByText('Reading ...')).toHaveCount(0);
      expect(await page.evaluate(() => document.documentElement.dataset.mantineColorScheme)).toBe(
        scheme,
      );
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, `${name}, ${look}`).toBeLessThanOrEqual(0);
      await session.accessible(`${name}, ${look}`);
      await session.look(`${name} ${look}`);
      if (['today', 'board'].includes(name) && look === 'light') await session.picture(name);
    }
  },
);

test('what one person changes, every open tab shows; an older view cannot overwrite it', async () => {
  const { page, context } = session;
  await page.setViewportSize({ width: 1280, height: 860 });
  const id = shop.orders.long;
  await page.goto(session.at(`orders/${id}`));
  const move = page.getByRole('button', { name: 'Move to In the mail' });
  await see(move).toBeVisible();
  const stale = (await shop.client.orders.get({ id })).card.rowVersion;
  await shop.client.orders.setHandover({
    commandId: crypto.randomUUID(),
    id,
    rowVersion: stale,
    handover: 'collected',
  });
  await expect(
    shop.client.orders.move({
      commandId: crypto.randomUUID(),
      id,
      rowVersion: stale,
      to: 'in-mail',
    }),
  ).rejects.toMatchObject({ code: 'STALE' });
  const other = await context.newPage();
  await other.goto(session.at(`orders/${id}`));
  await see(other.getByRole('radio', { name: 'collected' })).toBeChecked();
  await see(page.getByRole('radio', { name: 'collected' })).toBeChecked();
  await other.close();
});

test('no screen threw an error that nobody caught', () => {
  expect(session.troubles()).toEqual([]);
});
