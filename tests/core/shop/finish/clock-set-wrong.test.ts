import { expect, test } from 'vitest';
import { clockTrouble } from '../../../../core/shop/finish/clock-trouble.ts';
import { confirmClock } from '../../../../core/shop/finish/confirm-clock.ts';
import { listClocks } from '../../../../core/shop/finish/list-clocks.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { finishRoom } from '../../../../core/shop/finish/room.ts';
import { strikeOutCoat } from '../../../../core/shop/finish/strike-coat.ts';
import { addFinishSystem } from '../../../../core/shop/finish/systems.ts';
import { dayMs, hour } from '../../../support/clock.ts';
import { procedures } from '../../../support/contract-walk.ts';
import {
  choose,
  coatedBow,
  type FinishKit,
  finishKit,
  oilSheet,
  usableBatch,
} from '../../../support/finish-kit.ts';
import { received, stocked } from '../../../support/stocked-shop.ts';
import { newCommandId, type TestShop, takeIn } from '../../../support/test-shop.ts';
import { Flow } from '../../../support/whole-flow.ts';
import { reopened, sameOrder } from './reopened.ts';

const minute = 60_000;
const year = 365 * dayMs;

/** A bow coated at 09:16, its cup good until 11:00. */
async function coated() {
  const { kit, bow, batchId } = await coatedBow();
  return { kit, bow, batchId, clock: kit.shop.clock };
}

type Refusable = Awaited<ReturnType<FinishKit['spray']>> | Awaited<ReturnType<Flow['move']>>;

/** Why it was refused, one sentence each; empty where it was done. */
function refusals(result: Refusable): string[] {
  if (result.outcome !== 'refused') return [];
  const missing =
    'missing' in result
      ? result.missing
      : [...result.session, ...result.orders.flatMap((order) => order.missing)];
  return missing.map(({ sentence }) => sentence);
}

const trouble = async (shop: TestShop) => (await listClocks(shop.owner)).trouble;

/** What the records say of one bow and of the cups, whatever instant it is asked at. */
async function told(shop: TestShop, { orderId }: Flow) {
  const { passed, window, cure, missing } = await orderFinishNow(shop.owner, orderId);
  const { clocks } = await listClocks(shop.owner);
  const { batches } = await finishRoom(shop.owner);
  return {
    passed,
    window: window?.state,
    cure,
    missing,
    clocks,
    cups: batches.map((b) => b.state),
  };
}

test('a few seconds back are the usual setting of clocks, a minute more is not', () => {
  expect(clockTrouble('2026-03-02T09:00:00.000Z', null)).toBeNull();
  expect(clockTrouble('2026-03-02T09:00:00.000Z', '2026-03-02T09:01:30.000Z')).toBeNull();
  expect(clockTrouble('2026-03-02T09:00:00.000Z', '2026-03-02T09:03:00.000Z')).toBe(
    'The clock of the computer stands 3 min before the last record. Set it right: until then no ' +
      'time counts as passed. If it is right, the owner says so in the finish room.',
  );
});

test('set back: final check stays shut, it is said why, and set right all is as it was', async () => {
  const { kit, bow, clock } = await coated();
  await bow.move('cure');
  clock.advance(72 * hour);
  await kit.air();
  const before = await told(kit.shop, bow);
  expect(before.passed).toEqual(['handle', 'stringAndFlex']);

  clock.advance(-12 * hour);
  const finish = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(finish.passed).toEqual([]);
  expect(finish.clockTrouble).toMatch(/stands 12 h before the last record.*no time counts/);
  expect(refusals(await bow.move('final-check'))).toEqual([
    expect.stringMatching(/^The clock of the computer stands 12 h .*Set it right/),
  ]);
  expect(await trouble(kit.shop)).toMatch(/Set it right/);
  expect((await finishRoom(kit.shop.owner)).clockTrouble).toMatch(/Set it right/);

  clock.advance(12 * hour);
  expect(await told(kit.shop, bow)).toEqual(before);
  expect(refusals(await bow.move('final-check'))).toEqual([]);
});

test('set back: what works on meanwhile changes nothing about it, nor does a restart', async () => {
  const { kit, bow, clock } = await coated();
  await bow.move('cure');
  clock.advance(50 * hour);
  await kit.air();
  clock.advance(-5 * hour);
  // Recorded by the wrong clock: the last record that counts is still the later one.
  await kit.air();
  expect(await trouble(kit.shop)).toMatch(/stands 5 h before/);
  const shop = await reopened(kit.shop);
  expect(await trouble(shop)).toMatch(/stands 5 h before/);
  expect(refusals(await sameOrder(shop, bow).move('final-check'))).toHaveLength(1);
  clock.advance(5 * hour);
  expect(await trouble(shop)).toBeNull();
  expect(refusals(await sameOrder(shop, bow).move('final-check'))).toEqual([]);
});

