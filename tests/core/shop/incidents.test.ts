import { expect, test } from 'vitest';
import { resolveFinding } from '../../../core/shop/findings/findings.ts';
import {
  editIncident,
  recordIncident,
  settleIncident,
} from '../../../core/shop/incidents/incidents.ts';
import { runCommand } from '../../../core/storage/commands.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

type Record = ContractInputs['incidents']['record'];

const override = { override: { reason: 'papers follow' } };

async function started(customer: 'new' | 'shop' = 'new') {
  const shop = await testShop();
  const { id } = await takeIn(shop, {}, customer);
  return { shop, flow: new Flow(shop, id) };
}

async function record(flow: Flow, change: Partial<Record> = {}, ctx = flow.shop.owner) {
  await recordIncident(ctx, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    kind: 'damaged-here',
    happenedOn: '2026-03-01',
    what: 'fell from the rack',
    place: 'upper limb tip',
    claimWith: '',
    claimUntil: null,
    ...change,
  });
  const [incident] = (await flow.order()).incidents;
  if (incident === undefined) throw new Error('not recorded');
  return incident;
}

const empty = {
  what: 'fell from the rack',
  claimWith: '',
  claimUntil: null,
  claimFiledOn: null,
  claimNumber: '',
  ownerToldOn: null,
  ownerToldHow: '',
  remedy: '',
};

/** A parcel as the shipping slice stores it, on a carrier with so many days for a claim. */
async function parcel(shop: TestShop, orderId: string, direction: 'in' | 'out', claimDays: number) {
  await runCommand(shop.owner, { id: newCommandId(), name: 'test.parcel' }, async (trx) => {
    const carrier = await trx.insert('carrier', {
      id: shop.owner.newId(),
      name: `Private carrier ${claimDays}`,
      as_of: '2026-01-01',
      profile_json: '{}',
      claim_days: claimDays,
      active: 1,
    });
    await trx.insert('shipment', {
      id: shop.owner.newId(),
      order_id: orderId,
      direction,
      carrier_id: carrier.id,
      carrier_name: carrier.name,
      shape: 'box',
      length_in: null,
      width_in: null,
      height_in: null,
      weight_lb: null,
      declared_cents: null,
      value_evidence: '',
      insured: 0,
      tracking: '',
      shipped_on: null,
      delivered_on: null,
      assessment_json: null,
      note: '',
      recorded_at: trx.at,
      person_id: shop.owner.actor.personId,
      struck_reason: null,
    });
    return {};
  });
}

test('damage writes a stop finding with it; an older view of the order is told', async () => {
  const { shop, flow } = await started();
  const { rowVersion } = (await flow.order()).card;
  const incident = await record(flow, {}, shop.as('bench'));
  const order = await flow.order();
  expect(order.findings).toMatchObject([
    { id: incident.findingId, grade: 'stop', place: 'upper limb tip', note: 'fell from the rack' },
  ]);
  expect(order.card).toMatchObject({ openStops: 1, rowVersion: rowVersion + 1 });
  expect(order.history.map((item) => item.summary)).toContain(
    'Damaged in the shop: fell from the rack',
  );
  expect(incident).toMatchObject({ foundBy: 'Ben Marsh', claimUntil: null, settledAt: null });
});

test('damage without its place on the bow is refused, and nothing is written', async () => {
  const { flow } = await started();
  await expect(record(flow, { place: '' })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { place: 'Say where on the bow.' },
  });
  const order = await flow.order();
  expect([order.incidents, order.findings]).toEqual([[], []]);
});

test('a lost bow makes no finding', async () => {
  const { flow } = await started();
  const incident = await record(flow, { kind: 'lost-in-transit', place: '' });
  expect(incident.findingId).toBeNull();
  expect((await flow.order()).card.openStops).toBe(0);
});

test('the last day of a claim comes from the carrier of the way it happened on', async () => {
  const { shop, flow } = await started();
  await parcel(shop, flow.orderId, 'out', 60);
  await parcel(shop, flow.orderId, 'in', 15);
  expect(await record(flow, { kind: 'damaged-in-transit' })).toMatchObject({
    claimWith: 'Private carrier 15',
    claimUntil: '2026-03-16',
  });
  expect(await record(flow, { kind: 'damaged-here' })).toMatchObject({
    claimWith: '',
    claimUntil: null,
  });
  expect(
    await record(flow, {
      kind: 'lost-in-transit',
      claimWith: 'our insurer',
      claimUntil: '2026-04-01',
    }),
  ).toMatchObject({ claimWith: 'our insurer', claimUntil: '2026-04-01' });
});

