import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { expect as see } from './page.ts';
import { type SeededShop, seedShop } from './seeded-shop.ts';
import { Session } from './session.ts';
import { stockedBehind } from './stores-behind.ts';

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

test('the program opens on what matters: late first, then today', async () => {
  const { page } = session;
  await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
  const headings = page.getByRole('main').getByRole('heading', { level: 2 });
  await see(headings).toHaveText(['Late 2', 'Today 2', 'Waiting 2', 'This week 1']);
});

test('a task is added from the keyboard and done with one press', async () => {
  const { page } = session;
  await page.goto(session.at('today'));
  await see(page.getByRole('heading', { name: 'Today 2' })).toBeVisible();
  await page.keyboard.press('n');
  const form = page.getByRole('form', { name: 'Add a task' });
  await see(form.getByLabel('What')).toBeFocused();
  await page.keyboard.type('Sharpen the scrapers');
  await page.keyboard.press('Enter');
  await see(form).toBeHidden();
  await page.getByRole('button', { name: 'Done: Sharpen the scrapers' }).click();
  await see(page.getByRole('button', { name: 'Done: Sharpen the scrapers' })).toHaveCount(0);
  await see(page.getByRole('heading', { name: 'Today 2' })).toBeFocused();
  await page.getByRole('button', { name: /^Undo: Task done/ }).click();
  await see(page.getByRole('button', { name: 'Done: Sharpen the scrapers' })).toBeVisible();
  await page.getByRole('button', { name: 'Done: Sharpen the scrapers' }).click();
  await see(page.getByRole('heading', { name: 'Today 2' })).toBeFocused();
});

test('what happens elsewhere shows at once, and leads to its place', async () => {
  const { page } = session;
  await page.goto(session.at('today'));
  const { rowVersion } = (await shop.client.orders.get({ id: shop.orders.stopped })).card;
  await shop.client.orders.release({
    commandId: crypto.randomUUID(),
    id: shop.orders.stopped,
    rowVersion,
  });
  const stop = page.getByRole('link', { name: /Do not string or draw it/ });
  await see(stop).toBeVisible();
  await stop.click();
  await see(page.getByRole('region', { name: 'Findings' })).toBeInViewport();
});

test('the list is filtered by room and by person', async () => {
  const { page } = session;
  await page.goto(session.at('today'));
  await page.getByRole('radiogroup', { name: 'Room' }).getByText('Finish room').click();
  await see(page.getByText('Nothing fits the filter')).toBeVisible();
  await page.getByRole('button', { name: 'Clear the filter' }).click();
  await page.getByRole('combobox', { name: 'For whom' }).click();
  await page.getByRole('option', { name: 'My own tasks' }).click();
  const headings = page.getByRole('main').getByRole('heading', { level: 2 });
  await see(headings).toHaveText(['Late 1', 'Today 1']);
});

test('lots that expired or soon will, and what is to be ordered, lead to the stores', async () => {
  const { page } = session;
  await stockedBehind(shop.client);
  await page.goto(session.at('today'));
  await page.getByRole('combobox', { name: 'For whom' }).click();
  await page.getByRole('option', { name: 'Everything' }).click();
  const stores = page.getByRole('region', { name: 'Stores' });
  const lines = stores.getByRole('listitem');
  await see(lines.first()).toContainText('it has expired, set it aside.');
  await see(stores.getByRole('link', { name: /\(3 containers\).*use it up/ })).toHaveCount(1);
  await session.accessible('today with the stores');
  await stores
    .getByRole('link', { name: /Wet sheets, first rub/ })
    .first()
    .click();
  await see(page.getByRole('heading', { name: 'Wet sheets, first rub', level: 1 })).toBeVisible();
});

test('a task written on the order page is done there, with what came of it', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${shop.orders.normal}?open=tasks`));
  const tasks = page.getByRole('region', { name: 'Tasks' });
  await tasks.getByRole('button', { name: 'Add a task' }).click();
  const form = page.getByRole('form', { name: 'Add a task' });
  await form.getByRole('button', { name: 'Add a task' }).click();
  await see(form.getByText('Say what is to be done.')).toBeVisible();
  await form.getByLabel('What').fill('Look whether the glue has set');
  await form.getByRole('button', { name: 'Add a task' }).click();
  await tasks.getByRole('button', { name: 'Done: Look whether the glue has set' }).click();
  await page.getByLabel('What came of it').fill('hard');
  await page.getByRole('form').getByRole('button', { name: 'Done', exact: true }).click();
  await tasks.getByText('Done (1)').click();
  await see(tasks.getByText(/Ida Penn: hard/)).toBeVisible();
  await session.accessible('order with tasks');
});

test('how long the shop waits is set beside the caution about fees', async () => {
  const { page } = session;
  await page.goto(session.at('settings'));
  const panel = page.getByRole('region', { name: 'Waiting for customers' });
  await see(panel.getByText(/local law decide/)).toBeVisible();
  await panel.getByLabel('Remind after, days').fill('5, 3');
  await page.getByRole('button', { name: 'Save' }).click();
  await see(panel.getByText('Each day comes after the one before it.')).toBeVisible();
  await panel.getByLabel('Remind after, days').fill('5, 14');
  await panel.getByLabel('Unclaimed after, days').fill('30');
  await page.getByRole('button', { name: 'Save' }).click();
  await see(panel.getByText(/Give more days than until the storage fee/)).toBeVisible();
  await panel.getByLabel('Unclaimed after, days').fill('120');
  await page.getByRole('button', { name: 'Save' }).click();
  await see(page.getByText('The shop was saved.')).toBeVisible();
  expect(await shop.client.shop.get()).toMatchObject({
    reminderDays: [5, 14],
    storageFeeDays: 30,
    abandonedDays: 120,
  });
});

test('no screen threw an error that nobody caught', () => {
  expect(session.troubles()).toEqual([]);
});
