import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { openShop } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';
import { UnpackingDriver } from './unpacking-driver.ts';

let session: Session;
let client: Client;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const order = () => new OrderDriver(session.page);

async function theOrder() {
  const [card] = await client.orders.board({ includeClosed: true });
  if (card === undefined) throw new Error('no order was taken in');
  return client.orders.get({ id: card.id });
}

test('a box without a name is taken in: it is here, and it says what is missing', async () => {
  const { page } = session;
  await page.goto(session.at('intake'));
  await page.getByRole('button', { name: 'Unknown sender of a box' }).click();
  await see(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue(
    /^Unknown sender, box of /,
  );
  await see(page.getByLabel('Unannounced box')).toBeChecked();
  await see(page.getByLabel('Here already')).toBeChecked();
  await page.getByLabel('Not known yet').first().check();
  await page.getByLabel('Strip & refinish').check();
  await page.getByRole('textbox', { name: 'Packaging' }).fill('crushed tube, one cap gone');
  await page
    .getByRole('textbox', { name: 'Condition of the bow' })
    .fill('finish peeling, glass sound');
  await page.getByLabel('Sock', { exact: true }).check();
  await session.accessible('intake of an unannounced box');
  await page.getByRole('button', { name: 'Take in the request' }).click();
  const taken = page.getByRole('region', { name: 'Taken in' });
  await see(taken).toContainText('does not count as arrived yet and stays in the mail');
  await see(taken.getByRole('listitem')).toHaveText(['The bow is not identified.']);
  await session.accessible('taken in, not arrived yet');
  const { card, arrival, belongings } = await theOrder();
  expect(card).toMatchObject({ stage: 'in-mail', bowId: null });
  expect(arrival).toMatchObject({
    packaging: 'crushed tube, one cap gone',
    condition: 'finish peeling, glass sound',
  });
  expect(belongings.map(({ what }) => what)).toEqual(['Sock']);
});

test('it is unpacked and looked over while nobody knows whose it is', async () => {
  const { page } = session;
  await page.getByRole('link', { name: 'To the unpacking table' }).click();
  const table = new UnpackingDriver(page);
  await see(page.getByText('The bow is not identified yet.')).toBeVisible();
  await see(
    table.part('1 Box and packaging').getByLabel('Condition of the bow as it came out'),
  ).toHaveValue('finish peeling, glass sound');
  await table.lookedOver();
  await table.strung();
  await table.complete();
  await table.backToTheOrder();
  await order().standsIn('In the mail');
  await order().move('Arrived');
  await see(order().next).toContainText('The bow is not identified.');
  await order().standsIn('In the mail');
});

test('the sender writes: the order is given to her, and her bow is named', async () => {
  const { page } = session;
  await page.getByRole('button', { name: 'It belongs to somebody else' }).click();
  const whose = page.getByRole('form', { name: 'Whose bow is it?' });
  await whose.getByLabel('Name, phone or e-mail').fill('Mira Castell');
  await page.getByRole('option', { name: 'New customer: Mira Castell' }).click();
  const adding = page.getByRole('dialog', { name: 'Add a customer' });
  await see(adding.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Mira Castell');
  await adding.getByLabel('Phone').fill('555 0142');
  await adding.getByLabel('Street and number').fill('8 Quarry Lane');
  await adding.getByLabel('Town').fill('Stonefield');
  await adding.getByRole('button', { name: 'Add the customer' }).click();
  await see(page.getByRole('heading', { level: 1 })).toContainText('Mira Castell');

  await order().follow('The bow is not identified.');
  await page.getByRole('button', { name: 'Add a new bow' }).click();
  const bow = page.getByRole('dialog', { name: 'Add a bow' });
  await bow.getByLabel('Maker').fill('Oldfield');
  await bow.getByLabel('Model').fill('Heron');
  await bow.getByRole('button', { name: 'Add the bow' }).click();
  await order().gone('The bow is not identified.');
  await order().move('Arrived');
  await order().standsIn('Arrived');
});

test('she is told the price, and what was agreed is agreed with her', async () => {
  const { page } = session;
  await page
    .getByRole('region', { name: 'Job' })
    .getByRole('button', { name: /Change/ })
    .click();
  const job = page.getByRole('form', { name: 'Change the job' });
  await job.getByLabel('Estimate, dollars').fill('180');
  await job.getByRole('button', { name: 'Save' }).click();
  await see(job).toBeHidden();
  await order().consent('Price and scope');
  await order().consent('Alteration acknowledgement');
  await order().consent('Expected loss of weight');
  await order().move('Agreed');
  await order().standsIn('Agreed');
  await see(page.getByRole('button', { name: 'It belongs to somebody else' })).toHaveCount(0);
  const { card, customer, consents } = await theOrder();
  expect(card).toMatchObject({ stage: 'agreed', customerName: 'Mira Castell' });
  expect(customer?.address.city).toBe('Stonefield');
  const by = consents.flatMap(({ answers }) => answers.map(({ answeredBy }) => answeredBy));
  expect(new Set(by)).toEqual(new Set(['Mira Castell']));
  expect(session.troubles()).toEqual([]);
});
