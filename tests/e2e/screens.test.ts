import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { expect as see } from './page.ts';
import { expectReadable } from './readable.ts';
import { enterSeeded, type SeededShop, seedShop } from './seeded-shop.ts';
import { Session } from './session.ts';
import { stockedBehind } from './stores-behind.ts';

let session: Session;
let shop: SeededShop;
let stock: string;

beforeAll(async () => {
  session = await Session.open();
  shop = await seedShop(session.program.url);
  stock = await stockedBehind(shop.client);
  await enterSeeded(session);
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
  ['stores', () => 'stores'],
  ['consumable with long data', () => `stores/${stock}?do=issue`],
  ['shopping list', () => 'stores/shopping'],
  ['finish room', () => 'finish-room'],
  ['settings', () => 'settings'],
  ['finishes', () => 'settings?tab=finishes'],
  ['owner', () => 'owner'],
  ['unknown page', () => 'no-such-page'],
];

test.each(screens)(
  '%s: readable in light and dark, at every width, no sideways scroll',
  async (name, path) => {
    await expectReadable(session, name, path());
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