test('once the bow has left, a claim goes to the carrier it left with', async () => {
  const { shop, flow } = await started();
  await parcel(shop, flow.orderId, 'in', 15);
  await parcel(shop, flow.orderId, 'out', 60);
  await flow.move('arrived', override);
  await shop.owner.write
    .updateTable('shop_order')
    .set({ stage: 'shipped' })
    .where('id', '=', flow.orderId)
    .execute();
  expect(await record(flow, { kind: 'lost-in-transit' })).toMatchObject({
    claimWith: 'Private carrier 60',
    claimUntil: '2026-04-30',
  });
});

test('it is settled only when the owner is told and a remedy is agreed', async () => {
  const { shop, flow } = await started();
  const { id } = await record(flow);
  const settle = async () => {
    const incident = (await flow.order()).incidents.find((each) => each.id === id);
    return settleIncident(shop.as('office'), {
      commandId: newCommandId(),
      id,
      rowVersion: incident?.rowVersion ?? 0,
      how: 'new tip overlay, looked at again',
    });
  };
  await expect(settle()).rejects.toMatchObject({
    code: 'CONFLICT',
    message:
      'The customer has not been told yet: say when and how. No remedy is agreed yet: write it down.',
    details: { ownerToldOn: expect.any(String), remedy: expect.any(String) },
  });
  await editIncident(shop.as('office'), {
    ...empty,
    commandId: newCommandId(),
    id,
    rowVersion: 1,
    ownerToldOn: '2026-03-02',
    ownerToldHow: 'by phone',
  });
  await expect(settle()).rejects.toMatchObject({
    message: 'No remedy is agreed yet: write it down.',
  });
  await editIncident(shop.as('office'), {
    ...empty,
    commandId: newCommandId(),
    id,
    rowVersion: 2,
    ownerToldOn: '2026-03-02',
    ownerToldHow: 'by phone',
    remedy: 'a new overlay at our cost',
    claimFiledOn: '2026-03-02',
  });
  await settle();
  const order = await flow.order();
  expect(order.incidents[0]).toMatchObject({ settledHow: 'new tip overlay, looked at again' });
  expect(order.history.map((item) => item.summary)).toEqual(
    expect.arrayContaining([
      'Damaged in the shop: customer told 2026-03-02 by phone',
      'Damaged in the shop: remedy: a new overlay at our cost; claim filed 2026-03-02',
      'Settled: damaged in the shop',
    ]),
  );
  // A settled story says nothing about the bow: the stop ends by repair and a second look.
  expect(order.card.openStops).toBe(1);
  const [stop] = order.findings;
  await resolveFinding(shop.owner, {
    commandId: newCommandId(),
    id: stop?.id ?? '',
    rowVersion: stop?.rowVersion ?? 0,
    how: 'overlay renewed, flexed, nothing seen',
  });
  expect((await flow.order()).card.openStops).toBe(0);
  await expect(settle()).rejects.toMatchObject({ code: 'CONFLICT' });
});

test("of the shop's own bow there is no owner to tell", async () => {
  const { shop, flow } = await started('shop');
  const { id } = await record(flow);
  await editIncident(shop.owner, {
    ...empty,
    commandId: newCommandId(),
    id,
    rowVersion: 1,
    remedy: 'scrapped',
  });
  await settleIncident(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: 2,
    how: 'kept for patterns',
  });
  expect((await flow.order()).incidents[0]?.settledAt).not.toBeNull();
});

test('a day that has not come yet is refused', async () => {
  const { shop, flow } = await started();
  await expect(record(flow, { happenedOn: '2026-03-09' })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { happenedOn: 'Give a past day.' },
  });
  const { id } = await record(flow);
  await expect(
    editIncident(shop.owner, {
      ...empty,
      commandId: newCommandId(),
      id,
      rowVersion: 1,
      ownerToldOn: '2027-03-02',
    }),
  ).rejects.toMatchObject({ code: 'BAD_INPUT' });
});

test('two people on one incident: the second is told', async () => {
  const { shop, flow } = await started();
  const { id } = await record(flow);
  const change = { ...empty, id, rowVersion: 1, remedy: 'a new overlay' };
  await editIncident(shop.owner, { ...change, commandId: newCommandId() });
  await expect(
    editIncident(shop.owner, { ...change, commandId: newCommandId() }),
  ).rejects.toMatchObject({ code: 'STALE' });
});
