import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { arrivalFields } from '../support/whole-flow.ts';
import { takeIn } from './open-shop.ts';

async function move(client: Client, id: string, to: 'arrived' | 'final-check'): Promise<void> {
  const { rowVersion } = (await client.orders.get({ id })).card;
  const override = { reason: 'seen on the table' };
  const moved = await client.orders.move({
    commandId: newCommandId(),
    id,
    rowVersion,
    to,
    override,
  });
  if (moved.outcome === 'refused') throw new Error(moved.missing[0]?.sentence ?? to);
}

async function unpacked(client: Client, orderId: string, isStrung: boolean): Promise<void> {
  const { rowVersion } = await client.arrival.record({
    commandId: newCommandId(),
    orderId,
    rowVersion: null,
    ...arrivalFields,
    restingSince: new Date().toISOString(),
    ...(isStrung ? {} : { strung: 'not-strung', notStrungBecause: 'glass lifting' }),
  });
  await client.arrival.addBelongings({
    commandId: newCommandId(),
    orderId,
    what: ['String', 'Quiver', `A case with ${'many compartments '.repeat(8)}`.trim()],
  });
  await client.arrival.complete({ commandId: newCommandId(), orderId, rowVersion });
}

async function agreedOn(client: Client, orderId: string): Promise<void> {
  const kind = 'price-and-scope';
  const { text } = await client.consents.propose({ orderId, kind });
  const asked = await client.consents.ask({
    commandId: newCommandId(),
    orderId,
    kind,
    text,
    askedHow: 'phone',
  });
  const { consents } = await client.orders.get({ id: orderId });
  await client.consents.answer({
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: consents[0]?.textSha256 ?? '',
    answer: 'granted',
    answeredAt: new Date().toISOString(),
    channel: 'phone',
    answeredBy: 'Tilda Moor',
    contact: '555 0142',
    words: 'Yes.',
    costChangeCents: 0,
  });
}

/** An order in its last look: one check in order, one not, and one thing back in the box. */
export async function orderInFinalCheck(client: Client): Promise<string> {
  const { id } = await takeIn(client, {
    customer: 'Tilda Moor',
    order: { services: ['new-string'], targetWeightLbf: null, targetDrawIn: null },
  });
  await unpacked(client, id, true);
  await agreedOn(client, id);
  await move(client, id, 'final-check');
  await client.finalCheck.record({
    commandId: newCommandId(),
    orderId: id,
    doneOn: new Date().toISOString().slice(0, 10),
    checks: [
      { item: 'check-flexed', outcome: 'ok', note: '', finding: null },
      { item: 'check-alignment', outcome: 'not-ok', note: 'string off the middle', finding: null },
    ],
  });
  const [first] = (await client.orders.get({ id })).belongings;
  if (first !== undefined) {
    const { id: thing, rowVersion } = first;
    await client.arrival.tickBack({ commandId: newCommandId(), id: thing, rowVersion, note: '' });
  }
  return id;
}

/** A bow that nobody may draw, on its way home in a box that its carrier takes. */
export async function orderGoingHome(client: Client): Promise<string> {
  const { id } = await takeIn(client, { customer: 'Alwin Reed' });
  await unpacked(client, id, false);
  await move(client, id, 'arrived');
  await client.findings.add({
    commandId: newCommandId(),
    orderId: id,
    grade: 'stop',
    place: 'lower limb, belly, 4 in from the fade',
    note: 'glass lifting over two inches, and a hairline across the limb behind it',
  });
  const { rowVersion } = (await client.orders.get({ id })).card;
  await client.orders.sendHome({
    commandId: newCommandId(),
    id,
    rowVersion,
    kind: 'refused',
    reason: 'not safe to work on',
  });
  const [carrier] = await client.carriers.list();
  await client.shipments.record({
    commandId: newCommandId(),
    orderId: id,
    direction: 'out',
    carrierId: carrier?.id ?? null,
    carrierName: '',
    shape: 'box',
    lengthIn: 70,
    widthIn: 5,
    heightIn: 5,
    weightLb: 4.5,
    declaredCents: 60_000,
    valueEvidence: 'appraisal by the owner',
    insured: true,
    tracking: '9400 1',
    shippedOn: null,
    deliveredOn: null,
    note: '',
  });
  return id;
}
