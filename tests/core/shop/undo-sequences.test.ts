import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closedStages } from '../../../shared/stages.ts';
import { bowFields, customerFields, orderFields } from '../../support/fixtures.ts';
import { recordRows } from '../../support/table-rows.ts';
import { newCommandId } from '../../support/test-shop.ts';
import { arrivalFields, weighing } from '../../support/undo-preparing.ts';
import { type UndoShop, undoShop } from '../../support/undo-shop.ts';

/** One thing to try; `n` varies what is written. Refusals are part of a shop's day. */
type Act = (kit: UndoShop, commandId: string, n: number) => Promise<unknown>;

const orderAt = async (kit: UndoShop) => ({ id: kit.orderId, rowVersion: await kit.version() });
const isHeld = async (kit: UndoShop) =>
  (await kit.flow.order()).holds.some((hold) => hold.releasedAt === null);
const nth = <T>(list: readonly T[], n: number): T => {
  const item = list[n % list.length];
  if (item === undefined) throw new Error('there is none yet');
  return item;
};

const acts: Record<string, Act> = {
  edit: async (kit, commandId, n) =>
    kit.client.orders.edit({
      commandId,
      ...(await orderAt(kit)),
      ...orderFields,
      services: n % 2 === 0 ? ['scuff-recoat'] : ['reduce-weight', 're-mark'],
      targetDrawIn: 24 + (n % 8),
      estimateCents: n * 1000,
    }),
  inscribe: async (kit, commandId, n) =>
    kit.client.orders.setInscription({
      commandId,
      ...(await orderAt(kit)),
      inscription: `line ${n}`,
    }),
  forward: async (kit, commandId) =>
    kit.client.orders.move({ commandId, ...(await orderAt(kit)), to: 'in-mail' }),
  // Taking a step back is taken back through the gates, and those stand shut while it is held.
  back: async (kit, commandId) => {
    if (await isHeld(kit)) return;
    const to = { ...(await orderAt(kit)), to: 'requested' as const, reason: 'not sent yet' };
    await kit.client.orders.move({ commandId, ...to });
  },
  strip: async (kit, commandId, n) =>
    kit.client.orders.setStripFirst({
      commandId,
      ...(await orderAt(kit)),
      stripFirst: n % 2 === 0,
    }),
  handover: async (kit, commandId, n) =>
    kit.client.orders.setHandover({
      commandId,
      ...(await orderAt(kit)),
      handover: n % 2 === 0 ? 'collected' : 'shipped',
    }),
  cancel: async (kit, commandId) => {
    if (await isHeld(kit)) return;
    await kit.client.orders.cancel({ commandId, ...(await orderAt(kit)), reason: 'never sent' });
  },
  // A target that no longer fits the bow is changed before the request is taken up again.
  takeUp: async (kit, commandId) => {
    const { targetDrawIn, bow } = await kit.flow.order();
    if ((targetDrawIn ?? 0) > (bow?.maxSafeDrawIn ?? 40)) return;
    await kit.client.orders.takeUpAgain({ commandId, ...(await orderAt(kit)), reason: 'it came' });
  },
  hold: async (kit, commandId) =>
    kit.client.orders.hold({
      commandId,
      ...(await orderAt(kit)),
      kind: 'customer',
      reason: 'waiting for the answer',
      remindOn: null,
    }),
  remind: async (kit, commandId, n) =>
    kit.client.orders.remind({
      commandId,
      ...(await orderAt(kit)),
      how: 'by phone',
      note: `try ${n}`,
    }),
  release: async (kit, commandId) =>
    kit.client.orders.release({ commandId, ...(await orderAt(kit)) }),
  note: (kit, commandId, n) =>
    kit.client.entries.record({
      commandId,
      orderId: kit.orderId,
      item: 'bare-glass',
      outcome: 'ok',
      doneOn: '2026-03-02',
      note: `seen ${n} times`,
    }),
  strikeNote: async (kit, commandId, n) => {
    const { id, rowVersion } = nth((await kit.flow.order()).entries, n);
    await kit.client.entries.strikeOut({ commandId, id, rowVersion, reason: 'wrong order' });
  },
  find: (kit, commandId, n) =>
    kit.client.findings.add({
      commandId,
      orderId: kit.orderId,
      grade: n % 2 === 0 ? 'watch' : 'cosmetic',
      place: `limb, ${n}" from the fade`,
      note: '',
    }),
  resolve: async (kit, commandId, n) => {
    const { id, rowVersion } = nth((await kit.flow.order()).findings, n);
    await kit.client.findings.resolve({ commandId, id, rowVersion, how: 'looked again' });
  },
  weigh: (kit, commandId, n) =>
    kit.client.readings.add({
      commandId,
      orderId: kit.orderId,
      scaleId: kit.scaleId,
      ...weighing,
      pulls: [0, 1].map(() => ({ drawIn: 24 + (n % 6), forceLbf: 40 + n })),
    }),
  strikeWeighing: async (kit, commandId, n) => {
    const { id, rowVersion } = nth((await kit.flow.order()).readings, n);
    await kit.client.readings.strikeOut({ commandId, id, rowVersion, reason: 'another bow' });
  },
  customer: async (kit, commandId, n) => {
    const { id, rowVersion } = (await kit.client.customers.get({ id: kit.customerId })).customer;
    const fields = { ...customerFields, phone: `555 01${n}` };
    await kit.client.customers.edit({ commandId, id, rowVersion, ...fields });
  },
  bow: async (kit, commandId, n) => {
    const { id, rowVersion } = (await kit.client.bows.get({ id: kit.bowId })).bow;
    const fields = { ...bowFields, maxSafeDrawIn: 28 + (n % 5), maker: `Maker ${n}` };
    await kit.client.bows.edit({ commandId, id, rowVersion, ...fields });
  },
  otherBow: async (kit, commandId, n) => {
    const { bows } = await kit.client.customers.get({ id: kit.customerId });
    const bowId = nth(bows, n).id;
    await kit.client.orders.identifyBow({ commandId, ...(await orderAt(kit)), bowId });
  },
  addBow: (kit, commandId, n) =>
    kit.client.bows.add({
      commandId,
      customerId: kit.customerId,
      ...bowFields,
      serial: `S-${n}`,
    }),
  arrival: async (kit, commandId, n) => {
    const { arrival } = await kit.flow.order();
    await kit.client.arrival.record({
      commandId,
      orderId: kit.orderId,
      rowVersion: arrival?.rowVersion ?? null,
      ...arrivalFields,
      condition: `scuff ${n}`,
    });
  },
  list: (kit, commandId, n) =>
    kit.client.arrival.addBelongings({ commandId, orderId: kit.orderId, what: [`String ${n}`] }),
  tick: async (kit, commandId, n) => {
    const { id, rowVersion } = nth((await kit.flow.order()).belongings, n);
    await kit.client.arrival.tickBack({ commandId, id, rowVersion, note: '' });
  },
  complete: async (kit, commandId) => {
    const rowVersion = (await kit.flow.order()).arrival?.rowVersion ?? 1;
    await kit.client.arrival.complete({ commandId, orderId: kit.orderId, rowVersion });
  },
  task: (kit, commandId, n) =>
    kit.client.tasks.add({
      commandId,
      orderId: kit.orderId,
      what: `Task ${n}`,
      dueOn: '2026-03-05',
      forPersonId: null,
    }),
};

