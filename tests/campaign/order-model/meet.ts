import { type ConsentKind, consentKind } from '../../../shared/consents.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { type EntryItem, entryItem } from '../../../shared/entries.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import type { Client } from '../../support/doors.ts';
import { orderFields } from '../../support/fixtures.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { arrivalFields } from '../../support/whole-flow.ts';
import { chooseFinish, coatAfterAll, readAir, sand } from './finish-room.ts';
import type { World } from './world.ts';

export async function weigh(
  world: World,
  client: Client,
  orderId: string,
  phase: 'arrival' | 'work' | 'after-sanding' | 'final',
  forceLbf: number,
): Promise<unknown> {
  return client.readings.add({
    commandId: newCommandId(),
    orderId,
    phase,
    drawReference: 'amo',
    scaleId: world.scaleId,
    rigZeroLbf: 0,
    braceIn: 7.25,
    stringNote: 'shop string',
    supportPoint: 'throat',
    pullPoint: 'nock point',
    tillerIn: 0.125,
    temperatureF: 68,
    moisturePct: null,
    strungMinutes: null,
    limbSetId: null,
    riserNote: '',
    stringTrack: 'middle',
    flexedFirst: true,
    note: '',
    pulls: [forceLbf + 2, forceLbf - 0.1, forceLbf + 0.1].map((force) => ({
      drawIn: 28,
      forceLbf: force,
    })),
  });
}

export async function enter(client: Client, orderId: string, item: EntryItem, ok = true) {
  return client.entries.record({
    commandId: newCommandId(),
    orderId,
    item,
    outcome: ok ? 'ok' : 'not-ok',
    doneOn: '2026-03-02',
    note: 'seen and noted',
  });
}

export async function ask(client: Client, orderId: string, kind: ConsentKind) {
  const { text } = await client.consents.propose({ orderId, kind });
  return client.consents.ask({
    commandId: newCommandId(),
    orderId,
    kind,
    text,
    askedHow: 'e-mail',
  });
}

export async function answer(
  client: Client,
  consent: { id: string; textSha256: string },
  words: 'granted' | 'declined' | 'withdrawn',
) {
  return client.consents.answer({
    commandId: newCommandId(),
    consentId: consent.id,
    textSha256: consent.textSha256,
    answer: words,
    answeredAt: '2026-03-02T09:00:00.000Z',
    channel: 'phone',
    answeredBy: 'Nora Hale',
    contact: '555 0142',
    words: 'As written, yes.',
    costChangeCents: 0,
  });
}

export async function unpack(client: Client, order: OrderDetail): Promise<void> {
  await client.arrival.record({
    commandId: newCommandId(),
    orderId: order.card.id,
    rowVersion: order.arrival?.rowVersion ?? null,
    ...arrivalFields,
    ...(order.card.openStops > 0
      ? { strung: 'not-strung', notStrungBecause: 'a stop finding is open' }
      : {}),
  });
}

async function grant(client: Client, orderId: string, kind: ConsentKind): Promise<void> {
  const { id } = await ask(client, orderId, kind);
  const consent = (await client.orders.get({ id: orderId })).consents.find(
    (each) => each.id === id,
  );
  if (consent !== undefined) await answer(client, consent, 'granted');
}

async function checkAll(world: World, client: Client, order: OrderDetail): Promise<void> {
  const orderId = order.card.id;
  if (order.finalCheck.some(({ item }) => item === 'check-weighed')) {
    await weigh(world, client, orderId, 'final', 45);
  }
  await client.finalCheck.record({
    commandId: newCommandId(),
    orderId,
    doneOn: '2026-03-02',
    checks: order.finalCheck.map(({ item }) => ({ item, outcome: 'ok', note: '', finding: null })),
  });
}

async function ship(world: World, client: Client, order: OrderDetail): Promise<void> {
  const fields = {
    carrierId: world.carrierId,
    carrierName: '',
    shape: 'box' as const,
    lengthIn: 70,
    widthIn: 5,
    heightIn: 5,
    weightLb: 4.5,
    declaredCents: null,
    valueEvidence: '',
    insured: false,
    tracking: '9400 1',
    shippedOn: null,
    deliveredOn: null,
    note: '',
  };
  const out = order.shipments.find((row) => row.direction === 'out' && row.struckReason === null);
  if (out === undefined) {
    await client.shipments.record({
      commandId: newCommandId(),
      orderId: order.card.id,
      direction: 'out',
      ...fields,
    });
  } else {
    const { id, rowVersion } = out;
    await client.shipments.edit({ commandId: newCommandId(), id, rowVersion, ...fields });
  }
}

