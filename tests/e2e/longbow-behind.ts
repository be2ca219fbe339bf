import type { Station } from '../../shared/contract/geometry.ts';
import type { Client } from '../support/doors.ts';
import { customerFields } from '../support/fixtures.ts';
import { newCommandId } from '../support/new-command-id.ts';
import { bareStations, knownBow } from '../support/plan-shop.ts';
import { takeIn } from './open-shop.ts';
import { grantedBehind, movedBehind, unpacked } from './order-behind.ts';
import { weighBehind } from './shop-scale.ts';

interface Measuring {
  bowId: string;
  orderId: string;
  narrowerIn: number;
  /** So many, evenly spread, instead of every fourth inch. */
  stationsOnLimb?: number;
}

/** The same limb, measured at other places. */
function evenlySpread(limb: Station['limb'], count: number): Station[] {
  const measured = bareStations.filter((station) => station.limb === limb);
  const end = measured.at(-1)?.fromFadeIn ?? 0;
  return Array.from({ length: count }, (_, i) => {
    const fromFadeIn = Number(((i * end) / (count - 1)).toFixed(2));
    const next = measured.find((station) => station.fromFadeIn >= fromFadeIn);
    const before = measured.findLast((station) => station.fromFadeIn <= fromFadeIn);
    if (next === undefined || before === undefined) throw new Error('a place off the limb');
    const part =
      next === before
        ? 0
        : (fromFadeIn - before.fromFadeIn) / (next.fromFadeIn - before.fromFadeIn);
    const between = (from: number, to: number) => Number((from + part * (to - from)).toFixed(3));
    return {
      ...before,
      fromFadeIn,
      widthIn: between(before.widthIn, next.widthIn),
      thicknessIn: between(before.thicknessIn ?? 0, next.thicknessIn ?? 0),
    };
  });
}

/** Widths and thicknesses of both limbs, bare, each made narrower by so many inches. */
export async function measuredBehind(
  client: Client,
  { bowId, orderId, narrowerIn, stationsOnLimb }: Measuring,
): Promise<void> {
  const places =
    stationsOnLimb === undefined
      ? bareStations
      : (['upper', 'lower'] as const).flatMap((limb) => evenlySpread(limb, stationsOnLimb));
  await client.geometry.record({
    commandId: newCommandId(),
    bowId,
    limbSetId: null,
    orderId,
    note: '',
    stations: places.map((station) => ({
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