test('set back: a cup past its pot life is not good again, and old air is not new', async () => {
  const { kit, batchId, clock } = await coated();
  const other = await kit.bow();
  const spray = () => kit.spray([other], { batchId });
  clock.advance(2 * hour);
  const past = refusals(await spray());
  expect(past).toEqual([
    'Batch 260302-1 is past its pot life by 16 min: mix a new one. Thinner does not bring it back.',
  ]);
  clock.advance(3 * hour);
  const stale = refusals(await spray());
  expect(stale.join(' ')).toMatch(/The air was read 5 h 16 min ago/);

  clock.advance(-4 * hour);
  expect(refusals(await spray())).toEqual([
    expect.stringMatching(/^The clock of the computer stands .* Set it right/),
  ]);
  clock.advance(4 * hour);
  expect(refusals(await spray()).join(' ')).toMatch(/past its pot life.*The air was read/);
});

test('set back: a window that has closed does not open again, and lots do not come back in date', async () => {
  const { kit, bow, clock } = await coated();
  clock.advance(60 * dayMs);
  // The hardener was good until 30 April.
  const mixed = await kit.mix();
  expect(mixed.outcome === 'refused' && mixed.troubles.join(' ')).toMatch(/expired/);
  await kit.air();
  clock.advance(-60 * dayMs + 6 * hour);
  const batchId = await usableBatch(kit);
  await kit.air();
  expect(refusals(await kit.spray([bow], { batchId })).join(' ')).toMatch(
    /^The clock of the computer stands 59 days .*before the last record/,
  );
  // Set right, that cup is long past: a clock behind the day only ever takes time from it.
  clock.advance(60 * dayMs);
  await kit.air();
  const right = refusals(await kit.spray([bow], { batchId }));
  expect(right.join(' ')).toMatch(/past its pot life by .* Expired: hardener H-1/);
  expect(right.join(' ')).toMatch(/Closed: ask the finish's sheet/);
});

test('set back: no coat is recorded by its hour, and the owner does not let one pass either', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  const batchId = await usableBatch(kit);
  await kit.spray([bow], { batchId, override: { reason: 'nobody read the air' } });
  kit.shop.clock.advance(30 * hour);
  await kit.mix();
  kit.shop.clock.advance(-20 * hour);
  // Ten hours after the coat by this clock, when the window would be open.
  for (const override of [undefined, { reason: 'I watched it dry' }]) {
    const refused = await kit.spray([bow], { batchId, ...(override ? { override } : {}) });
    expect(refused).toMatchObject({
      outcome: 'refused',
      session: [
        {
          item: 'clock',
          sentence: expect.stringMatching(/stands 20 h .* Set it right/),
          override: 'never',
        },
      ],
      orders: [],
    });
  }
  const { coats } = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(coats).toHaveLength(1);
});

test('set back: what is put on from the can is not in date again', async () => {
  const kit = await finishKit();
  const { clock, owner } = kit.shop;
  const { id: oilId } = await stocked(owner, { name: 'Rubbing oil', unit: 'mL' });
  const lotId = await received(owner, oilId, { receivedOn: '2026-03-01', expiresOn: '2026-03-04' });
  const { id: systemId } = await addFinishSystem(owner, {
    commandId: newCommandId(),
    sheet: oilSheet,
    resinId: oilId,
    hardenerId: null,
    thinnerId: null,
    active: true,
  });
  const bow = await kit.bow();
  const oil = () => kit.spray([bow], { finishSystemId: systemId, lotId, purpose: 'oil' });
  const lots = async () => {
    const result = await oil();
    const session = result.outcome === 'refused' ? result.session : [];
    return session.map(({ item, sentence }) => `${item}: ${sentence}`);
  };
  expect(await lots()).toEqual([]);
  clock.advance(4 * dayMs);
  await kit.air();
  const expired = ['lots-in-date: Expired: resin R-118 (until 2026-03-04).'];
  expect(await lots()).toEqual(expired);
  clock.advance(-3 * dayMs);
  expect(await lots()).toEqual([expect.stringMatching(/^clock: The clock of the computer/)]);
  clock.advance(3 * dayMs);
  expect(await lots()).toEqual(expired);
});

test('set back: old air does not let a bow into finish', async () => {
  const kit = await finishKit();
  const { clock } = kit.shop;
  const { id } = await takeIn(kit.shop, { services: ['scuff-recoat'] }, 'shop');
  await choose(kit.shop, id, kit.systemId);
  await kit.air();
  const air = async () => {
    const result = await new Flow(kit.shop, id).move('finish');
    const missing = result.outcome === 'refused' ? result.missing : [];
    return missing.filter(({ item }) => item === 'air').map(({ sentence }) => sentence);
  };
  clock.advance(5 * hour);
  const old = ['The air was read 5 h ago: read it again.'];
  expect(await air()).toEqual(old);
  await kit.mix();
  clock.advance(-4 * hour);
  expect(await air()).toEqual([expect.stringMatching(/^The clock of the computer stands 4 h/)]);
  clock.advance(4 * hour);
  expect(await air()).toEqual(old);
});

