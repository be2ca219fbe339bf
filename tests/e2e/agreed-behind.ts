import { intentWords } from '../../shared/signatures.ts';
import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { takeIn } from './open-shop.ts';
import { inFinishBehind } from './order-behind.ts';

const fortyLetters = 'Wenzeslaus-Amadeus Hollerbach-Strohmeier';
const longWord = 'Unaussprechlichlangesbogenmodellohnejedentrennstrich';
/** As long as a shop's own wording gets in practice, in paragraphs. */
const longWording =
  `${'We plane, scrape and sand the limbs in small steps and weigh between. '.repeat(7)}\n\n`
    .repeat(6)
    .trim();

const rowVersionOf = async (client: Client, id: string) =>
  (await client.orders.get({ id })).card.rowVersion;

/** Twelve lines with everything a line can say, and payments in two ways. */
async function priced(client: Client, orderId: string): Promise<void> {
  const names = Array.from({ length: 9 }, (_, i) => `${i + 1} ${longWord} and more`.slice(0, 40));
  const base = { quantity: 1, unitCents: 4_250, discountBp: null, taxable: true, minutes: 45 };
  const lines = [
    ...names.map((what, i) => ({ ...base, kind: 'service' as const, what, quantity: i + 1 })),
    { ...base, kind: 'discount' as const, what: fortyLetters, unitCents: 0, discountBp: 1_250 },
    { ...base, kind: 'rush' as const, what: 'Rush fee', unitCents: 9_999_900 },
    { ...base, kind: 'freight' as const, what: 'Return freight', taxable: false, minutes: 0 },
  ];
  for (const line of lines) {
    await client.prices.addLine({
      commandId: newCommandId(),
      ...{ orderId, rowVersion: await rowVersionOf(client, orderId), ...line, answerId: null },
    });
  }
  for (const [method, reference] of [
    ['cheque', longWord],
    ['cash', ''],
  ] as const) {
    await client.prices.recordPayment({
      commandId: newCommandId(),
      ...{ orderId, kind: 'payment', method, cents: 12_345, receivedOn: '2026-02-03' },
      ...{ reference, note: 'many words '.repeat(20).trim() },
    });
  }
}

/** Lines on the limb and where they stand. */
async function inscribed(client: Client, orderId: string): Promise<void> {
  await client.orders.setInscription({
    commandId: newCommandId(),
    id: orderId,
    rowVersion: await rowVersionOf(client, orderId),
    inscription: `${longWord}\n45.2# @ 28"`,
  });
  await client.inscriptions.setLayout({
    commandId: newCommandId(),
    ...{ orderId, rowVersion: null, position: 'Lower limb, belly, 4 in from the grip' },
    ...{ makerMark: 'stays, under the new finish', surface: 'sealed', manner: 'hand' },
    ...{ ink: longWord, letterHeightIn: 0.1875, oldMarking: 'old words '.repeat(40).trim() },
    note: 'many words '.repeat(20).trim(),
  });
}

/** A price asked in a long text, signed in person with more to pay, and the marking without an answer. */
async function consented(client: Client, orderId: string): Promise<void> {
  const ask = async (kind: 'price-and-scope' | 'marking-approval', more: string) => {
    const { text } = await client.consents.propose({ orderId, kind });
    return client.consents.ask({
      commandId: newCommandId(),
      ...{ orderId, kind, text: `${text}\n\n${more}`.trim(), askedHow: `letter to ${longWord}` },
    });
  };
  const { id } = await ask('price-and-scope', longWording);
  const { consents } = await client.orders.get({ id: orderId });
  await client.consents.answer({
    commandId: newCommandId(),
    consentId: id,
    textSha256: consents.find((each) => each.id === id)?.textSha256 ?? '',
    ...{ answer: 'granted', answeredAt: new Date().toISOString(), channel: 'in-person' },
    ...{ answeredBy: fortyLetters, contact: '', words: 'many words '.repeat(60).trim() },
    costChangeCents: 4_000,
    signature: {
      manner: 'drawn',
      intent: intentWords,
      strokes: [
        [
          [0.5, 0.9],
          [1.2, 0.3],
          [1.6, 0.9],
          [2.4, 0.4],
          [3.4, 0.8],
        ],
      ],
    },
  });
  const marking = await ask('marking-approval', '');
  const { id: consentId } = marking;
  const reminder = { consentId, how: `mail to ${longWord}`, note: 'many words '.repeat(40).trim() };
  await client.consents.remind({ commandId: newCommandId(), ...reminder });
}

async function written(client: Client, orderId: string): Promise<void> {
  const { subject } = await client.messages.draft({ orderId, step: 'approval-asked' });
  await client.messages.record({
    commandId: newCommandId(),
    ...{ orderId, step: 'approval-asked', toWhom: `${longWord}@hollerbach.example` },
    ...{ subject, body: longWording, channel: 'email', handed: 'copied' },
    sentAt: new Date().toISOString(),
  });
}

/** An order in the finish room with much said, asked, priced and paid. */
export async function orderMuchAgreed(client: Client): Promise<string> {
  const { id } = await takeIn(client, {
    customer: fortyLetters,
    order: { services: ['strip-refinish', 're-mark'], targetWeightLbf: null, targetDrawIn: null },
  });
  await inFinishBehind(client, id, 45.2);
  await priced(client, id);
  await inscribed(client, id);
  await consented(client, id);
  await written(client, id);
  return id;
}

/** Shop's own rules and words as long as they get. */
export async function longSettings(client: Client): Promise<void> {
  await client.prices.addTypical({ commandId: newCommandId() });
  await client.prices.addService({
    commandId: newCommandId(),
    ...{ name: `${longWord} ${fortyLetters}`, service: 'grip-rest', priceCents: 12_345_678 },
    ...{ minutes: 9_999, taxable: false },
  });
  const { rowVersion, arrowGrainsPerLb } = await client.care.policy({});
  await client.care.editPolicy({
    commandId: newCommandId(),
    ...{ rowVersion, arrowGrainsPerLb, careTerms: longWording.slice(0, 2000) },
  });
  const [first] = await client.wordings.list({});
  if (first === undefined) throw new Error('the shop has no wordings');
  const { use, version, subject, body } = first;
  await client.wordings.save({
    commandId: newCommandId(),
    ...{ use, version, subject, body: `${body}\n\n${longWording}` },
  });
}
