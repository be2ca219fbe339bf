import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { AgreementDriver } from './agreement-driver.ts';
import { openShop, takeIn } from './open-shop.ts';
import { grantedBehind, movedBehind, unpacked } from './order-behind.ts';
import { expect as see } from './page.ts';
import { PriceDriver } from './price-driver.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let agree: AgreementDriver;
let price: PriceDriver;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  agree = new AgreementDriver(session.page);
  price = new PriceDriver(session.page);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const consents = () => agree.section('Consents');
const next = () => agree.section('Next step');

/** A bow unpacked and agreed on in all but its price. */
async function allButPrice(id: string): Promise<void> {
  await unpacked(client, id);
  await movedBehind(client, id, 'arrived');
  await grantedBehind(client, id, 'alteration-acknowledgement');
  await grantedBehind(client, id, 'expected-weight-loss');
}

describe('a price is made up, agreed, changed and paid', () => {
  test('the price list and the rules of the shop are written in Settings', async () => {
    const { page } = session;
    await page.goto(session.at('settings?tab=prices'));
    await page.getByRole('button', { name: 'Add a line for each service' }).click();
    await see(page.getByText('No price yet').first()).toBeVisible();
    await session.accessible('settings, prices');
    for (const [name, dollars] of [
      ['Reduce weight', '180'],
      ['Re-mark', '65.50'],
    ] as const) {
      await page.getByRole('button', { name: `Change ${name}` }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByLabel('Price, dollars').fill(dollars);
      await dialog.getByRole('button', { name: 'Save', exact: true }).click();
      await see(dialog).toBeHidden();
    }
    const rules = agree.section('Tax, deposit and fees');
    for (const [label, value] of [
      ['Tax rate, percent', '6.125'],
      ['Deposit asked, percent of the total', '50'],
      ['Rush fee, dollars', '35'],
      ['Return freight, dollars', '24.95'],
    ] as const) {
      await rules.getByLabel(label).fill(value);
    }
    await rules.getByRole('button', { name: 'Save', exact: true }).click();
    await see(rules.getByRole('status')).toContainText('Saved.');
  });

  test('services, a discount in percent and a rush fee come to the total with tax and deposit', async () => {
    const { page } = session;
    const { id } = await takeIn(client, { customer: 'Tilda Moor' });
    await allButPrice(id);
    await page.goto(session.at(`orders/${id}`));
    await agree.unfold('Price');
    await agree.unfold('Consents');
    await price.section.getByRole('button', { name: 'Lines for the services asked' }).click();
    await see(price.lines.getByRole('row')).toHaveCount(3);
    await price.add('Discount', 'Add a discount', {
      'What the customer reads': 'Second bow this year',
      'Percent of what stands above': '10',
    });
    await price.add('Rush fee', 'Add a rush fee', {});
    // 180.00 + 65.50 - 24.55 + 35.00 = 255.95; 6.125 % of it is 15.6769375.
    await see(price.section).toContainText('-$24.55');
    await see(price.section).toContainText('$255.95');
    await see(price.section).toContainText('$15.68');
    await see(price.section).toContainText('$271.63');
    // Half of it is 135.815.
    await see(price.section).toContainText('$135.82');
    await see(next()).toContainText('Price and scope');
  });

  test('it is agreed in person with a signature drawn, which opens the gate', async () => {
    expect(await agree.ask('Price and scope')).toContain('Total: $271.63');
    const dialog = await agree.openAnswer('Price and scope', { answer: 'Granted' });
    await agree.choose('How the answer came', 'In person');
    await dialog.getByRole('button', { name: 'Record the answer' }).click();
    await see(dialog.getByRole('alert')).toBeVisible();
    await agree.sign();
    await dialog.getByLabel('I sign this').check();
    await session.accessible('signature');
    await session.look('agreement signature');
    await agree.finishAnswer();
    await see(consents()).toContainText('Price and scope: granted');
    await see(consents().getByRole('img', { name: 'Signature drawn on the screen' })).toBeVisible();
    await see(next()).not.toContainText('Price and scope');
  });

  test('a later line warns first, then closes the gate', async () => {
    const form = await price.open('Return freight', 'Add return freight', {});
    await see(form).toContainText('Saving this voids what the customer granted: price and scope');
    await form.getByRole('button', { name: 'Add the line' }).click();
    await see(consents()).toContainText('Price and scope: no longer fits');
    await see(price.section).toContainText('$296.58');
    await see(next()).toContainText('Price and scope');
  });

  test('an extra agreed by phone is taken up as a line; the gate stays shut until it is asked for', async () => {
    await agree.ask('Price and scope');
    const words = 'Yes, and new tip overlays for forty more.';
    await agree.openAnswer('Price and scope', { answer: 'Granted', words, cost: '40' });
    await agree.finishAnswer();
    await see(next()).not.toContainText('Price and scope');
    await see(price.section).toContainText('Agreed by phone: +$40.00, not yet in the lines');
    await price.add('Add it as a line', 'Add what was agreed', {
      'What the customer reads': 'New tip overlays',
    });
    await see(price.section).not.toContainText('not yet in the lines');
    // Taxed 295.95: 18.1269375; with freight 339.03.
    await see(price.section).toContainText('$339.03');
    await see(consents()).toContainText('Price and scope: no longer fits');
    await see(next()).toContainText('Price and scope');
    expect(await agree.ask('Price and scope')).toContain('- New tip overlays: $40.00');
    await agree.openAnswer('Price and scope', { answer: 'Granted', words: 'Just so.' });
    await agree.finishAnswer();
    await see(next()).not.toContainText('Price and scope');
    await session.look('agreement price');
  });

  test('deposit and balance are paid; estimate and receipt agree line by line', async () => {
    // Half of 339.03 is 169.515.
    await price.pay('Check', '169.52', 'No. 1204');
    await price.pay('Cash', '169.51');
    await see(price.section).toContainText('Paid, nothing open');
    const texts: string[] = [];
    for (const kind of ['Estimate', 'Receipt']) {
      await agree.openPaper('For the customer', kind);
      texts.push(await textOf((await agree.savePaper()).bytes));
      await agree.closeDialog();
    }
    const amounts = texts.map((text) => {
      const from = text.indexOf('Reduce');
      const to = text.indexOf('$339.03', from);
      expect(from).toBeGreaterThan(0);
      expect(to).toBeGreaterThan(from);
      return text.slice(from, to);
    });
    expect(amounts[1]).toBe(amounts[0]);
    const lines = ['$180.00', '$65.50', '-$24.55', '$35.00', '$24.95', '$40.00', '$18.13'];
    for (const cents of lines) expect(amounts[0]).toContain(cents);
    expect(texts[1]).toContain('No. 1204');
  });
});

describe('papers of the order', () => {
  test('they are previewed, saved and printed, and may be made again', async () => {
    const { page } = session;
    await agree.ask('Alteration acknowledgement');
    const kinds = [
      ['For the customer', 'Estimate'],
      ['For the customer', 'Receipt'],
      ['For the customer', 'Consent form'],
      ['For the bench', 'Work order'],
      ['For the parcel', 'Shipping tag'],
    ] as const;
    for (const [group, kind] of kinds) {
      await agree.openPaper(group, kind);
      const { bytes } = await agree.savePaper();
      expect(await textOf(bytes)).toContain('26-0001');
      // The money papers were saved before.
      if (kind !== 'Estimate' && kind !== 'Receipt') await agree.printPaper();
      await agree.closeDialog();
    }
    await page.goto(session.at('papers'));
    await page.getByLabel('Order number').fill('26-0001');
    for (const [, kind] of kinds) {
      const reprints = page.getByRole('button', { name: new RegExp(`^Reprint ${kind} 26-0001`) });
      await see(reprints.nth(1), kind).toBeVisible();
    }
    await session.accessible('papers');
    await session.look('agreement papers');
  });

  test('a reprint of a changed order says so, and an unchanged one too', async () => {
    const { page } = session;
    const { papers } = await client.papers.list({ kind: 'estimate', orderNumber: '', page: 0 });
    const { card } = await client.orders.get({ id: papers[0]?.orderId ?? '' });
    const reprint = page.getByRole('button', { name: /^Reprint Estimate 26-0001/ }).first();
    await reprint.click();
    await agree.previewed();
    await see(page.getByRole('dialog')).toContainText('It says the same as the old paper.');
    await agree.closeDialog();
    await client.prices.addLine({
      commandId: newCommandId(),
      ...{ orderId: card.id, rowVersion: card.rowVersion, kind: 'other', what: 'Grip wrap' },
      ...{ quantity: 1, unitCents: 1_500, discountBp: null, taxable: true, minutes: 0 },
      answerId: null,
    });
    await see(page.getByText('outdated: the order has changed since').first()).toBeVisible();
    await reprint.click();
    await agree.previewed();
    await see(page.getByRole('dialog')).toContainText('This paper says something else now');
    expect(await textOf((await agree.savePaper()).bytes)).toContain('Grip wrap');
    await agree.closeDialog();
  });

  test('no screen threw an error that nobody caught', () => {
    expect(session.troubles()).toEqual([]);
  });
});