test('set back before a coat: it lies after now, and is told so', async () => {
  const { kit, bow, clock } = await coated();
  await bow.move('cure');
  clock.advance(-2 * hour);
  expect((await orderFinishNow(kit.shop.owner, bow.orderId)).window?.sentence).toBe(
    'The last coat lies after now: look at the clock of the computer.',
  );
  expect(refusals(await bow.move('final-check'))).toHaveLength(1);
});

test('far ahead and back, nothing recorded meanwhile: all is as it was', async () => {
  const { kit, bow, clock } = await coated();
  clock.advance(5 * hour);
  const before = await told(kit.shop, bow);
  expect(before).toMatchObject({ passed: [], window: 'open', cups: ['past'] });
  clock.advance(year);
  expect((await told(kit.shop, bow)).passed).toHaveLength(4);
  const ahead = await reopened(kit.shop);
  clock.advance(-year);
  const shop = await reopened(ahead);
  expect(await trouble(shop)).toBeNull();
  expect(await told(shop, bow)).toEqual(before);
});

/** A year ahead somebody reads the air; then the clock is set right again. */
async function onceAhead() {
  const made = await coated();
  const { kit, bow, clock } = made;
  await bow.move('cure');
  clock.advance(year);
  await kit.air({ airF: 85, surfaceF: 85 });
  clock.advance(-year);
  return made;
}

const confirm = (shop: TestShop) => confirmClock(shop.owner, { commandId: newCommandId() });

test('far ahead, something recorded, and back: no gate opens until the owner confirms the clock', async () => {
  const { kit, bow, clock } = await onceAhead();
  clock.advance(49 * hour);
  const shut = [expect.stringMatching(/stands 362 days .* If it is right, the owner says so/)];
  expect(refusals(await bow.move('final-check'))).toEqual(shut);
  const shop = await reopened(kit.shop);
  expect(refusals(await sameOrder(shop, bow).move('final-check'))).toEqual(shut);

  const { confirmedAt } = await confirm(shop);
  expect(Date.parse(confirmedAt)).toBeLessThan(Date.parse(clock.now()));
  expect(await trouble(shop)).toBeNull();
  expect((await orderFinishNow(shop.owner, bow.orderId)).passed).toEqual([
    'handle',
    'stringAndFlex',
  ]);
  expect(refusals(await sameOrder(shop, bow).move('final-check'))).toEqual([]);
});

test('confirmed, times count again and open nothing before they are up', async () => {
  const { kit, bow, clock } = await onceAhead();
  clock.advance(47 * hour);
  await confirm(kit.shop);
  expect(refusals(await bow.move('final-check'))).toEqual([
    "Not yet safe to string and flex: by the finish's sheet in 1 h.",
  ]);
  // Air that was read by the clock ahead of its time is not the air of now.
  expect((await finishRoom(kit.shop.owner)).air?.airF).toBe(70);
  await bow.move('finish', { reason: 'another coat' });
  expect((await orderFinishNow(kit.shop.owner, bow.orderId)).window?.heldF).toBe(70);
  clock.advance(hour);
  await bow.move('cure');
  expect(refusals(await bow.move('final-check'))).toEqual([]);
});

test('confirmed once, a clock that is set back later is noticed all the same', async () => {
  const { kit, bow, clock } = await onceAhead();
  await confirm(kit.shop);
  clock.advance(72 * hour);
  await kit.air();
  clock.advance(-3 * hour);
  expect(await trouble(kit.shop)).toMatch(/stands 3 h before the last record/);
  expect(refusals(await bow.move('final-check'))).toHaveLength(1);
});

test('a coat recorded by the clock ahead of its time lies after now until it is struck out', async () => {
  const { kit, clock } = await coated();
  const bow = await kit.bow();
  clock.advance(year);
  await kit.air();
  await kit.spray([bow], { batchId: null, override: { reason: 'the cup of this morning' } });
  clock.advance(-year);
  await confirm(kit.shop);
  await bow.move('cure');
  clock.advance(60 * hour);
  expect(refusals(await bow.move('final-check'))).toEqual([
    'The last coat lies after now: look at the clock of the computer.',
  ]);
  const [coat] = (await orderFinishNow(kit.shop.owner, bow.orderId)).coats;
  await strikeOutCoat(kit.shop.owner, {
    commandId: newCommandId(),
    id: coat?.id ?? '',
    rowVersion: 1,
    reason: 'recorded a year ahead',
  });
  const { lastCoatAt, missing } = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(lastCoatAt).toBeNull();
  expect(missing.map(({ item }) => item)).toContain('string-and-flex');
});

test('a clock that agrees with the records is not confirmed, and only the owner may confirm one', async () => {
  const { kit, clock } = await coated();
  await expect(confirm(kit.shop)).rejects.toMatchObject({ code: 'CONFLICT' });
  clock.advance(-minute);
  await expect(confirm(kit.shop)).rejects.toMatchObject({ code: 'CONFLICT' });
  const confirming = procedures.find(({ name }) => name === 'clocks.confirm');
  expect(confirming?.meta.roles).toEqual(['owner']);
});
