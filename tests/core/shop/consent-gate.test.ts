import { beforeEach, describe, expect, test } from 'vitest';
import type { Core } from '../../../core/host/core.ts';
import { sha256 } from '../../../core/shop/consents/hash.ts';
import { stateOf, verificationOf } from '../../../core/shop/consents/state.ts';
import { storedConsents } from '../../../core/shop/consents/stored.ts';
import { type Client, type Door, httpDoor, messagePortDoor } from '../../support/doors.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const doors: [string, (core: Core) => Promise<Door>][] = [
  ['http', httpDoor],
  ['message port', async (core) => messagePortDoor(core)],
];
const kinds = ['price-and-scope', 'alteration-acknowledgement'] as const;
const signature = { manner: 'typed', intent: 'I sign this', name: 'Nora Hale' } as const;

interface Kit {
  shop: TestShop;
  flow: Flow;
  client: Client;
}
let kit: Kit;

const rowVersion = async () =>
  (await kit.client.orders.get({ id: kit.flow.orderId })).card.rowVersion;

async function ask(kind: (typeof kinds)[number], orderId = kit.flow.orderId) {
  const { text } = await kit.client.consents.propose({ orderId, kind });
  const { id } = await kit.client.consents.ask({
    commandId: newCommandId(),
    orderId,
    kind,
    text,
    askedHow: 'in person',
  });
  return { consentId: id, textSha256: sha256(text), text };
}

const yes = ({ consentId, textSha256 }: { consentId: string; textSha256: string }) => ({
  commandId: newCommandId(),
  consentId,
  textSha256,
  answer: 'granted' as const,
  answeredAt: '2026-03-02T10:00:00.000Z',
  channel: 'phone' as const,
  answeredBy: 'Nora Hale',
  contact: '555 0142',
  words: 'Yes, as written.',
  costChangeCents: 0,
});

/** The gate with everything an owner can do to pass it. */
async function gate(): Promise<string[]> {
  const moved = await kit.client.orders.move({
    commandId: newCommandId(),
    id: kit.flow.orderId,
    rowVersion: await rowVersion(),
    to: 'agreed',
    override: { reason: 'the customer is in a hurry' },
  });
  return moved.outcome === 'refused' ? moved.missing.map(({ item }) => item) : [];
}

const expectClosed = async (kind: (typeof kinds)[number] = 'price-and-scope') =>
  expect(await gate()).toContain(kind);

async function editOrder(change: Partial<typeof orderFields>) {
  return kit.client.orders.edit({
    commandId: newCommandId(),
    id: kit.flow.orderId,
    rowVersion: await rowVersion(),
    ...orderFields,
    ...change,
  });
}

