import PostalMime from 'postal-mime';
import { expect, test } from 'vitest';
import { draftMessage } from '../../../core/shop/messages/draft.ts';
import {
  recordMessage,
  saveMessageFile,
  strikeOutMessage,
} from '../../../core/shop/messages/messages.ts';
import { mailtoMax, mailtoOf } from '../../../renderer/screens/orders/messages/mailto.ts';
import { messages } from '../../../shared/contract/messages.ts';
import { messageSteps } from '../../../shared/wordings.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { textOf } from '../papers/read-back.ts';

async function started() {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  return { shop, flow: new Flow(shop, id), orderId: id };
}

const written = (orderId: string) => ({
  commandId: newCommandId(),
  orderId,
  step: 'approval-asked' as const,
  toWhom: 'nora@hale.example',
  subject: 'Your approval, order 26-0001: ¼" less – grüße',
  body: `Hello Nora Hale,\n\n${'a long line of words '.repeat(40)}\n.\nFrom here on\n${'ä'.repeat(300)}`,
});

test.each(messageSteps)('a draft for %s says the order, and leaves no field open', async (step) => {
  const { shop, orderId } = await started();
  const draft = await draftMessage(shop.owner, { orderId, step });
  expect(messages.draft['~orpc'].outputSchema?.safeParse(draft).success).toBe(true);
  expect(draft.toWhom).toBe('nora@hale.example');
  expect(draft.subject).toContain('26-0001');
  expect(`${draft.subject}${draft.body}`).not.toMatch(/\{\{|\}\}|undefined|null|NaN/);
  expect(draft.body).toContain('Fernhill Bow Works');
});

test('a mail file holds the words and the papers, read by another program, and both are kept', async () => {
  const { shop, flow, orderId } = await started();
  const { textSha256 } = await flow.ask('price-and-scope');
  expect((await draftMessage(shop.owner, { orderId, step: 'approval-asked' })).papers).toEqual([
    'consent-form',
  ]);
  const input = {
    ...written(orderId),
    papers: [
      { kind: 'consent-form', format: 'letter', copy: 'customer', aboutId: null },
      { kind: 'estimate', format: 'a4', copy: 'customer', aboutId: null },
    ] as const,
  };
  const file = await saveMessageFile(shop.owner, { ...input, papers: [...input.papers] });
  expect(file).toMatchObject({ name: '26-0001 Approval asked.eml', type: 'message/rfc822' });
  const mail = await PostalMime.parse(await file.arrayBuffer(), {
    attachmentEncoding: 'arraybuffer',
  });
  expect(mail.subject).toBe(input.subject);
  expect(mail.text?.trimEnd().replaceAll('\r\n', '\n')).toBe(input.body);
  expect(mail.from?.address).toBe('bench@fernhill.example');
  expect(mail.to?.map(({ address }) => address)).toEqual(['nora@hale.example']);
  expect(mail.headers.find(({ key }) => key === 'x-unsent')?.value).toBe('1');
  expect(mail.attachments.map(({ mimeType }) => mimeType)).toEqual([
    'application/pdf',
    'application/pdf',
  ]);
  const [form] = mail.attachments;
  const said = await textOf(new Uint8Array(form?.content as ArrayBuffer));
  expect(said.replaceAll(/\s+/g, '')).toContain(textSha256.slice(0, 16));
  const order = await flow.order();
  expect(order.messages).toMatchObject([
    {
      handed: 'file',
      channel: 'email',
      body: input.body,
      papers: [{ kind: 'consent-form' }, { kind: 'estimate' }],
    },
  ]);
  expect(order.papers.map(({ kind, action, outdated }) => [kind, action, outdated])).toEqual(
    expect.arrayContaining([
      ['consent-form', 'saved', false],
      ['estimate', 'saved', false],
    ]),
  );
  await saveMessageFile(shop.owner, { ...input, papers: [...input.papers] });
  expect((await flow.order()).messages).toHaveLength(1);
});

test('nothing is kept of a message that could not be made', async () => {
  const { shop, flow, orderId } = await started();
  const paper = {
    kind: 'consent-form',
    format: 'letter',
    copy: 'customer',
    aboutId: null,
  } as const;
  const save = (change: object) =>
    saveMessageFile(shop.owner, { ...written(orderId), papers: [], ...change });
  await expect(save({ papers: [paper] })).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(save({ toWhom: 'by phone, 555 0142' })).rejects.toMatchObject({
    details: { toWhom: expect.any(String) },
  });
  await expect(save({ body: 'The warranty is void now.' })).rejects.toMatchObject({
    details: { body: expect.stringContaining('only its maker') },
  });
  const order = await flow.order();
  expect([order.messages, order.papers]).toEqual([[], []]);
});

test('headers cannot be smuggled in through subject or address', async () => {
  const { shop, orderId } = await started();
  const smuggled = { ...written(orderId), papers: [], subject: 'Hello\r\nBcc: else@x.example' };
  const file = await saveMessageFile(shop.owner, smuggled);
  const mail = await PostalMime.parse(await file.arrayBuffer());
  expect(mail.bcc ?? []).toEqual([]);
  const schema = messages.saveFile['~orpc'].inputSchema;
  expect(schema?.safeParse({ ...smuggled }).success).toBe(false);
});

test('what was said otherwise is kept with its day, and struck out with a reason', async () => {
  const { shop, flow, orderId } = await started();
  const said = { ...written(orderId), channel: 'phone', handed: 'noted' } as const;
  const sentAt = '2026-03-02T08:00:00.000Z';
  const { id, rowVersion } = await recordMessage(shop.owner, { ...said, sentAt });
  expect((await flow.order()).messages).toMatchObject([{ sentAt, personName: 'Ida Penn' }]);
  await expect(
    recordMessage(shop.owner, {
      ...said,
      commandId: newCommandId(),
      sentAt: '2026-04-01T08:00:00.000Z',
    }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT' });
  const strike = { id, rowVersion, reason: 'wrong order' };
  await strikeOutMessage(shop.owner, { commandId: newCommandId(), ...strike });
  expect((await flow.order()).messages).toMatchObject([{ struckReason: 'wrong order' }]);
  await expect(
    strikeOutMessage(shop.owner, { commandId: newCommandId(), ...strike, rowVersion: 2 }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a mail address carries subject and body whole, or is not offered', () => {
  const body = 'Two & three?\n"100 %" #1 + ä';
  const url = new URL(mailtoOf('nora+bow@hale.example', 'A & B', body) ?? '');
  expect(decodeURIComponent(url.pathname)).toBe('nora+bow@hale.example');
  const fields = Object.fromEntries(
    url.search
      .slice(1)
      .split('&')
      .map((part) => part.split('=').map(decodeURIComponent)),
  );
  expect(fields).toEqual({ subject: 'A & B', body: body.replace('\n', '\r\n') });
  expect(mailtoOf('a@b.example', 's', 'x'.repeat(mailtoMax))).toBeNull();
});
