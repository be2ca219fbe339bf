import type { Stage } from '../../shared/stages.ts';
import type { Client } from '../support/doors.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { arrivalFields } from '../support/whole-flow.ts';
import { checkedScale, weighBehind } from './shop-scale.ts';

/** The bow out of its box and looked over, which nobody may skip. */
export async function unpacked(client: Client, orderId: string): Promise<void> {
  const { rowVersion } = await client.arrival.record({
    commandId: newCommandId(),
    orderId,
    rowVersion: null,
    ...arrivalFields,
    restingSince: new Date().toISOString(),
  });
  await client.arrival.addBelongings({ commandId: newCommandId(), orderId, what: ['String'] });
  await client.arrival.complete({ commandId: newCommandId(), orderId, rowVersion });
}

/** Asked and granted by phone. */
export async function grantedBehind(
  client: Client,
  orderId: string,
  kind: 'price-and-scope' | 'alteration-acknowledgement' | 'expected-weight-loss',
): Promise<void> {
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
    textSha256: consents.find(({ id }) => id === asked.id)?.textSha256 ?? '',
    answer: 'granted',
    answeredAt: new Date().toISOString(),
    channel: 'phone',
    answeredBy: 'Nora Hale',
    contact: '555 0142',
    words: 'Yes.',
    costChangeCents: 0,
  });
}

/** On by one stage, the owner vouching for what the bench did not write down. */
export async function movedBehind(client: Client, id: string, to: Stage): Promise<void> {
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

/** A bow to be refinished and marked again, agreed on, sanded, weighed, and in the finish room. */
export async function inFinishBehind(client: Client, id: string, sandedLbf: number): Promise<void> {
  await unpacked(client, id);
  await movedBehind(client, id, 'arrived');
  await grantedBehind(client, id, 'price-and-scope');
  await grantedBehind(client, id, 'alteration-acknowledgement');
  await grantedBehind(client, id, 'expected-weight-loss');
  await movedBehind(client, id, 'agreed');
  await movedBehind(client, id, 'strip-sand');
  const scaleId = await checkedScale(client);
  const weighing = { orderId: id, scaleId, phase: 'after-sanding', forceLbf: sandedLbf } as const;
  await weighBehind(client, weighing);
  await movedBehind(client, id, 'finish');
}