/** Stays for good, so it is no part of what is taken back to the start. */
const stop: Act = (kit, commandId, n) =>
  kit.client.findings.add({
    commandId,
    orderId: kit.orderId,
    grade: 'stop',
    place: `limb, ${n}"`,
    note: 'a crack',
  });

const step = (names: readonly string[]) =>
  fc.record({ act: fc.constantFrom(...names), n: fc.integer({ min: 0, max: 40 }) });

/** Does the steps; answers the ids of those that were carried out, in order. */
async function lived(
  kit: UndoShop,
  steps: readonly { act: string; n: number }[],
): Promise<{ act: string; commandId: string }[]> {
  const done: { act: string; commandId: string }[] = [];
  const all: Record<string, Act> = { ...acts, stop };
  for (const { act, n } of steps) {
    const commandId = newCommandId();
    await all[act]?.(kit, commandId, n).catch(() => undefined);
    const [item] = await kit.client.undo.recent({ of: commandId });
    if (item !== undefined && !item.why?.includes('changed nothing')) done.push({ act, commandId });
  }
  return done;
}

async function openStops(kit: UndoShop): Promise<number> {
  const { read } = kit.shop.core.shop();
  const rows = await read
    .selectFrom('finding')
    .select('id')
    .where('grade', '=', 'stop')
    .where('resolved_at', 'is', null)
    .execute();
  return rows.length;
}

