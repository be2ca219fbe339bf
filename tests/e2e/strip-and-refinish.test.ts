import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import type { Client } from '../support/doors.ts';
import { BenchDriver } from './bench-driver.ts';
import { dayMs, hourMs, minuteMs, twoPartBehind } from './finish-behind.ts';
import { FinishLogDriver } from './finish-log-driver.ts';
import { FinishRoomDriver } from './finish-room-driver.ts';
import { LeavingDriver } from './leaving-driver.ts';
import { openShop, takeIn } from './open-shop.ts';
import { OrderDriver } from './order-driver.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let id: string;
let number: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  await twoPartBehind(client);
  ({ id, number } = await takeIn(client, {
    order: { services: ['strip-refinish', 're-mark'], targetWeightLbf: null, targetDrawIn: null },
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
const bench = () => new BenchDriver(session.page);
const finish = () => new FinishLogDriver(session.page);

async function inTheFinishRoom(): Promise<FinishRoomDriver> {
  await session.page.goto(session.at('finish-room'));
  return new FinishRoomDriver(session.page);
}

/** Writes or changes the lines in their own section. */
async function writeLines(lines: string): Promise<void> {
  const { page } = session;
  const inscription = page.getByRole('region', { name: 'To be written on the bow' });
  await inscription.getByRole('button', { name: /the lines$/ }).click();
  await page.getByLabel('Exactly as it shall read').fill(lines);
  await page.getByRole('button', { name: 'Save the lines' }).click();
  await see(inscription.locator('pre')).toHaveText(lines);
}

test('it arrives, and its owner fetches it over the counter', async () => {
  const { page } = session;
  const table = await order().unpack('when the box was opened');
  await table.box('finish crazed and yellow, glass sound');
  await table.nothingCameAlong();
  await table.lookedOver();
  await table.strung();
  await table.complete();
  await table.backToTheOrder();
  await page.getByLabel('collected', { exact: true }).click();
  await see(page.getByRole('list', { name: 'Stages of this order' })).toContainText('Collected');
  await order().move('Arrived');
  await order().standsIn('Arrived');
});

test('the customer accepts that sanding takes weight off', async () => {
  const { page } = session;
  await order().consent('Price and scope');
  await order().consent('Alteration acknowledgement');
  await order().follow('Expected loss of weight');
  const asking = page.getByRole('dialog', { name: 'Ask the customer' });
  await see(asking.getByLabel(/^Text the customer reads/)).toHaveValue(/weight/i);
  await order().finishAsking('Expected loss of weight');
  await order().move('Agreed');
  await order().standsIn('Agreed');
});

test('it is weighed before anything is taken off, and again after sanding', async () => {
  const { page } = session;
  const weight = page.getByRole('region', { name: 'Weight', exact: true });
  await weight.getByRole('button', { name: 'Weigh', exact: true }).click();
  await see(order().weighing.getByLabel('When in the job')).toHaveValue('Arrival');
  await order().pull(52.1);
  await see(weight).toContainText('52.1# @ 28"');
  await order().move('Strip & sand');
  await order().standsIn('Strip & sand');
  await order().weigh('No weighing after sanding', 50.6);
  await see(weight).toContainText('50.6# @ 28"');
  await order().follow('Last grit not recorded');
  await finish().sandLimbs(320);
  await order().follow('No finish chosen');
  await finish().choose('Satin top coat');
  await order().follow('Air not read');
  await finish().readAir();
  await order().gone('Air not read');
  await order().move('Finish');
  await order().standsIn('Finish');
});

test('the old weight may not be lettered; the weight after sanding may, once approved', async () => {
  await writeLines('AMO 66"\n52# @ 28"');
  await order().ask('Marking approval');
  await bench().write('Lettering applied');
  await see(bench().log).toContainText(
    '"52# @ 28" is to be written, but the last weighing at 28" AMO was 50.6 lb.',
  );
  await see(bench().log.getByRole('button', { name: /Let it pass/ })).toHaveCount(0);
  await session.accessible('lettering refused');
  await bench().entry.getByRole('button', { name: 'Cancel' }).click();

  await writeLines('AMO 66"\n50.6# @ 28"');
  await bench().write('Lettering applied');
  await see(bench().log).toContainText('Marking approval no longer fits');
  await bench().entry.getByRole('button', { name: 'Cancel' }).click();
  await order().ask('Marking approval');
  await bench().write('Lettering applied', 'upper limb, belly, white ink');
  await see(bench().entry).toBeHidden();
});

test('no clear coat goes over lettering that is not noted as dry', async () => {
  const room = await inTheFinishRoom();
  await room.typeAir({ airF: 70, humidity: 45, surfaceF: 68 });
  await room.earlier('Read the air', 5 * dayMs);
  await room.recordAir();
  await room.typeMix(60);
  await room.earlier('Mix a batch', 5 * dayMs - 30 * minuteMs);
  await room.mix();
  await room.typeCoat(/Usable for 1 h 30 min/, [number], 5 * dayMs - hourMs);
  const against = room.form('Coat bows').getByRole('alert');
  await see(against).toContainText('Lettering not noted as dry.');
  await against.getByRole('link', { name: number }).click();
  await bench().entry.getByLabel('Note').fill('thumb leaves no mark');
  await bench().entry.getByRole('button', { name: 'Record', exact: true }).click();
  await see(bench().entry).toBeHidden();
});

test('a bow that went on without its coat on record is led back for it', async () => {
  const { page } = session;
  await order().move('Cure');
  await order().standsIn('Cure');
  await order().follow('No coat recorded in the finish room');
  await see(finish().section).toContainText('Move the bow back to Finish');
  await session.accessible('a coat that is missed');
  await order().next.getByRole('button', { name: 'Move to...' }).click();
  await page.getByRole('menuitem', { name: 'Back to Finish' }).click();
  await page.getByLabel('Why does the order go back?').fill('its coat was not written down');
  await page.getByRole('button', { name: 'Move back to Finish' }).click();
  await order().standsIn('Finish');
});

test('it is coated over dry lettering, cures and passes the final check', async () => {
  const { page } = session;
  const room = await inTheFinishRoom();
  await room.typeCoat(/Usable for 1 h 30 min/, [number], 5 * dayMs - hourMs);
  const form = room.form('Coat bows');
  await form.getByRole('radio', { name: 'First clear coat over the lettering' }).check();
  await see(form.getByRole('alert')).toHaveCount(0);
  await room.recordCoat();
  await page.getByRole('link', { name: number }).first().click();
  await order().move('Cure');
  await order().standsIn('Cure');
  await order().move('Final check');
  await order().standsIn('Final check');
  const leaving = new LeavingDriver(session.page);
  await order().follow('Weighed at the marked draw');
  await leaving.check.getByRole('button', { name: 'Weigh it now' }).click();
  await order().pull(50.7);
  await see(leaving.check).toContainText('Markings legible and word for word');
  await leaving.allInOrder();
  await see(leaving.check).toContainText('Nothing came along.');
  await order().record('Not paid', 'paid in cash');
  await order().move('Packed');
  await order().standsIn('Packed');
});

test('nobody measures a parcel for a bow that is collected: it asks only who took it', async () => {
  expect(await order().missing()).toEqual([expect.stringContaining('Not noted who took it.')]);
  await order().record('who took it', 'Nora Hale herself');
  await order().move('Collected');
  await see(order().next).toContainText('The bow has left the shop.');
  await order().standsIn('Collected');
  const { card, consents, inscription, entries } = await client.orders.get({ id });
  expect(card.stage).toBe('collected');
  expect(inscription).toBe('AMO 66"\n50.6# @ 28"');
  const loss = consents.filter((consent) => consent.kind === 'expected-weight-loss');
  expect(loss.map((consent) => consent.state)).toEqual(['granted']);
  expect(entries.filter((entry) => entry.item === 'lettering-applied')).toHaveLength(1);
  expect(session.troubles()).toEqual([]);
});
