import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { pngPicture } from '../support/pictures.ts';
import { LeavingDriver } from './leaving-driver.ts';
import { openShop, takeIn } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';
import { weighBehind } from './shop-scale.ts';
import { UnpackingDriver } from './unpacking-driver.ts';

const warning = 'DO NOT STRING OR DRAW';

let session: Session;
let client: Client;
let id: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  ({ id } = await takeIn(client));
  await session.page.goto(session.at(`orders/${id}`));
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const order = () => new OrderDriver(session.page);
const detail = () => client.orders.get({ id });

test('the glass lifts: a stop finding with its photograph, and the page says not to draw', async () => {
  const { page } = session;
  const table = await order().unpack('when the box was opened');
  await table.box('dry, finish good, glass lifts on the upper limb');
  await table.cameAlong('String', 'Quiver');
  const look = table.part('4 Look it over');
  await look.getByRole('button', { name: 'Add a finding' }).click();
  const form = page.getByRole('form', { name: 'Add a finding' });
  await form.getByLabel('Stop').check();
  await form.getByRole('button', { name: 'upper limb' }).click();
  await form.getByRole('button', { name: 'back' }).click();
  await form.getByLabel('Distance from the fade, in').fill('9');
  await form.getByLabel('What is seen').fill('glass lifting over two inches, a nail goes under it');
  await form.getByRole('button', { name: 'Add the finding' }).click();
  await see(form).toBeHidden();
  await see(page.getByRole('alert').filter({ hasText: warning })).toContainText(
    'upper limb, back, 9 in from the fade: glass lifting over two inches',
  );

  const finding = look.getByRole('listitem').filter({ hasText: 'Stop: upper limb, back' });
  await finding.locator('input[type=file]').setInputFiles({
    name: 'lifted glass.png',
    mimeType: 'image/png',
    buffer: await pngPicture(),
  });
  await see(finding.getByRole('img')).toBeVisible();
  await table.lookedOver();
});

test('it is neither strung nor weighed, and the arrival check is complete all the same', async () => {
  const { page } = session;
  const table = new UnpackingDriver(page);
  const stringing = table.part('5 String it, or say why not');
  await see(stringing.getByLabel('Strung', { exact: true })).toBeDisabled();
  await see(table.part('6 Weigh it as it came')).toContainText('it is not drawn, and not weighed');
  await see(page.getByRole('link', { name: 'Weigh it' })).toHaveCount(0);
  await table.notStrung('glass lifting on the upper limb');
  await session.accessible('unpacking table with a stop finding');
  await table.complete();
  await table.backToTheOrder();

  const weight = page.getByRole('region', { name: 'Weight', exact: true });
  await see(weight).toContainText('Do not string or draw this bow.');
  await see(weight.getByRole('button', { name: 'Weigh', exact: true })).toHaveCount(0);
  // Nor by a page that was open before the finding was made.
  const [scale] = await client.scales.list();
  const by = { orderId: id, scaleId: scale?.id ?? '', phase: 'arrival', forceLbf: 52 } as const;
  await expect(weighBehind(client, by)).rejects.toThrow(/^Do not draw this bow: a stop finding/);
});

test('no work is begun on it, and the owner cannot let that pass either', async () => {
  await order().move('Arrived');
  await order().standsIn('Arrived');
  const { next } = order();
  await order().move('Agreed');
  const stop = next.getByRole('listitem').filter({ hasText: 'A stop finding is open' });
  await see(stop).toContainText('Nobody may let this pass.');
  await see(next.getByRole('button', { name: /Let it pass/ })).toHaveCount(0);
  await order().standsIn('Arrived');
  const { rowVersion } = (await detail()).card;
  const override = { reason: 'the owner says so' };
  const asked = await client.orders.move({
    commandId: newCommandId(),
    id,
    rowVersion,
    to: 'agreed',
    override,
  });
  expect(asked.outcome).toBe('refused');
  expect((await detail()).card.stage).toBe('arrived');
});

test('the shop sends it home: the owner is told, the belongings are back in the box', async () => {
  const { page } = session;
  await order().next.getByRole('button', { name: 'Send it home ...' }).click();
  const sending = page.getByRole('dialog', { name: 'Send it home' });
  await sending.getByLabel('The shop refused the work').check();
  await see(sending).toContainText('The return tag says DO NOT STRING OR DRAW.');
  await sending
    .getByLabel('Reason in a few words')
    .fill('the glass comes off: not safe to work on');
  await session.accessible('send it home');
  await sending.getByRole('button', { name: 'Send it home' }).click();
  await see(sending).toBeHidden();
  await see(page.getByText('Going home: the shop refused the work').first()).toBeVisible();
  await session.accessible('order going home');

  await see(order().next).toContainText('Packed, going home still needs');
  await order().record('not been told', 'phoned 555 0142: the glass lifts, it may not be drawn');
  await order().follow('Belongings not all ticked');
  await new LeavingDriver(page).backInTheBox('String', 'Quiver');
  await order().record('Not paid', 'nothing is owed, return postage by the shop');
  await see(order().next).toContainText(`with the tag ${warning} on it`);
  await order().move('Packed, going home');
  await order().standsIn('Packed');
});

test('it leaves with the warning on its tag, and without a final check', async () => {
  const { page } = session;
  const leaving = new LeavingDriver(page);
  await see(leaving.shipping).toContainText(warning);
  await leaving.parcel();
  await order().move('Shipped');
  const tag = order()
    .next.getByRole('listitem')
    .filter({ hasText: `The return tag ${warning}` });
  await see(tag).toContainText('Nobody may let this pass.');

  await leaving.openPaper('Return tag');
  const { bytes } = await leaving.savePaper();
  const text = await textOf(bytes);
  expect(text).toContain(warning);
  expect(text).toContain('Returned by');
  expect(text).toContain('The customer was told on');
  await leaving.printPaper();
  await order().gone(`The return tag ${warning}`);
  await order().move('Shipped');
  await see(order().next).toContainText('The bow has left the shop.');

  const { card, entries, readings } = await detail();
  expect(card).toMatchObject({ stage: 'shipped', goingHome: 'refused', openStops: 1 });
  expect(entries.filter((entry) => entry.item.startsWith('check-'))).toEqual([]);
  expect(readings).toEqual([]);
  expect(session.troubles()).toEqual([]);
});
