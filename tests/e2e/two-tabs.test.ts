import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Page, expect as see } from './page.ts';
import { type SeededShop, seedShop } from './seeded-shop.ts';
import { Session } from './session.ts';

let session: Session;
let shop: SeededShop;

beforeAll(async () => {
  session = await Session.open();
  shop = await seedShop(session.program.url);
  const { page } = session;
  await page.goto(session.program.url);
  await page.getByRole('button', { name: /Ida Penn/ }).click();
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

/** The question why a card goes back, opened from its menu and answered, not sent yet. */
async function askBack(page: Page, number: string, stage: string): Promise<void> {
  await page.goto(session.at('board'));
  const card = page.getByRole('article', { name: new RegExp(number) });
  await card.getByRole('button', { name: /^Move/ }).click();
  await page.getByRole('menuitem', { name: new RegExp(stage) }).click();
  await page.getByLabel('Why does it go back?').fill('put on the wrong card');
}

test('a move asked on an older view is told what changed, and overwrites nothing', async () => {
  const { page, context } = session;
  const id = shop.orders.normal;
  const { number } = (await shop.client.orders.get({ id })).card;
  const second = await context.newPage();
  const troubles: string[] = [];
  second.on('pageerror', (error) => troubles.push(error.message));
  await askBack(second, number, 'In the mail');
  await askBack(page, number, 'Requested');
  await page.getByRole('button', { name: 'Move back to Requested' }).click();
  await see(page.getByRole('dialog')).toBeHidden();

  await second.getByRole('button', { name: 'Move back to In the mail' }).click();
  const told = second.getByRole('dialog', { name: `${number} was not moved` });
  await see(told.getByRole('listitem')).toHaveText(['It went from "Arrived" to "Requested".']);
  const { card, history } = await shop.client.orders.get({ id });
  expect(card.stage).toBe('requested');
  expect(history.filter(({ toStage }) => toStage === 'in-mail')).toEqual([]);
  await told.getByRole('button', { name: 'Back to the board' }).click();
  await see(
    second
      .getByRole('region', { name: /^Requested/ })
      .getByRole('article', { name: new RegExp(number) }),
  ).toBeVisible();
  expect([...troubles, ...session.troubles()]).toEqual([]);
  await second.close();
});

/** Another person at another machine: a window that shares nothing with the first one. */
async function otherMachine(name: string): Promise<{ page: Page; troubles: string[] }> {
  const context = await session.browser.newContext({ viewport: { width: 1280, height: 860 } });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(error.message));
  await page.goto(session.program.url);
  await page.getByRole('button', { name: new RegExp(name) }).click();
  await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
  return { page, troubles };
}

test('a move that one person takes back goes back for the other as well', async () => {
  const { page } = session;
  await shop.client.people.add({
    commandId: crypto.randomUUID(),
    name: 'Ruth Amsel',
    initials: 'RA',
    role: 'office',
  });
  const id = shop.orders.long;
  const { number } = (await shop.client.orders.get({ id })).card;
  const ruth = await otherMachine('Ruth Amsel');
  await ruth.page.goto(session.at('board'));
  const cardIn = (column: string) =>
    ruth.page
      .getByRole('region', { name: new RegExp(`^${column}`) })
      .getByRole('article', { name: new RegExp(number) });
  await see(cardIn('Requested')).toBeVisible();

  await page.goto(session.at(`orders/${id}`));
  await page.getByRole('button', { name: 'Move to In the mail' }).click();
  await see(cardIn('In the mail')).toBeVisible();
  await see(cardIn('Requested')).toHaveCount(0);
  await cardIn('In the mail').getByRole('link', { name: number }).click();
  const stands = ruth.page.locator('[aria-current="step"]');
  await see(stands).toContainText('In the mail');

  const notice = page.locator('.mantine-Notification-root');
  await notice.getByRole('button', { name: 'Undo: Requested to In the mail' }).click();
  await see(stands).toContainText('Requested');
  const history = ruth.page.getByRole('region', { name: 'History' });
  await see(history).toContainText('Undone: Requested to In the mail');
  await see(history).toContainText('Ida Penn');
  await see(history.getByRole('button', { name: 'Undo: Requested to In the mail' })).toHaveCount(0);
  expect((await shop.client.orders.get({ id })).card.stage).toBe('requested');
  expect([...ruth.troubles, ...session.troubles()]).toEqual([]);
  await ruth.page.context().close();
});
