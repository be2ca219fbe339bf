import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { openShop, takeIn } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

const riser = 'shop riser 17", bolts flush';

let session: Session;
let client: Client;
let id: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  ({ id } = await takeIn(client, {
    bow: { kind: 'recurve', takeDown: 'bolted three-piece', model: 'Kestrel', amoLengthIn: 62 },
  }));
  await session.page.goto(session.at(`orders/${id}`));
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const order = () => new OrderDriver(session.page);
const bow = () => session.page.getByRole('region', { name: 'Bow', exact: true });
const weight = () => session.page.getByRole('region', { name: 'Weight', exact: true });

test('a pair of limbs is entered, and it is said that they came alone', async () => {
  const { page } = session;
  await see(bow()).toContainText('the whole bow');
  await bow().getByRole('button', { name: 'Which limbs came' }).click();
  const form = page.getByRole('form', { name: 'Which limbs came' });
  await form.getByRole('button', { name: 'Add a pair of limbs' }).click();
  const adding = page.getByRole('dialog', { name: 'Add a pair of limbs' });
  await adding.getByLabel('What to call them').fill('long limbs');
  await adding.getByLabel('Serial, upper limb').fill('K-40 U');
  await adding.getByLabel('Serial, lower limb').fill('K-40 L');
  await adding.getByLabel('Riser they were marked on').fill('maker 15"');
  await adding.getByLabel('Marked weight, pounds').fill('52');
  await adding.getByLabel('Marked at draw length, inches').fill('28');
  await session.accessible('adding a pair of limbs');
  await adding.getByRole('button', { name: 'Add the limbs' }).click();
  await see(adding).toBeHidden();
  await see(form.getByLabel('long limbs')).toBeChecked();
  await form.getByLabel('Only the limbs').check();
  await form.getByRole('button', { name: 'Save' }).click();
  await see(form).toBeHidden();
  await see(bow()).toContainText('upper K-40 U, lower K-40 L');
  await see(bow()).toContainText('limbs only, without a riser');
});

test('they are unpacked, strung on the shop riser and agreed on', async () => {
  const table = await order().unpack('when the box was opened');
  await table.box('limbs only, pads clean, bolt holes sound');
  await table.nothingCameAlong();
  await table.lookedOver();
  await table.strung();
  await table.complete();
  await table.backToTheOrder();
  await order().move('Arrived');
  await order().standsIn('Arrived');
  await order().record('target can be reached', 'seven pounds of fifty-two, thick limbs');
  await order().consent('Price and scope');
  await order().consent('Alteration acknowledgement');
  await order().move('Agreed');
  await order().standsIn('Agreed');
});

test('a weighing asks on which riser, and is not recorded without it', async () => {
  await order().follow('No arrival weighing');
  const form = order().weighing;
  await see(form).toContainText('Limbs weighed: long limbs');
  const onRiser = form.getByRole('textbox', { name: 'Weighed on which riser' });
  await order().typePulls(51.9);
  await form.getByRole('button', { name: 'Record the weighing' }).click();
  await see(form).toContainText('Say which riser they were weighed on.');
  await see(onRiser).toBeFocused();
  expect((await client.orders.get({ id })).readings).toEqual([]);
  await onRiser.fill(riser);
  await form.getByRole('button', { name: 'Record the weighing' }).click();
  await see(form).toBeHidden();
});

test('the order says on which riser they were weighed, and the next weighing offers it', async () => {
  const { page } = session;
  await see(weight()).toContainText(`on riser ${riser}`);
  await see(weight()).toContainText('limbs long limbs');
  await see(bow()).toContainText(`Weighed on${riser}`);
  await session.accessible('limbs weighed on a riser');
  await weight().getByRole('button', { name: 'Weigh', exact: true }).click();
  const onRiser = order().weighing.getByRole('textbox', { name: 'Weighed on which riser' });
  await see(onRiser).toHaveValue(riser);
  await order().weighing.getByRole('button', { name: 'Cancel' }).click();

  const check = page.getByRole('region', { name: 'Final check' });
  await check.getByRole('button', { name: 'Final check' }).click();
  await see(check).toContainText('On the riser they were weighed on: flex twenty times');
  await page.getByRole('link', { name: 'Open bow' }).click();
  await see(page.getByRole('region', { name: 'Limb sets' })).toContainText('long limbs');
  await see(page.getByRole('main')).toContainText(riser);
  const { cameAs, limbSet, weighedOnRisers } = await client.orders.get({ id });
  expect({ cameAs, name: limbSet?.name, weighedOnRisers }).toEqual({
    cameAs: 'limbs-only',
    name: 'long limbs',
    weighedOnRisers: [riser],
  });
  expect(session.troubles()).toEqual([]);
});
