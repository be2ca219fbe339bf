import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { orderFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { expect as see } from './page.ts';
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

const order = () => shop.client.orders.get({ id: shop.orders.normal });
const notice = () => session.page.locator('.mantine-Notification-root');

/** Puts the order on hold in its form, as the office does. */
async function hold(reason: string): Promise<void> {
  const { page } = session;
  await page.getByRole('button', { name: 'Put on hold', exact: true }).click();
  const form = page.getByRole('form', { name: 'Put on hold' });
  await form.getByLabel('Reason').fill(reason);
  await form.getByRole('button', { name: 'Put on hold' }).click();
}

const openHolds = async () => (await order()).holds.filter((each) => each.releasedAt === null);

test('what was just done is offered back, by a button and by the keyboard', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${shop.orders.normal}`));
  await hold('waiting for the finish');
  await see(notice()).toContainText('Put on hold');
  await session.accessible('with the note of what was done');
  await session.look('undo notice');
  await notice().getByRole('button', { name: 'Undo: Put on hold' }).click();
  await see(notice()).toContainText('Undone: Put on hold');
  expect(await openHolds()).toEqual([]);

  await hold('waiting for glass');
  await see(notice()).toContainText('Put on hold');
  await page.getByRole('heading', { level: 1 }).click();
  await page.keyboard.press('Control+z');
  await see(notice()).toContainText('Undone: Put on hold');
  expect(await openHolds()).toEqual([]);
});

test('typing keeps its own undo', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${shop.orders.normal}`));
  await hold('waiting for the answer');
  await see(notice()).toContainText('Put on hold');
  await page.getByRole('textbox', { name: /find/i }).first().focus();
  await page.keyboard.type('x');
  await page.keyboard.press('Control+z');
  await see(notice().getByRole('button', { name: 'Undo: Put on hold' })).toBeVisible();
  expect(await openHolds()).toHaveLength(1);
});

test('the history undoes for longer, says what goes back, and says why where it cannot', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${shop.orders.normal}`));
  const history = page.getByRole('region', { name: 'History' });
  await history.getByRole('button', { name: 'Undo: Put on hold' }).first().click();
  const asking = history.getByRole('form', { name: 'Undo this?' });
  await see(asking).toContainText('Takes out the hold.');
  await see(asking.getByRole('button', { name: 'Undo' })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  const offered = history.getByRole('button', { name: 'Undo: Put on hold' }).first();
  await see(offered).toBeFocused();
  await page.keyboard.press('Enter');
  await session.accessible('asking before an undo');
  await session.look('undo in the history');
  await asking.getByRole('button', { name: 'Undo' }).click();
  await see(asking).toBeHidden();
  await see(history.getByText('Undone: Put on hold').first()).toBeVisible();
  await see(history.getByText(/^Undone \d/).first()).toBeVisible();
  expect(await openHolds()).toEqual([]);
  await history.getByRole('button', { name: /^Show all/ }).click();
  await history.getByText('Cannot be undone').last().click();
  await see(history.getByText(/An order number is never used twice/)).toBeVisible();
});

test('a move on the board is offered back too', async () => {
  const { page } = session;
  const taken = await shop.client.intake.submit({
    commandId: crypto.randomUUID(),
    draftId: null,
    customer: { is: 'known', id: shop.customerId },
    bow: { is: 'later' },
    order: { ...orderFields, services: ['new-string'] },
    startsAt: 'requested',
    cameBy: 'phone',
  });
  await page.goto(session.at('board'));
  const card = page.getByRole('article').filter({ hasText: taken.number });
  await card.getByRole('button', { name: /^Move to/ }).click();
  await page.getByRole('menuitem', { name: /^In the mail/ }).click();
  await see(notice()).toContainText('Requested to In the mail');
  const stage = async () => (await shop.client.orders.get({ id: taken.id })).card.stage;
  expect(await stage()).toBe('in-mail');
  await notice().getByRole('button', { name: /^Undo/ }).click();
  await see(notice()).toContainText('Undone: Requested to In the mail');
  expect(await stage()).toBe('requested');
});

test('a refusal is said where it was asked for', async () => {
  const { page } = session;
  await page.goto(session.at(`orders/${shop.orders.normal}`));
  await hold('waiting for a rest');
  const undo = notice().getByRole('button', { name: 'Undo: Put on hold' });
  await see(undo).toBeVisible();
  const { card } = await order();
  await shop.client.orders.changeHold({
    commandId: crypto.randomUUID(),
    id: card.id,
    rowVersion: card.rowVersion,
    remindOn: '2030-01-01',
    storageFeeOn: null,
    abandonedOn: null,
  });
  await undo.click();
  await see(notice()).toContainText('changed the hold since');
  expect(await openHolds()).toHaveLength(1);
  expect(session.troubles()).toEqual([]);
});

test("a change of a bow stands on the bow's page and is taken back there", async () => {
  const { page } = session;
  const { bow } = await shop.client.bows.get({ id: shop.bowId });
  const { id, rowVersion, createdAt: _, customerId: __, ...fields } = bow;
  await shop.client.bows.edit({
    commandId: newCommandId(),
    id,
    rowVersion,
    ...fields,
    serial: 'X-9',
  });
  await page.goto(session.at(`bows/${shop.bowId}`));
  const changes = page.getByRole('region', { name: 'Changes' });
  await changes
    .getByRole('button', { name: /^Undo: / })
    .first()
    .click();
  await changes.getByRole('button', { name: 'Undo', exact: true }).click();
  await see(changes).toContainText('Undone');
  expect((await shop.client.bows.get({ id: shop.bowId })).bow.serial).toBe(bow.serial);
});