describe.each(doors)('over %s', (_, open) => {
  beforeEach(async () => {
    const shop = await testShop();
    const { id } = await takeIn(shop);
    const flow = new Flow(shop, id);
    await flow.move('arrived', { override: { reason: 'papers follow' } });
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    kit = { shop, flow, client };
    // The other kinds stand, so that only the one under test can hold the gate.
    await kit.client.consents.answer(yes(await ask('alteration-acknowledgement')));
  });

  test('with the consent to this text the gate opens', async () => {
    await kit.client.consents.answer(yes(await ask('price-and-scope')));
    expect(await gate()).toEqual([]);
  });

  test('nothing asked, nothing answered, or a no: it stays closed, whatever the owner says', async () => {
    await expectClosed();
    const asked = await ask('price-and-scope');
    await expectClosed();
    await kit.client.consents.answer({ ...yes(asked), answer: 'declined' });
    await expectClosed();
    await expect(kit.client.consents.answer(yes(asked))).rejects.toMatchObject({
      code: 'CONFLICT',
    });
    await expectClosed();
  });

  test('reminders and messages are no answers', async () => {
    const { consentId } = await ask('price-and-scope');
    const commandId = newCommandId();
    await kit.client.consents.remind({ commandId, consentId, how: 'by phone', note: 'said yes' });
    await kit.client.messages.record({
      commandId: newCommandId(),
      orderId: kit.flow.orderId,
      step: 'approval-asked',
      channel: 'email',
      handed: 'noted',
      toWhom: 'nora@hale.example',
      subject: 'Granted',
      body: 'The customer grants it.',
      sentAt: '2026-03-02T09:30:00.000Z',
    });
    await expectClosed();
  });

  test('a stale or invented hash is refused', async () => {
    const asked = await ask('price-and-scope');
    for (const textSha256 of [sha256('another text'), sha256(`${asked.text} `)]) {
      await expect(kit.client.consents.answer({ ...yes(asked), textSha256 })).rejects.toMatchObject(
        { code: 'STALE' },
      );
    }
    await expectClosed();
  });

  test('an old client that knows nothing of signatures cannot record a yes in person', async () => {
    const asked = await ask('price-and-scope');
    const old = { ...yes(asked), channel: 'in-person' as const, contact: '', words: '' };
    await expect(kit.client.consents.answer(old)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { details: { signature: expect.any(String) } },
    });
    const { textSha256: _hash, ...noHash } = yes(asked);
    await expect(kit.client.consents.answer(noHash as never)).rejects.toBeDefined();
    await expectClosed();
    await kit.client.consents.answer({ ...old, commandId: newCommandId(), signature });
    expect(await gate()).toEqual([]);
  });

  test.each([
    ['somebody else', { signature: { ...signature, name: 'Otto Reed' } }],
    [
      'nobody who is here',
      { channel: 'phone' as const, contact: '555 0142', words: 'yes', signature },
    ],
    ['other words', { signature: { ...signature, intent: 'I was here' } }],
    ['a dot', { signature: { manner: 'drawn', intent: 'I sign this', strokes: [[[1, 1]]] } }],
    [
      'ink outside the box',
      {
        signature: {
          manner: 'drawn',
          intent: 'I sign this',
          strokes: [
            [
              [0, 0],
              [9, 9],
            ],
          ],
        },
      },
    ],
    [
      'endless ink',
      {
        signature: {
          manner: 'drawn',
          intent: 'I sign this',
          strokes: Array.from({ length: 200 }, () =>
            Array.from({ length: 30 }, (_n, i) => [i / 10, 0.5]),
          ),
        },
      },
    ],
  ])('a signature of %s is none', async (_name, given) => {
    const asked = await ask('price-and-scope');
    const here = { ...yes(asked), channel: 'in-person' as const, contact: '', words: '' };
    await expect(kit.client.consents.answer({ ...here, ...given } as never)).rejects.toBeDefined();
    await expectClosed();
  });

  test('an answer older than its question, or from the future, is refused', async () => {
    const asked = await ask('price-and-scope');
    for (const answeredAt of ['2026-03-02T08:00:00.000Z', '2026-03-09T08:00:00.000Z']) {
      await expect(kit.client.consents.answer({ ...yes(asked), answeredAt })).rejects.toMatchObject(
        { code: 'BAD_INPUT' },
      );
    }
    await expectClosed();
  });

  test('an answer to an older text does not answer the newer one', async () => {
    const older = await ask('price-and-scope');
    await ask('price-and-scope');
    await kit.client.consents.answer(yes(older));
    await expectClosed();
  });

  test('consent given on another order opens nothing here, nor does its file', async () => {
    const other = await takeIn(kit.shop);
    await kit.client.consents.answer(yes(await ask('price-and-scope', other.id)));
    await expectClosed();
    const file = await kit.client.attachments.add({
      commandId: newCommandId(),
      file: new File(['Yes, I agree.\n'], 'answer.txt', { type: 'text/plain' }),
      about: 'message',
      orderId: other.id,
      bowId: null,
      findingId: null,
      incidentId: null,
      shipmentId: null,
      caption: '',
    });
    const asked = await ask('price-and-scope');
    await expect(
      kit.client.consents.answer({ ...yes(asked), attachmentId: file.id }),
    ).rejects.toMatchObject({ data: { details: { attachmentId: expect.any(String) } } });
    await expectClosed();
  });

  test('a repeated command id answers nothing twice, and nothing else', async () => {
    const first = await ask('price-and-scope');
    const answered = yes(first);
    await kit.client.consents.answer({ ...answered, answer: 'declined' });
    const again = await ask('price-and-scope');
    await kit.client.consents.answer({ ...yes(again), commandId: answered.commandId });
    await expectClosed();
  });

  test.each([
    ['target', { targetWeightLbf: 44 }],
    ['draw', { targetDrawIn: 27 }],
    [
      'scope',
      { services: ['reduce-weight', 're-mark', 'new-string'] as typeof orderFields.services },
    ],
    ['price', { estimateCents: 24_001 }],
  ])(
    'a changed %s voids it, is told before, shows as open, and comes back by undo alone',
    async (_name, change) => {
      await kit.client.consents.answer(yes(await ask('price-and-scope')));
      const { orderId } = kit.flow;
      expect(
        (await kit.client.consents.wouldVoid({ orderId, change })).map(({ kind }) => kind),
      ).toContain('price-and-scope');
      await editOrder(change);
      await expectClosed();
      const after = await kit.client.orders.get({ id: orderId });
      expect(after.card.waitingConsents).toBeGreaterThan(0);
      const consent = after.consents.find(({ kind }) => kind === 'price-and-scope');
      expect(consent).toMatchObject({
        state: 'outdated',
        verified: { text: true, subject: true, answers: true },
      });
      const { items } = await kit.client.today.get({ day: '2026-03-02' });
      expect(items.map(({ what }) => what)).toContain(
        'Price and scope was granted, but what it referred to has changed: ask again.',
      );
      await editOrder({});
      expect(await gate()).toEqual([]);
    },
  );

  test('a price written in lines voids the consent to one amount', async () => {
    await kit.client.consents.answer(yes(await ask('price-and-scope')));
    const { orderId } = kit.flow;
    expect(await kit.client.consents.wouldVoid({ orderId, change: { priceLines: true } })).toEqual([
      { kind: 'price-and-scope', state: 'granted' },
    ]);
    await kit.client.prices.addLine({
      commandId: newCommandId(),
      orderId,
      rowVersion: await rowVersion(),
      kind: 'other',
      what: 'Work',
      quantity: 1,
      unitCents: 24_000,
      discountBp: null,
      taxable: true,
      minutes: 0,
      answerId: null,
    });
    await expectClosed();
  });

  test('what does not touch what was agreed voids nothing', async () => {
    await kit.client.consents.answer(yes(await ask('price-and-scope')));
    const { orderId } = kit.flow;
    const change = { inscription: '45#', position: 'belly', estimateCents: 24_000 };
    expect(await kit.client.consents.wouldVoid({ orderId, change })).toEqual([]);
  });

  test('asking, answering and reminding are never undone, nor is a wording', async () => {
    const asked = await ask('price-and-scope');
    const declined = { ...yes(asked), answer: 'declined' as const };
    await kit.client.consents.answer(declined);
    const undo = { commandId: newCommandId(), of: declined.commandId };
    await expect(kit.client.undo.undo(undo)).rejects.toMatchObject({
      code: 'CONFLICT',
      message: expect.stringContaining('A consent stays as it was said'),
    });
    await expectClosed();
  });

  test('a text that no longer says what it must is not asked', async () => {
    const { orderId } = kit.flow;
    const kind = 'alteration-acknowledgement';
    const { text } = await kit.client.consents.propose({ orderId, kind });
    for (const other of [
      text.replace('Target: 45', 'Target: 40'),
      text.replace('may be void and may not cover', 'is void and may not cover'),
      text.replace('may not cover an altered bow', 'covers everything'),
      text.replace('not legal advice', 'legal advice'),
    ]) {
      expect(other).not.toBe(text);
      await expect(
        kit.client.consents.ask({
          commandId: newCommandId(),
          orderId,
          kind,
          text: other,
          askedHow: 'here',
        }),
      ).rejects.toMatchObject({
        code: 'BAD_INPUT',
        data: { details: { text: expect.any(String) } },
      });
    }
  });

  test('a new wording changes no text that was asked; it is asked with its version from then on', async () => {
    await kit.client.consents.answer(yes(await ask('price-and-scope')));
    const use = 'consent:price-and-scope' as const;
    const body = 'Order {{order}}: I take this offer of {{shop}}.\n{{subject}}';
    const command = { commandId: newCommandId(), use, version: 0, subject: '', body };
    await kit.client.wordings.save(command);
    await expect(
      kit.client.wordings.save({ ...command, commandId: newCommandId(), body: `${body} ` }),
    ).rejects.toMatchObject({ code: 'STALE' });
    expect(await gate()).toEqual([]);
    await ask('price-and-scope');
    const [newest, older] = (await kit.client.orders.get({ id: kit.flow.orderId })).consents.filter(
      ({ kind }) => kind === 'price-and-scope',
    );
    expect(newest).toMatchObject({ wordingVersion: 1 });
    expect(newest?.text).toContain('I take this offer of Fernhill Bow Works.\nWork: ');
    expect(older).toMatchObject({ wordingVersion: 0, verified: { text: true } });
    await kit.client.wordings.backToBuiltIn({ commandId: newCommandId(), use, version: 1 });
    const history = await kit.client.wordings.history({ use });
    expect(history.map(({ version }) => version)).toEqual([2, 1, 0]);
    expect(history[0]?.body).toBe(history[2]?.body);
  });
});

test('records changed behind the program are found out and count for nothing', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await flow.grant('price-and-scope');
  const [before] = (await flow.order()).consents;
  expect(before).toMatchObject({ state: 'granted', verified: { text: true, subject: true } });
  await expect(
    shop.owner.write.updateTable('consent').set({ text: 'I accept anything.' }).execute(),
  ).rejects.toThrow('append-only');
  const [kept] = await storedConsents(shop.owner.read, [id]);
  if (kept === undefined) throw new Error('nothing was asked');
  expect(stateOf(kept, kept.subject)).toBe('granted');
  for (const change of [
    { text: `${kept.text}.` },
    { subject: `${kept.subject}.` },
    { text_sha256: sha256('else') },
    { answers: kept.answers.map((answer) => ({ ...answer, text_sha256: sha256('else') })) },
  ]) {
    const changed = { ...kept, ...change };
    expect(stateOf(changed, changed.subject)).toBe('outdated');
    expect(Object.values(verificationOf(changed))).toContain(false);
  }
});