async function openHolds(kit: UndoShop): Promise<number> {
  return (await kit.flow.order()).holds.filter((hold) => hold.releasedAt === null).length;
}

/** Open orders that plan a draw past what their bow can take. */
async function plannedPast(kit: UndoShop): Promise<number> {
  const { read } = kit.shop.core.shop();
  const rows = await read
    .selectFrom('shop_order')
    .innerJoin('bow', 'bow.id', 'shop_order.bow_id')
    .select('shop_order.id')
    .whereRef('shop_order.target_draw_in', '>', 'bow.max_safe_draw_in')
    .where('shop_order.stage', 'not in', closedStages)
    .execute();
  return rows.length;
}

// Each run opens a shop of its own and lives a day in it, which takes about half a second.
const runs = { numRuns: 12 };

describe('a day in the shop', () => {
  test('taken back from its end, it never happened', async () => {
    const steps = fc.array(step(Object.keys(acts)), { minLength: 6, maxLength: 14 });
    await fc.assert(
      fc.asyncProperty(steps, async (day) => {
        const kit = await undoShop();
        const before = await recordRows(kit.shop);
        const done = await lived(kit, day);
        for (const { act, commandId } of done.toReversed()) {
          await kit.client.undo
            .undo({ commandId: newCommandId(), of: commandId })
            .catch((error: Error) => {
              throw new Error(`${act} was not undone: ${error.message}`);
            });
        }
        expect(await recordRows(kit.shop)).toEqual(before);
      }),
      runs,
    );
  }, 120_000);

  test('taken back in any order, it is undone or refused, and nothing unsafe comes of it', async () => {
    const steps = fc.array(step([...Object.keys(acts), 'stop']), { minLength: 6, maxLength: 14 });
    const order = fc.array(fc.nat(), { minLength: 12, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(steps, order, async (day, picks) => {
        const kit = await undoShop();
        const done = await lived(kit, day);
        for (const pick of picks) {
          const [next] = done.splice(pick % Math.max(1, done.length), 1);
          if (next === undefined) break;
          const before = await recordRows(kit.shop);
          const stops = await openStops(kit);
          const past = await plannedPast(kit);
          const undone = await kit.client.undo
            .undo({ commandId: newCommandId(), of: next.commandId })
            .then(
              () => null,
              (error: { code: string; message: string }) => error,
            );
          if (undone !== null) {
            expect(undone, next.act).toMatchObject({ code: 'CONFLICT' });
            expect(await recordRows(kit.shop)).toEqual(before);
          }
          expect(await openStops(kit)).toBeGreaterThanOrEqual(stops);
          expect(await openHolds(kit)).toBeLessThanOrEqual(1);
          expect(await plannedPast(kit)).toBeLessThanOrEqual(past);
        }
      }),
      runs,
    );
  }, 120_000);
});
