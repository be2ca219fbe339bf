import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { decode, pagesOf, textOf } from '../core/papers/read-back.ts';
import type { Client } from '../support/doors.ts';
import { AgreementDriver } from './agreement-driver.ts';
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

  test('the label is printed as approved, lettered and dry; the care card goes with it', async () => {
    await agree.openPaper('For the bench', 'Bow label and lettering guide');
    const { bytes } = await agree.savePaper();
    await agree.printPaper();
    await agree.closeDialog();
    const text = await textOf(bytes);
    for (const line of wanted.split('\n')) expect(text).toContain(line);
    expect(text).toMatch(/Approved word for word by Nora Hale/);
    const codes = await Promise.all((await pagesOf(bytes)).map((sheet) => decode(sheet)));
    expect(codes.flat().map((code) => code.text)).toContain('26-0001');

    await agree.unfold('To be written on the bow');
    await agree.letter('applied', 'pen 0.3, India ink');
    await see(inscription()).toContainText('Applied:');
    await see(inscription()).toContainText('Dry: not noted yet');
    await agree.letter('dry', 'by touch');
    await see(inscription()).toContainText('Dry:');

    await agree.openPaper('For the customer', 'Care card');
    const card = await textOf((await agree.savePaper()).bytes);
    await agree.closeDialog();
    for (const words of ['26-0001', 'Nora Hale', '45.2#', 'Strip & refinish, Re-mark']) {
      expect(card).toContain(words);
    }
  });

  test('editing afterwards warns, and voids the approval in plain sight', async () => {
    const { page } = session;
    await agree.unfold('To be written on the bow');
    await inscription().getByRole('button', { name: 'Change the lines' }).click();
    const form = page.getByRole('form', { name: 'Lines to be written on the bow' });
    await see(form.getByText(/Saving this voids/)).toBeHidden();
    await form.getByLabel('Exactly as it shall read').fill(`${wanted}\nH-118`);
    await see(form).toContainText('Saving this voids what the customer granted: marking approval');
    await form.getByRole('button', { name: 'Save the lines' }).click();
    await see(consents()).toContainText('Marking approval: no longer fits');
    await agree.openPaperRefused('For the bench', 'Bow label and lettering guide', 'no longer');
    await session.accessible('order with a voided approval');
    await session.look('agreement marking');
  });
});

test('no screen threw an error that nobody caught', () => {
  expect(session.troubles()).toEqual([]);
});
