import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { decode, pagesOf, textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { AgreementDriver } from './agreement-driver.ts';
import { BenchDriver } from './bench-driver.ts';
import { openShop, takeIn } from './open-shop.ts';
import { inFinishBehind } from './order-behind.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let agree: AgreementDriver;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  agree = new AgreementDriver(session.page);
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const inscription = () => agree.section('To be written on the bow');
const consents = () => agree.section('Consents');
const price = () => agree.section('Price');

describe('a marking is proposed, declined, changed, approved and lettered', () => {
  const wanted = ['AMO 66"', '45.2# @ 28"'].join('\n');

  test('it is declined by phone, and nothing may be lettered', async () => {
    const { page } = session;
    const { id } = await takeIn(client, {
      order: { services: ['strip-refinish', 're-mark'], targetWeightLbf: null, targetDrawIn: null },
    });
    await inFinishBehind(client, id, 45.2);
    await page.goto(session.at(`orders/${id}`));
    await agree.unfold('Consents');
    await inscription().getByRole('button', { name: 'Write the lines' }).click();
    await page.getByLabel('Exactly as it shall read').fill('FERNHILL\n45.2# @ 28"');
    await page.getByRole('button', { name: 'Save the lines' }).click();
    await inscription().getByRole('button', { name: 'Say where and how' }).click();
    const layout = page.getByRole('form', { name: 'Where and how it is lettered' });
    await layout.getByRole('button', { name: 'Lower limb' }).click();
    await layout.getByRole('button', { name: 'belly', exact: true }).click();
    await layout.getByRole('button', { name: 'stays as it is' }).click();
    await layout.getByRole('button', { name: 'Save where and how' }).click();
    await see(inscription()).toContainText('Lower limb, belly');

    await agree.openPaper('For the customer', 'Inscription proof');
    const proof = await agree.savePaper();
    const text = await textOf(proof.bytes);
    expect(text).toContain('FERNHILL');
    expect(text).toContain('Not asked yet.');
    await agree.printPaper();
    await agree.closeDialog();

    expect(await agree.ask('Marking approval')).toContain('FERNHILL\n45.2# @ 28"');
    const no = 'No, leave the shop name off; the length instead.';
    await agree.openAnswer('Marking approval', { answer: 'Declined', words: no });
    await agree.finishAnswer();
    await see(consents()).toContainText('Marking approval: declined');
    await agree.openPaperRefused('For the bench', 'Bow label and lettering guide', 'declined');
  });

  test('it is changed, and approved by e-mail with the message attached', async () => {
    const { page } = session;
    await inscription().getByRole('button', { name: 'Change the lines' }).click();
    await page.getByLabel('Exactly as it shall read').fill(wanted);
    await page.getByRole('button', { name: 'Save the lines' }).click();
    expect(await agree.ask('Marking approval')).toContain(wanted);
    const words = 'I agree. Nora Hale';
    const dialog = await agree.openAnswer('Marking approval', { answer: 'Granted' });
    await agree.choose('How the answer came', 'E-mail');
    await dialog.getByRole('textbox', { name: /^Words/ }).fill(words);
    const choosing = page.waitForEvent('filechooser');
    await dialog.getByRole('button', { name: 'Attach a file' }).click();
    await (await choosing).setFiles({
      name: 'i-agree.eml',
      mimeType: 'message/rfc822',
      buffer: Buffer.from(`From: nora@hale.example\r\nSubject: Re: marking\r\n\r\n${words}\r\n`),
    });
    await see(dialog.getByLabel('File that shows the answer')).toHaveValue('i-agree.eml');
    await session.accessible('answer by e-mail');
    await agree.finishAnswer();
    await see(consents()).toContainText('Marking approval: granted');
    await see(consents()).toContainText('Shown by i-agree.eml');
  });

  test('the label is printed as approved; editing warns, and voids it in plain sight', async () => {
    const { page } = session;
    await agree.openPaper('For the bench', 'Bow label and lettering guide');
    const { bytes } = await agree.savePaper();
    await agree.closeDialog();
    const text = await textOf(bytes);
    for (const line of wanted.split('\n')) expect(text).toContain(line);
    expect(text).toMatch(/Approved word for word by Nora Hale/);
    const codes = await Promise.all((await pagesOf(bytes)).map((sheet) => decode(sheet)));
    expect(codes.flat().map((code) => code.text)).toContain('26-0001');

    const bench = new BenchDriver(page);
    await agree.unfold('Bench log');
    await bench.write('Lettering applied', 'pen 0.3, India ink');
    await see(bench.entry).toBeHidden();
    await see(inscription()).toContainText('Applied:');
    await agree.unfold('To be written on the bow');
    await inscription().getByRole('button', { name: 'Change the lines' }).click();
    const form = page.getByRole('form', { name: 'Lines to be written on the bow' });
    await see(form.getByText(/Saving this voids/)).toBeHidden();
    await form.getByLabel('Exactly as it shall read').fill(`${wanted}\nH-118`);
    await see(form).toContainText('Saving this voids what the customer granted: marking approval');
    await form.getByRole('button', { name: 'Save the lines' }).click();
    await see(consents()).toContainText('Marking approval: no longer fits');
    await session.accessible('order with a voided approval');
    await session.look('agreement marking');
  });
});

describe('a price is made up, agreed, changed and paid', () => {
  test('the estimate comes from the price list', async () => {
    const { page } = session;
    await page.goto(session.at('settings'));
    await page.getByRole('tab', { name: 'Prices' }).click();
    await page.getByRole('button', { name: 'Add a line for each service' }).click();
    await session.accessible('settings, prices');
    const listed = await client.prices.services({});
    for (const { id, rowVersion, name, service, minutes, taxable } of listed) {
      const priceCents = service === 'reduce-weight' ? 18_000 : 6_550;
      await client.prices.editService({
        commandId: crypto.randomUUID(),
        ...{ id, rowVersion, name, service, minutes, taxable, priceCents, active: true },
      });
    }
    const policy = await client.prices.policy({});
    await client.prices.editPolicy({
      commandId: crypto.randomUUID(),
      ...policy,
      taxRatePpm: 61_250,
      depositPercent: 50,
    });
    const { id } = await takeIn(client, { customer: 'Tilda Moor' });
    await page.goto(session.at(`orders/${id}`));
    await agree.unfold('Price');
    await agree.unfold('Consents');
    await price().getByRole('button', { name: 'Lines for the services asked' }).click();
    const lines = price().getByRole('table', { name: 'Lines of the price' });
    await see(lines.getByRole('row')).toHaveCount(3);
    await see(price()).toContainText('$245.50');
    // 6.125 % of 245.50 is 15.036875.
    await see(price()).toContainText('$260.54');
  });

  test('it is agreed in person with a drawn signature', async () => {
    expect(await agree.ask('Price and scope')).toContain('$260.54');
    const dialog = await agree.openAnswer('Price and scope', { answer: 'Granted' });
    await agree.choose('How the answer came', 'In person');
    await dialog.getByRole('button', { name: 'Record the answer' }).click();
    await see(dialog.getByRole('alert')).toBeVisible();
    await agree.sign();
    await dialog.getByLabel('I sign this').check();
    await session.accessible('signature');
    await agree.finishAnswer();
    await see(consents()).toContainText('Price and scope: granted');
    await see(consents().getByRole('img', { name: 'Signature drawn on the screen' })).toBeVisible();
  });

  test('a later line warns first, then closes the gate', async () => {
    const { page } = session;
    await price().getByRole('button', { name: 'Return freight' }).click();
    const form = page.getByRole('form', { name: 'Add return freight' });
    await see(form).toContainText('Saving this voids what the customer granted: price and scope');
    await form.getByLabel('Price of one, dollars').fill('24.95');
    await form.getByRole('button', { name: 'Add the line' }).click();
    await see(consents()).toContainText('Price and scope: no longer fits');
    await see(price()).toContainText('$285.49');
  });

  test('extra work is agreed by phone and taken up as a line', async () => {
    const { page } = session;
    await agree.ask('Price and scope');
    const words = 'Yes, and new tip overlays for forty more.';
    await agree.openAnswer('Price and scope', { answer: 'Granted', words, cost: '40' });
    await agree.finishAnswer();
    await see(price()).toContainText('Agreed by phone: +$40.00, not yet in the lines');
    await price().getByRole('button', { name: 'Add it as a line' }).click();
    const form = page.getByRole('form', { name: 'Add what was agreed' });
    await form.getByLabel('What the customer reads').fill('New tip overlays');
    await form.getByRole('button', { name: 'Add the line' }).click();
    await see(price()).not.toContainText('not yet in the lines');
    // Taxed 285.50: 17.486875; with freight 327.94.
    await see(price()).toContainText('$327.94');
    await session.look('agreement price');
  });

  test('deposit and balance are paid; estimate and receipt agree line by line', async () => {
    const { page } = session;
    for (const cents of ['163.97', '163.97']) {
      await price().getByRole('button', { name: 'Record a payment' }).click();
      const form = page.getByRole('form', { name: 'Record a payment' });
      await see(form.getByLabel('Amount, dollars')).toHaveValue(cents);
      await form.getByRole('button', { name: 'Record it' }).click();
      await see(form).toBeHidden();
    }
    await see(price()).toContainText('Paid, nothing open');
    const texts: string[] = [];
    for (const kind of ['Estimate', 'Receipt']) {
      await agree.openPaper('For the customer', kind);
      texts.push(await textOf((await agree.savePaper()).bytes));
      await agree.closeDialog();
    }
    const amounts = texts.map((text) => {
      const from = text.indexOf('Reduce');
      const to = text.indexOf('$327.94', from);
      expect(from).toBeGreaterThan(0);
      expect(to).toBeGreaterThan(from);
      return text.slice(from, to);
    });
    expect(amounts[1]).toBe(amounts[0]);
    for (const cents of ['$180.00', '$65.50', '$24.95', '$40.00', '$17.49']) {
      expect(amounts[0]).toContain(cents);
    }
  });
});

describe('papers and messages leave the shop', () => {
  test('a message is drafted, saved as a mail file with its paper, and kept', async () => {
    const { page } = session;
    await agree.unfold('Messages');
    await agree.section('Messages').getByRole('button', { name: 'Write a message' }).click();
    const dialog = page.getByRole('dialog');
    await see(dialog.getByLabel('Message', { exact: true })).not.toHaveValue('');
    await dialog.getByLabel('Estimate').check();
    await session.accessible('message');
    await session.look('agreement message');
    const { name, bytes } = await agree.saving(() =>
      dialog.getByRole('button', { name: 'Save as a mail file' }).click(),
    );
    expect(name).toMatch(/\.eml$/);
    const mail = Buffer.from(bytes).toString('utf8');
    expect(mail).toMatch(/^To: .*nora@hale\.example/m);
    expect(mail).toMatch(/^X-Unsent: 1/m);
    expect(pdfIn(mail).subarray(0, 5).toString()).toBe('%PDF-');
    expect(await textOf(new Uint8Array(pdfIn(mail)))).toContain('New tip overlays');
    await agree.closeDialog();
    await see(agree.section('Messages')).toContainText('saved as a mail file by Ida Penn, with');
  });

  test('every paper of an order that can be made is previewed, printed and saved', async () => {
    const { page } = session;
    const made: string[] = [];
    for (const [group, kind] of [
      ['For the customer', 'Consent form'],
      ['For the customer', 'Estimate'],
      ['For the customer', 'Receipt'],
      ['For the bench', 'Work order'],
      ['For the parcel', 'Shipping tag'],
    ] as const) {
      if (kind === 'Consent form') await agree.ask('Alteration acknowledgement');
      await agree.openPaper(group, kind);
      const { bytes } = await agree.savePaper();
      expect(await textOf(bytes)).toContain('26-0002');
      await agree.printPaper();
      await agree.closeDialog();
      made.push(kind);
    }
    await page.goto(session.at('papers'));
    await page.getByLabel('Order number').fill('26-0002');
    await see(page.getByText('26-0001')).toHaveCount(0);
    for (const kind of made) {
      const reprints = page.getByRole('button', { name: new RegExp(`^Reprint ${kind} 26-0002`) });
      expect(await reprints.count(), kind).toBeGreaterThanOrEqual(2);
    }
    await session.accessible('papers');
    await session.look('agreement papers');
  });

  test('a reprint of a changed order says so', async () => {
    const { page } = session;
    const [found] = (
      await client.papers.list({ kind: 'estimate', orderNumber: '26-0002', page: 0 })
    ).papers;
    const { price: now, card } = await client.orders.get({ id: found?.orderId ?? '' });
    await client.prices.addLine({
      commandId: crypto.randomUUID(),
      ...{ orderId: card.id, rowVersion: card.rowVersion, kind: 'other', what: 'Grip wrap' },
      ...{ quantity: 1, unitCents: 1_500, discountBp: null, taxable: true, minutes: 0 },
      answerId: null,
    });
    expect(now.lines).toHaveLength(4);
    const reprint = page.getByRole('button', { name: /^Reprint Estimate 26-0002/ }).first();
    await see(page.getByText('outdated: the order has changed since').first()).toBeVisible();
    await reprint.click();
    await agree.previewed();
    await see(page.getByRole('dialog').getByRole('status')).toContainText(/chang|differ/i);
    expect(await textOf((await agree.savePaper()).bytes)).toContain('Grip wrap');
    await agree.closeDialog();
  });
});

describe('the shop writes its own wordings', () => {
  test('a warranty may not be called void; a good text becomes version 1', async () => {
    const { page } = session;
    await page.goto(session.at('settings'));
    await page.getByRole('tab', { name: 'Wordings' }).click();
    await page.getByRole('button', { name: 'Change Alteration acknowledgement' }).click();
    const dialog = page.getByRole('dialog');
    const text = dialog.getByLabel('Text', { exact: true });
    const before = await text.inputValue();
    await text.fill(`${before}\nThe maker's warranty is void.`);
    await dialog.getByRole('button', { name: 'Save as a new version' }).click();
    await see(text).toHaveAttribute('aria-invalid', 'true');
    await see(dialog).toContainText(/warranty is void/);
    await text.fill(`${before}\nWe photograph every step.`);
    await see(dialog.getByRole('region', { name: /^Preview/ })).toContainText('every step');
    await session.accessible('wording');
    await session.look('agreement wording');
    await dialog.getByRole('button', { name: 'Save as a new version' }).click();
    await see(dialog).toBeHidden();
    const item = page.getByRole('article', { name: 'Alteration acknowledgement' });
    await see(item).toContainText('Version 1');
    await session.accessible('settings, wordings');
  });

  test('no screen threw an error that nobody caught', () => {
    expect(session.troubles()).toEqual([]);
  });
});

/** The first PDF attached to a message. */
function pdfIn(mail: string): Buffer {
  const [, part = ''] = mail.split(/Content-Type: application\/pdf/);
  const [, body = ''] = part.split(/\r\n\r\n/);
  return Buffer.from(body.replaceAll(/[^A-Za-z0-9+/=]/g, ''), 'base64');
}
