import type { Client } from '../support/doors.ts';
import { customerFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { bareStations, knownBow } from '../support/plan-shop.ts';
import { takeIn } from './open-shop.ts';
import { grantedBehind, movedBehind, unpacked } from './order-behind.ts';
import { weighBehind } from './shop-scale.ts';

/** Widths and thicknesses of both limbs, bare, each made narrower by so many inches. */
export async function measuredBehind(
  client: Client,
  { bowId, orderId, narrowerIn }: { bowId: string; orderId: string; narrowerIn: number },
): Promise<void> {
  await client.geometry.record({
    commandId: newCommandId(),
    bowId,
    limbSetId: null,
    orderId,
    note: '',
    stations: bareStations.map((station) => ({
      ...station,
      widthIn: Number((station.widthIn - narrowerIn).toFixed(3)),
    })),
  });
}

/** A 52 lb longbow of a three-under shooter, out of its box, measured bare and weighed. */
export async function longbowArrived(client: Client) {
  const { id: orderId, number } = await takeIn(client, { bow: knownBow });
  await unpacked(client, orderId);
  await movedBehind(client, orderId, 'arrived');
  const { card } = await client.orders.get({ id: orderId });
  const bowId = card.bowId ?? '';
  await measuredBehind(client, { bowId, orderId, narrowerIn: 0 });
  const scaleId = (await client.scales.list())[0]?.id ?? '';
  await weighBehind(client, { orderId, scaleId, phase: 'arrival', forceLbf: 52 });
  return { orderId, number, bowId, customer: customerFields.name };
}

/** Agreed on and on the bench; a plan is accepted before or after. */
export async function atTheBench(client: Client, orderId: string): Promise<void> {
  await grantedBehind(client, orderId, 'price-and-scope');
  await grantedBehind(client, orderId, 'alteration-acknowledgement');
  await grantedBehind(client, orderId, 'expected-weight-loss');
  await movedBehind(client, orderId, 'agreed');
  await movedBehind(client, orderId, 'weight-work');
}

/** Accepts narrowing as the desk would, with the figures that the records give. */
export async function acceptedBehind(client: Client, orderId: string): Promise<string> {
  const { input, about, geometry, reading } = await client.plans.start({ orderId });
  const { id } = await client.plans.accept({
    commandId: newCommandId(),
    orderId,
    rowVersion: about.rowVersion ?? 0,
    input,
    method: 'narrowing',
    geometryId: geometry?.id ?? null,
    readingId: reading?.id ?? null,
    confirmedBecause: 'the customer wants 45 lb and the glass is thick',
  });
  return id;
}