async function identify(client: Client, order: OrderDetail): Promise<void> {
  const { id, rowVersion, customerId } = order.card;
  const bows = await client.bows.search({ text: '' });
  const bow = bows.find((each) => each.customerId === customerId);
  if (bow !== undefined) {
    await client.orders.identifyBow({ commandId: newCommandId(), id, rowVersion, bowId: bow.id });
  }
}

async function resolveStops(client: Client, order: OrderDetail): Promise<void> {
  for (const finding of order.findings) {
    if (finding.grade !== 'stop' || finding.resolvedAt !== null) continue;
    const { id, rowVersion } = finding;
    const how = 'repaired and looked at again';
    await client.findings.resolve({ commandId: newCommandId(), id, rowVersion, how });
  }
}

async function printTag(client: Client, order: OrderDetail): Promise<void> {
  await client.papers.issue({
    commandId: newCommandId(),
    orderId: order.card.id,
    aboutId: null,
    kind: 'return-tag',
    format: '4x6',
    copy: 'parcel',
    action: 'printed',
  });
}

async function settleIncidents(client: Client, order: OrderDetail): Promise<void> {
  for (const incident of order.incidents) {
    if (incident.settledAt !== null) continue;
    const { id, what, claimWith, claimUntil, claimFiledOn, claimNumber } = incident;
    const { rowVersion } = await client.incidents.edit({
      commandId: newCommandId(),
      id,
      rowVersion: incident.rowVersion,
      what,
      claimWith,
      claimUntil,
      claimFiledOn,
      claimNumber,
      ownerToldOn: '2026-03-02',
      ownerToldHow: 'phone',
      remedy: 'repaired at our cost',
    });
    await client.incidents.settle({ commandId: newCommandId(), id, rowVersion, how: 'agreed' });
  }
}

/** Puts right one thing that a gate misses, as somebody following its link would. */
export async function meet(
  world: World,
  client: Client,
  order: OrderDetail,
  missing: MissingItem,
): Promise<void> {
  const orderId = order.card.id;
  const consent = consentKind.safeParse(missing.item);
  if (consent.success) return grant(client, orderId, consent.data);
  if (missing.item.startsWith('check-')) return checkAll(world, client, order);
  const item = entryItem.safeParse(missing.opens ?? missing.item);
  if (missing.section === 'bench-log' && item.success) {
    await enter(client, orderId, item.data);
    return;
  }
  await meetOther(world, client, order, missing.item);
}

async function meetOther(
  world: World,
  client: Client,
  order: OrderDetail,
  item: string,
): Promise<void> {
  const orderId = order.card.id;
  switch (item) {
    case 'bow-identified':
      return identify(client, order);
    case 'box-opened':
    case 'condition':
      return unpack(client, order);
    case 'belongings':
      await client.arrival.addBelongings({ commandId: newCommandId(), orderId, what: ['string'] });
      return;
    case 'arrival-check':
      if (order.arrival === null) return unpack(client, order);
      await client.arrival.complete({
        commandId: newCommandId(),
        orderId,
        rowVersion: order.arrival.rowVersion,
      });
      return;
    case 'no-stop-finding':
      return resolveStops(client, order);
    case 'arrival-weighing':
      await weigh(world, client, orderId, 'arrival', 52);
      return;
    case 'stations':
      await enter(client, orderId, 'stations');
      return;
    case 'weighed-after-sanding':
      await weigh(world, client, orderId, 'after-sanding', 45.2);
      return;
    case 'last-grit':
      return sand(client, orderId);
    case 'finish-system':
      return chooseFinish(world, client, orderId);
    case 'air':
      return readAir(client);
    case 'string-and-flex':
    case 'safe-to-wrap':
      return coatAfterAll(world, client, order);
    case 'undershoot-offer':
      await client.undershoot.propose({
        commandId: newCommandId(),
        orderId,
        offer: 'accept',
        priceChangeCents: 0,
        words: '',
      });
      return;
    case 'target': {
      const { id, rowVersion } = order.card;
      await client.orders.edit({ commandId: newCommandId(), id, rowVersion, ...orderFields });
      return;
    }
    case 'incidents-settled':
      return settleIncidents(client, order);
    case 'belongings-back':
      for (const { id, rowVersion, backAt } of order.belongings) {
        if (backAt === null) {
          await client.arrival.tickBack({ commandId: newCommandId(), id, rowVersion, note: '' });
        }
      }
      return;
    case 'do-not-draw-tag':
      return printTag(client, order);
    case 'carrier-limits':
    case 'tracking':
      return ship(world, client, order);
    default:
  }
}
