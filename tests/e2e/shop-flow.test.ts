import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { decode, pagesOf, textOf } from '../core/papers/read-back.ts';
import { BenchDriver } from './bench-driver.ts';
import { dayMs } from './finish-behind.ts';
import { FinishLogDriver } from './finish-log-driver.ts';
import { FinishRoomDriver } from './finish-room-driver.ts';
import { FinishSheetDriver } from './finish-sheet-driver.ts';
import { bowBox, LeavingDriver } from './leaving-driver.ts';
import { OrderDriver } from './order-driver.ts';
import { type Page, expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;

beforeAll(async () => {
  session = await Session.open();
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

/** Drags a card by hand: the mouse goes in steps, as the board starts a drag only after some way. */
async function drag(page: Page, card: RegExp, column: RegExp): Promise<void> {
  const from = await page.getByRole('article', { name: card }).boundingBox();
  const to = await page.getByRole('region', { name: column }).boundingBox();
  if (from === null || to === null) throw new Error('the card or the column is not on the screen');
  await page.mouse.move(from.x + from.width / 2, from.y + 8);
  await page.mouse.down();
  await page.mouse.move(from.x + from.width / 2 + 20, from.y + 20, { steps: 5 });
  await page.mouse.move(to.x + to.width / 2, to.y + 80, { steps: 12 });
  await page.mouse.up();
}

/** Each step goes on where the one before stopped, as the job does. */
describe('a request becomes a shipped parcel', () => {
  test('the shop is opened and its scale checked', async () => {
    const { page } = session;
    await page.goto(session.program.url);
    await see(page.getByRole('heading', { name: 'Open your shop' })).toBeVisible();
    await session.accessible('first start');
    await page.getByLabel('Shop name').fill('Fernhill Bow Works');
    await page.getByLabel('Street').fill('4 Mill Lane');
    await page.getByLabel('Town').fill('Ashdale');
    await page.getByLabel("Owner's name").fill('Ida Penn');
    await page.getByRole('button', { name: 'Open the shop' }).click();
    await see(page.getByRole('heading', { name: 'Today', level: 1 })).toBeVisible();
    await see(page.getByText('No orders in work')).toBeVisible();
    await session.accessible('empty Today');
    await page.goto(session.at('board'));
    await see(page.getByText('No orders in work')).toBeVisible();
    await session.accessible('empty board');

    await page.goto(session.at('settings'));
    await page.getByRole('tab', { name: 'Scales' }).click();
    await page.getByRole('button', { name: 'Add a scale' }).click();
    const adding = page.getByRole('dialog');
    await adding.getByLabel('Name').fill('bench scale');
    await adding.getByLabel('Smallest step it shows').fill('0.1');
    await adding.getByRole('button', { name: /add|save/i }).click();
    await page.getByRole('button', { name: 'Check with two loads: bench scale' }).click();
    const checking = page.getByRole('dialog');
    for (const [label, pounds] of [
      ['Light load, known weight', '20'],
      ['Light load, scale reads', '20.1'],
      ['Heavy load, known weight', '60'],
      ['Heavy load, scale reads', '60.2'],
    ] as const) {
      await checking.getByLabel(label).fill(pounds);
    }
    await checking.getByRole('button', { name: 'Save the check' }).click();
    await see(checking).toBeHidden();
    await session.accessible('settings');
  });

  test('the oil it uses is copied from its data sheet, with no stores to keep it in', async () => {
    const { page } = session;
    await page.goto(session.at('settings?tab=finishes'));
    await page.getByRole('button', { name: 'Add a finish' }).click();
    const sheet = new FinishSheetDriver(page);
    await sheet.copyOil();
    await sheet.add();
    await sheet.isAdded();
    await see(page.getByRole('article', { name: 'Rubbing oil' })).toContainText('Hand-rubbed oil');
  });

  test('a request is typed at Intake, kept through a power cut, and taken in', async () => {
    const { page } = session;
    await page.goto(session.at('intake'));
    await page.getByLabel('Name, phone or e-mail').fill('Nora Hale');
    await page.getByRole('option', { name: 'New customer: Nora Hale' }).click();
    await page.getByLabel('Street').fill('12 Orchard Road');
    await page.getByLabel('Town').fill('Millbrook');
    await page.getByLabel('Phone', { exact: true }).first().fill('555 0142');
    await page.getByLabel('A new bow').check();
    await page.getByLabel('Maker').fill('Oldfield');
    await page.getByLabel('Reduce weight').check();
    await page.getByLabel('Re-mark').check();
    await page.getByLabel('Target weight, pounds').fill('45');
    await page.getByLabel('Estimate, dollars').fill('240');
    await see(page.getByText(/saved \d/i)).toBeVisible();
    await session.restart('SIGKILL');
    await page.goto(session.at('intake'));
    await see(page.getByLabel('Target weight, pounds')).toHaveValue('45');
    await session.accessible('intake');
    await session.picture('intake');
    await page.getByRole('button', { name: 'Take in the request' }).click();
    await see(page.getByRole('region', { name: 'Taken in' })).toContainText('26-0001');
    await session.accessible('intake, taken in');
  });

  test('the board refuses a move that is not due, and leads to what is missing', async () => {
    const { page } = session;
    await page.goto(session.at('board'));
    await page
      .getByRole('article', { name: /26-0001/ })
      .getByRole('button', { name: /^Move to/ })
      .click();
    await page.getByRole('menuitem', { name: 'Agreed' }).click();
    const refusal = page.getByRole('dialog');
    await see(refusal).toContainText('Condition on arrival not recorded.');
    await see(refusal).toContainText('Price and scope has not been asked for.');
    await session.accessible('refused move');
    await page.keyboard.press('Escape');
    await see(refusal).toBeHidden();
    await drag(page, /^Order 26-0001/, /^In the mail/);
    const column = page.getByRole('region', { name: /^In the mail, 1 order/ });
    await see(column.getByRole('link', { name: '26-0001' })).toBeVisible();
    await column.getByRole('link', { name: '26-0001' }).click();
    await new OrderDriver(page).standsIn('In the mail');
  });

  test('the bow arrives, is agreed on and weighed', async () => {
    const order = new OrderDriver(session.page);
    const table = await order.unpack('when the box was opened');
    await session.accessible('unpacking table');
    await table.box('clean, finish worn at the grip', 'tube with caps, box dry');
    await table.cameAlong('String', 'Sock');
    await table.lookedOver();
    await table.strung();
    await table.complete();
    await session.picture('unpacking');
    await table.backToTheOrder();
    await order.move('Arrived');
    await order.standsIn('Arrived');
    await session.accessible('order');
    await order.record('target can be reached', 'seven pounds of fifty-two, wide limbs');
    await order.consent('Price and scope');
    await order.consent('Alteration acknowledgement');
    await order.move('Agreed');
    await order.standsIn('Agreed');
    await order.weigh('No arrival weighing', 52.3);
    await order.follow('Limbs not measured');
    await new BenchDriver(session.page).measure([
      { width: '1 1/8', thou: '420' },
      { width: '1', thou: '390' },
      { width: '7/8', thou: '352' },
    ]);
    await order.gone('Limbs not measured');
    await order.record('weight plan', 'narrow both limbs, stop at 46.5');
    await order.record('glass is bare', 'no thinning planned');
    await order.move('Weight work');
    await order.standsIn('Weight work');
    await session.picture('order');
  });

  test('stopped and started in between, nothing is lost', async () => {
    const { page } = session;
    const address = new URL(page.url()).pathname;
    await session.restart('SIGTERM');
    await page.goto(session.at(address));
    const order = new OrderDriver(page);
    await order.standsIn('Weight work');
    await see(page.getByText('52.3# @ 28"').first()).toBeVisible();
    await order.move('Strip & sand');
    await order.standsIn('Strip & sand');
    await order.weigh('weighing after sanding', 45.3);
    const finish = new FinishLogDriver(page);
    await order.follow('Last grit not recorded');
    await finish.sandLimbs(220);
    await order.gone('Last grit not recorded');
    await order.follow('No finish chosen');
    await finish.choose('Rubbing oil');
    await order.gone('No finish chosen');
    await order.follow('Air not read');
    await finish.readAir();
    await order.gone('Air not read');
    await order.move('Finish');
    await order.standsIn('Finish');
  });

  test('lettering waits for the lines and their approval', async () => {
    const { page } = session;
    const order = new OrderDriver(page);
    const bench = new BenchDriver(page);
    await bench.write('Lettering applied');
    await see(bench.log).toContainText('No lines given to write on the bow.');
    await bench.entry.getByRole('button', { name: 'Cancel' }).click();

    const lines = page.getByRole('region', { name: /written on the bow/i });
    await lines.getByRole('button').first().click();
    await page.getByLabel('Exactly as it shall read').fill('AMO 66"\n45# @ 28"');
    await page.getByRole('button', { name: 'Save the lines' }).click();
    await see(lines).toContainText('45# @ 28"');
    await order.ask('Marking approval');
    await bench.noted('Lettering applied', '');
    await bench.noted('Lettering dry', 'thumb leaves no mark');
  });

  test('it is oiled in the finish room, written down when the days of its sheet are up', async () => {
    const { page } = session;
    const finish = new FinishLogDriver(page);
    await finish.section.getByRole('link', { name: 'Mix and coat in the finish room' }).click();
    const room = new FinishRoomDriver(page);
    await room.typeAir({ airF: 70, humidity: 45, surfaceF: 68 });
    await room.earlier('Read the air', 5 * dayMs);
    await room.recordAir();
    await room.typeCoat(/^Rubbing oil/, ['26-0001'], 5 * dayMs);
    await see(room.form('Coat bows').getByRole('radio', { name: 'Coat of oil' })).toBeChecked();
    await room.recordCoat();
    await page.getByRole('link', { name: '26-0001' }).first().click();
    await see(finish.section.getByRole('list', { name: 'Coats' })).toContainText('Coat of oil');
  });

  test('it cures and passes the final check, its belongings back in the box', async () => {
    const { page } = session;
    const order = new OrderDriver(page);
    const leaving = new LeavingDriver(page);
    await order.move('Cure');
    await order.standsIn('Cure');
    await order.move('Final check');
    await order.standsIn('Final check');
    await order.follow('Weighed at the marked draw');
    await leaving.check.getByRole('button', { name: 'Weigh it now' }).click();
    await order.pull(45.2);
    await session.accessible('order in final check');
    await leaving.allInOrder();
    await leaving.backInTheBox('String', 'Sock');
    await order.record('Not paid', 'paid by card');
    await order.move('Packed');
    await order.standsIn('Packed');
  });

  test('its tag is printed, with address and numbers that a scanner reads', async () => {
    const { page } = session;
    const leaving = new LeavingDriver(page);
    await leaving.openPaper('Shipping tag');
    await session.accessible('paper preview');
    await session.picture('shipping-tag');
    const { name, bytes } = await leaving.savePaper();
    expect(name).toBe('26-0001 shipping tag.pdf');
    const [sheet] = await pagesOf(bytes);
    if (sheet === undefined) throw new Error('the tag has no page');
    const codes = await decode(sheet);
    expect(codes.map((code) => code.text)).toEqual(['26-0001', '26-0001']);
    const text = await textOf(bytes);
    expect(text).toContain('12 Orchard Road');
    expect(text).not.toContain('DO NOT STRING OR DRAW');
    await leaving.printPaper();
  });

  test('the box is held against a carrier, it ships, and its whole story is there', async () => {
    const { page } = session;
    const order = new OrderDriver(page);
    const leaving = new LeavingDriver(page);
    await leaving.parcel({ ...bowBox, weightLb: '80', lengthIn: '120' });
    await see(order.next).toContainText('The carrier does not take this box.');
    await order.follow('does not take this box');
    const form = page.getByRole('form', { name: 'Parcel going out' });
    await form.getByLabel('Length, inches').fill('70');
    await form.getByLabel('Weight, pounds').fill('4.5');
    await see(form).toContainText('Postal ground takes this parcel');
    await form.getByRole('button', { name: 'Save the parcel' }).click();
    await order.gone('does not take this box');
    await order.move('Shipped');
    await see(order.next).toContainText('The bow has left the shop.');
    await session.restart('SIGKILL');
    await page.goto(session.at('customers'));
    await page
      .getByRole('textbox', { name: /find|search/i })
      .last()
      .fill('hale');
    await page.getByRole('link', { name: /Nora Hale/ }).click();
    await see(page.getByRole('link', { name: '26-0001' })).toBeVisible();
    await session.accessible('customer');
    expect(session.troubles()).toEqual([]);
  });
});
