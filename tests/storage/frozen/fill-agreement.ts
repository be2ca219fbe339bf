import { answerConsent } from '../../../core/shop/consents/answer.ts';
import { remindOfConsent } from '../../../core/shop/consents/remind.ts';
import { setLayout } from '../../../core/shop/inscriptions/layout.ts';
import { recordMessage } from '../../../core/shop/messages/messages.ts';
import { setInscription } from '../../../core/shop/orders/orders.ts';
import { addPriceLine } from '../../../core/shop/prices/lines.ts';
import { recordPayment } from '../../../core/shop/prices/payments.ts';
import { addTypicalServices } from '../../../core/shop/prices/services.ts';
import { listWordings, saveWording } from '../../../core/shop/wordings/wordings.ts';
import { newCommandId, type TestShop, takeIn } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function priced(shop: TestShop, flow: Flow): Promise<void> {
  await addTypicalServices(shop.owner, { commandId: newCommandId() });
  const line = {
    kind: 'material',
    what: 'overlay stock',
    quantity: 2,
    unitCents: 1_250,
    discountBp: null,
    taxable: true,
    minutes: 0,
    answerId: null,
  } as const;
  const { rowVersion } = (await flow.order()).card;
  const { orderId } = flow;
  await addPriceLine(shop.owner, { commandId: newCommandId(), orderId, rowVersion, ...line });
  await recordPayment(shop.owner, {
    commandId: newCommandId(),
    orderId,
    kind: 'deposit',
    method: 'cheque',
    cents: 12_000,
    receivedOn: '2026-03-02',
    reference: 'no. 118',
    note: '',
  });
}

async function lettered(shop: TestShop, flow: Flow): Promise<void> {
  const { orderId } = flow;
  const { rowVersion } = (await flow.order()).card;
  const inscription = 'AMO 66"';
  await setInscription(shop.owner, {
    commandId: newCommandId(),
    id: orderId,
    rowVersion,
    inscription,
  });
  await setLayout(shop.owner, {
    commandId: newCommandId(),
    orderId,
    rowVersion: null,
    position: 'Upper limb, belly, 3 in from the grip',
    makerMark: 'stays where it is',
    surface: 'sealed',
    manner: 'hand',
    ink: 'black archival pen',
    letterHeightIn: 0.1875,
    oldMarking: '52# @ 28"',
    note: '',
  });
}

/** Signed on the screen, after a reminder; a message went out with it. */
async function signed(shop: TestShop, flow: Flow): Promise<void> {
  const asked = await flow.ask('marking-approval');
  await remindOfConsent(shop.owner, {
    commandId: newCommandId(),
    consentId: asked.id,
    how: 'phone',
    note: 'left a message',
  });
  await answerConsent(shop.owner, {
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: asked.textSha256,
    answer: 'granted',
    answeredAt: '2026-03-02T10:00:00.000Z',
    channel: 'in-person',
    answeredBy: 'Nora Hale',
    contact: '',
    words: '',
    costChangeCents: 0,
    signature: {
      manner: 'drawn',
      intent: 'I sign this',
      strokes: [
        [
          [0.5, 0.5],
          [1.5, 0.8],
        ],
      ],
    },
  });
  await recordMessage(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    step: 'approval-asked',
    toWhom: 'nora@hale.example',
    subject: 'Your approval',
    body: 'Hello Nora Hale, please look at the lines.',
    channel: 'email',
    handed: 'copied',
    sentAt: '2026-03-02T09:30:00.000Z',
  });
}

/** An order with a price, money received, lines to be lettered and what was agreed about them. */
export async function agreedOrder(shop: TestShop): Promise<void> {
  const wordings = await listWordings(shop.owner);
  const marking = wordings.find(({ use }) => use === 'consent:marking-approval');
  if (marking === undefined) throw new Error('no wording of the marking approval');
  const { use, version, subject, body } = marking;
  const commandId = newCommandId();
  await saveWording(shop.owner, {
    commandId,
    use,
    version,
    subject,
    body: `${body}\n\nThank you.`,
  });
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await priced(shop, flow);
  await lettered(shop, flow);
  await signed(shop, flow);
}
