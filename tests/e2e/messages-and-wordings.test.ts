import PostalMime from 'postal-mime';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { AgreementDriver } from './agreement-driver.ts';
import { openShop, takeIn } from './open-shop.ts';
import { expect as see } from './page.ts';
import { Session } from './session.ts';

let session: Session;
let client: Client;
let agree: AgreementDriver;
let orderId: string;

beforeAll(async () => {
  session = await Session.open();
  client = await openShop(session);
  agree = new AgreementDriver(session.page);
  ({ id: orderId } = await takeIn(client));
});

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.evidence(task.name);
});

afterAll(async () => {
  await session?.close();
});

const messages = () => agree.section('Messages');
const consents = () => agree.section('Consents');

describe('a message leaves the shop', () => {
  test('it is drafted, saved as a mail file with its paper, and kept', async () => {
    const { page } = session;
    await page.goto(session.at(`orders/${orderId}`));
    await agree.unfold('Messages');
    await messages().getByRole('button', { name: 'Write a message' }).click();
    const dialog = page.getByRole('dialog');
    const body = dialog.getByRole('textbox', { name: 'Message' });
    await see(body).not.toHaveValue('');
    const written = `${await body.inputValue()}\nThe box came on a Tuesday.`;
    await body.fill(written);
    await dialog.getByRole('checkbox', { name: 'Estimate' }).check();
    await session.accessible('message');
    await session.look('agreement message');
    const { name, bytes } = await agree.saving(() =>
      dialog.getByRole('button', { name: 'Save as a mail file' }).click(),
    );
    expect(name).toMatch(/\.eml$/);
    const mail = await PostalMime.parse(bytes, { attachmentEncoding: 'arraybuffer' });
    expect(mail.to?.map(({ address }) => address)).toEqual(['nora@hale.example']);
    expect(mail.text?.trim()).toBe(written.trim());
    expect(mail.headers.find(({ key }) => key === 'x-unsent')?.value).toBe('1');
    const [paper, ...more] = mail.attachments;
    expect(more).toEqual([]);
    expect(paper?.mimeType).toBe('application/pdf');
    const pdf = paper?.content;
    if (!(pdf instanceof ArrayBuffer)) throw new Error('the paper did not come as bytes');
    expect(await textOf(new Uint8Array(pdf))).toContain('26-0001');
    await agree.closeDialog();
    await see(messages()).toContainText('saved as a mail file by Ida Penn, with');
    await see(agree.section('Papers')).toContainText('Estimate');
  });

  test('after a dialog the focus is where it was pressed, also behind a menu', async () => {
    const write = messages().getByRole('button', { name: 'Write a message' });
    await write.click();
    await agree.closeDialog();
    await see(write).toBeFocused();
    await agree.openPaper('For the customer', 'Estimate');
    await agree.closeDialog();
    const menu = agree.section('Papers').getByRole('button', { name: 'For the customer' });
    await see(menu).toBeFocused();
  });

  test('a message that is wrong is written off with a reason and stays readable', async () => {
    await messages()
      .getByRole('button', { name: /^Strike out the message/ })
      .click();
    const form = session.page.getByRole('form', { name: /^Strike out/ });
    await form.getByRole('textbox').fill('went to the wrong address');
    await form.getByRole('button', { name: 'Strike out', exact: true }).click();
    await see(messages()).toContainText('Struck out: went to the wrong address');
    await messages().getByText('What it said').click();
    await see(messages()).toContainText('The box came on a Tuesday.');
  });
});

describe('the shop writes its own wordings', () => {
  const added = 'We photograph every step of the work.';

  test('what a customer was asked before is on the order', async () => {
    await agree.unfold('Consents');
    const asked = await agree.ask('Alteration acknowledgement');
    expect(asked).not.toContain(added);
  });

  test('a warranty may not be called void; a good text becomes version 1', async () => {
    const { page } = session;
    await page.goto(session.at('settings?tab=wordings'));
    await page.getByRole('button', { name: 'Change Alteration acknowledgement' }).click();
    const dialog = page.getByRole('dialog');
    const text = dialog.getByRole('textbox', { name: 'Text' });
    const before = await text.inputValue();
    await text.fill(`${before}\nThe maker's warranty is void.`);
    await dialog.getByRole('button', { name: 'Save as a new version' }).click();
    await see(text).toHaveAttribute('aria-invalid', 'true');
    await see(dialog).toContainText(/warranty/);
    await text.fill(`${before}\n${added}`);
    await see(dialog.getByRole('region', { name: /^Preview/ })).toContainText(added);
    await session.accessible('wording');
    await session.look('agreement wording');
    await dialog.getByRole('button', { name: 'Save as a new version' }).click();
    await see(dialog).toBeHidden();
    const item = page.getByRole('article', { name: 'Alteration acknowledgement' });
    await see(item).toContainText('Version 1');
    await session.accessible('settings, wordings');
  });

  test('the consent asked before keeps its text, on the screen and on paper; a new one has the new', async () => {
    const { page } = session;
    await page.goto(session.at(`orders/${orderId}`));
    await agree.unfold('Consents');
    const old = consents().getByRole('listitem');
    await see(old).toHaveCount(1);
    await see(old).toContainText('Alteration acknowledgement: waiting');
    await old.getByText('The text that was asked').click();
    await see(old).toContainText('I understand');
    await see(old).not.toContainText(added);
    await old.getByRole('button', { name: /^Print this consent/ }).click();
    await agree.previewed();
    expect(await textOf((await agree.savePaper()).bytes)).not.toContain('We photograph every step');
    await agree.closeDialog();
    await agree.openAnswer('Alteration acknowledgement', {
      answer: 'Declined',
      words: 'Not with that text.',
    });
    await agree.finishAnswer();
    expect(await agree.ask('Alteration acknowledgement')).toContain(added);
    await agree.openPaper('For the customer', 'Consent form');
    expect(await textOf((await agree.savePaper()).bytes)).toContain('We photograph every step');
    await agree.closeDialog();
  });

  test('no screen threw an error that nobody caught', () => {
    expect(session.troubles()).toEqual([]);
  });
});
