import { readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { openShop, takeIn } from './open-shop.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';
import { dayFromNow } from './stores-behind.ts';
import { StoresDriver } from './stores-driver.ts';

let session: Session;
let client: Client;
let stores: StoresDriver;
let order: { id: string; number: string };

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  order = await takeIn(client);
  stores = new StoresDriver(session.page);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

describe('a can of hardener comes, is scanned, used, counted and ordered again', () => {
  test('empty stores say what to do first; a consumable is added and goes straight to receiving', async () => {
    const { page } = session;
    await page.goto(session.at('stores'));
    await see(page.getByText('Nothing in the stores yet')).toBeVisible();
    await page.getByRole('button', { name: 'Add a consumable' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Add the consumable' }).click();
    await see(dialog.getByText('This may not be empty.')).toBeVisible();
    await dialog.getByRole('textbox', { name: 'Name' }).fill('Clear finish, hardener');
    await stores.choose(dialog, 'Category', 'Hardener');
    await see(dialog.getByRole('combobox', { name: 'Counted in' })).toHaveValue('mL');
    await dialog.getByLabel('Shelf').fill('Cabinet 1');
    await dialog.getByText('When to order').click();
    await dialog.getByLabel('Use in a week, mL').fill('60');
    await dialog.getByLabel('Wait for a delivery, weeks').fill('2');
    await dialog.getByText('Keeping, hazards, note').click();
    await dialog.getByLabel('Isocyanates').check();
    await dialog.getByRole('button', { name: 'Add the consumable' }).click();
    await see(
      page.getByRole('heading', { level: 1, name: 'Clear finish, hardener' }),
    ).toBeVisible();
    await see(stores.form('Receive Clear finish, hardener')).toBeVisible();
    await session.accessible('receiving');
  });

  test('lots are received, one in fluid ounces, one that has expired; a scan into a field sends nothing', async () => {
    const { page } = session;
    const form = stores.form(/^Receive/);
    await form.getByLabel('Lot number').click();
    await stores.scan('H-2214');
    await see(form.getByLabel('Lot number')).toHaveValue('H-2214');
    await see(form.getByText('Give a number.')).toHaveCount(0);
    await stores.choose(form, 'Unit', 'US fl oz');
    await stores.receive({ 'In each container': '8', 'Use by': dayFromNow(200) });
    await see(stores.panel('Lots').getByText('236.6 mL')).toBeVisible();

    await page.getByRole('button', { name: 'Receive', exact: true }).click();
    await stores.receive({
      'In each container': '100',
      'Lot number': 'H-1001',
      'Use by': dayFromNow(-2),
      'Came on': dayFromNow(-60),
    });
    const lots = stores.panel('Lots');
    await see(lots.getByText('Expired: not to be used')).toBeVisible();
    await see(lots.getByRole('button', { name: 'Issue from lot H-1001' })).toHaveCount(0);
    await see(page.getByText('Expired lot on the shelf')).toBeVisible();
  });

  test('its labels are printed: what is read back is what is scanned', async () => {
    const { page } = session;
    await page.getByRole('button', { name: 'More for lot H-2214' }).click();
    await page.getByRole('menuitem', { name: 'Label' }).click();
    const dialog = page.getByRole('dialog');
    const save = dialog.getByRole('button', { name: 'Save' });
    await see(save).toBeEnabled();
    const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
    expect(download.suggestedFilename()).toBe('L0001 lot label.pdf');
    const bytes = new Uint8Array(readFileSync(await download.path()));
    expect(await textOf(bytes)).toContain('Lot H-2214');
    await page.keyboard.press('Escape');
    await see(dialog).toBeHidden();
  });

  test('a shelf label scanned anywhere opens the issue form; it goes to an order from the lot in date', async () => {
    const { page } = session;
    await page.goto(session.at('board'));
    await see(page.getByRole('heading', { name: 'Board', level: 1 })).toBeVisible();
    await stores.leaveFields();
    await stores.scan('S0001');
    const form = stores.form('Issue Clear finish, hardener');
    await see(form).toBeVisible();
    await see(form.getByText('Contains isocyanates: supplied air')).toBeVisible();
    await form.getByLabel('How much').fill('300');
    await see(form.getByText('There is 236.6 mL of Clear finish, hardener in date')).toBeVisible();
    await form.getByLabel('How much').fill('30');
    await see(form.getByText('30 mL from lot H-2214')).toBeVisible();
    await session.accessible('issuing');
    await stores.choose(form, 'For order', new RegExp(order.number));
    await form.getByRole('button', { name: 'Issue', exact: true }).click();
    await see(page.getByText('Issued: 30 mL from lot H-2214')).toBeVisible();
    await see(stores.panel('Moves').getByRole('link', { name: order.number })).toBeVisible();
    const { history } = await client.orders.get({ id: order.id });
    expect(history.map(({ summary }) => summary)).toContain(
      'Issued: 30 mL of Clear finish, hardener, lot H-2214',
    );
  });

  test('a lot label opens the form on its lot; an expired one is refused in words', async () => {
    const { page } = session;
    await stores.leaveFields();
    await stores.scan('l0001');
    const form = stores.form('Issue Clear finish, hardener');
    await see(form.getByRole('combobox', { name: 'From' })).toHaveValue(/Lot H-2214/);
    // A second can in the same breath: the scan lands in the amount and is none.
    await see(form.getByLabel('How much')).toBeFocused();
    await stores.scan('L0002');
    await see(form.getByRole('combobox', { name: 'From' })).toHaveValue(/Lot H-1001.*expired/);
    await see(form.getByLabel('How much')).toHaveValue('');
    await form.getByLabel('How much').fill('10');
    await form.getByRole('button', { name: 'Issue', exact: true }).click();
    await see(form.getByText('could be used until')).toBeVisible();
    await form.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('button', { name: 'Discard lot H-1001' }).click();
    const discard = stores.form('Discard from lot H-1001');
    await see(discard.getByLabel('Why')).toHaveValue('expired');
    await discard.getByRole('button', { name: 'Discard', exact: true }).click();
    await see(page.getByText('Discarded. Lot H-1001 has 0 mL left.')).toBeVisible();
    await see(page.getByText('Expired lot on the shelf')).toHaveCount(0);
  });

  test('a count writes what is missing with its reason; then it is time to order', async () => {
    const { page } = session;
    await page.getByRole('button', { name: 'Count lot H-2214' }).click();
    const form = stores.form('Count lot H-2214');
    await form.getByLabel('On the shelf').fill('90');
    await form.getByRole('button', { name: 'Write the count' }).click();
    await see(form.getByText('Give the reason in a few words.')).toBeVisible();
    await form.getByLabel('Why it was counted').fill('month end, one batch was not booked');
    await form.getByRole('button', { name: 'Write the count' }).click();
    await see(page.getByText('Counted lot H-2214: 90 mL')).toBeVisible();
    await see(stores.panel('Moves').getByText('month end, one batch')).toBeVisible();
    await see(page.getByText('Time to order', { exact: true })).toBeVisible();
  });

  test('a label scanned into the form of a lot opens the same form on its lot, and leaves nothing in a field', async () => {
    const { page } = session;
    await page.getByRole('button', { name: 'Receive', exact: true }).click();
    await stores.receive({
      'In each container': '25',
      'Lot number': 'H-3300',
      'Use by': dayFromNow(300),
    });
    await page.getByRole('button', { name: 'Count lot H-2214' }).click();
    const counted = stores.form('Count lot H-2214');
    await counted.getByLabel('On the shelf').fill('8');
    // The lot that the form stands on already: the amount stays as it was typed.
    await stores.scan('L0001');
    await see(counted.getByLabel('On the shelf')).toHaveValue('8');
    await counted.getByLabel('Why it was counted').fill('shelf by shelf');
    await stores.scan('L0003');
    const other = stores.form('Count lot H-3300');
    await see(other.getByLabel('On the shelf')).toBeFocused();
    await see(other.getByLabel('On the shelf')).toHaveValue('');
    await see(counted).toHaveCount(0);
    await session.accessible('counting a scanned lot');
    // With nothing in focus it is the form's scan too.
    await stores.leaveFields();
    await stores.scan('L0002');
    await see(stores.form('Count lot H-1001')).toBeVisible();
    await stores.scan('S0001');
    await see(page.getByText('Scan the label on the container.')).toBeVisible();
    await see(stores.form('Count lot H-1001').getByLabel('On the shelf')).toHaveValue('');
    await stores.form('Count lot H-1001').getByRole('button', { name: 'Cancel' }).click();
  });

  test('discarding and booking back take a scan as well; an order is scanned to where it came from', async () => {
    const { page } = session;
    const more = async (lot: string, action: string) => {
      await page.getByRole('button', { name: `More for lot ${lot}` }).click();
      await page.getByRole('menuitem', { name: action }).click();
    };
    await more('H-2214', 'Discard');
    await see(stores.form('Discard from lot H-2214').getByLabel('How much')).toHaveValue('90');
    await stores.scan('L0003');
    const discard = stores.form('Discard from lot H-3300');
    await see(discard.getByLabel('How much')).toHaveValue('25');
    await discard.getByLabel('Why').fill('skinned over');
    await discard.getByRole('button', { name: 'Discard', exact: true }).click();
    await see(page.getByText('Discarded. Lot H-3300 has 0 mL left.')).toBeVisible();

    await more('H-2214', 'Book back');
    const back = stores.form('Book back into lot H-2214');
    await back.getByLabel('How much came back').fill('5');
    await stores.scan(order.number);
    await see(back.getByRole('combobox', { name: 'For order' })).toHaveValue(
      new RegExp(`^${order.number} `),
    );
    await see(back.getByLabel('How much came back')).toHaveValue('5');
    await back.getByRole('button', { name: 'Book back' }).click();
    await see(page.getByText('Booked back. Lot H-2214 has 95 mL.')).toBeVisible();
    await more('H-2214', 'Discard');
    const spilled = stores.form('Discard from lot H-2214');
    await spilled.getByLabel('How much').fill('5');
    await spilled.getByLabel('Why').fill('spilled');
    await spilled.getByRole('button', { name: 'Discard', exact: true }).click();
    await see(page.getByText('Discarded. Lot H-2214 has 90 mL left.')).toBeVisible();
  });

  test('the shopping list says what, how much and why; what is ordered leaves it', async () => {
    const { page } = session;
    await page.goto(session.at('stores'));
    await page.getByRole('link', { name: 'Shopping list (1)' }).click();
    const item = page.getByRole('listitem').filter({ hasText: 'Clear finish, hardener' });
    await see(item).toContainText('90 mL in date; order at 120 mL');
    await see(item).toContainText('150 mL');
    await session.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy' }).click();
    await see(page.getByText('Copied as text.')).toBeVisible();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toContain(
      '- Clear finish, hardener: 150 mL',
    );
    await item.getByRole('button', { name: 'Ordered: Clear finish, hardener' }).click();
    await session.accessible('shopping list');
    await page.getByRole('button', { name: 'Note it' }).click();
    await see(page.getByText('Nothing to buy')).toBeVisible();
  });

  test('what is printed of it is the list alone', async () => {
    const { page } = session;
    await page.emulateMedia({ media: 'print' });
    await see(page.getByRole('navigation', { name: 'Screens' })).toBeHidden();
    await see(page.getByRole('heading', { name: 'Shopping list' })).toBeVisible();
    await page.emulateMedia({ media: 'screen' });
  });

  test('no screen threw an error that nobody caught', () => {
    expect(session.troubles()).toEqual([]);
  });
});
