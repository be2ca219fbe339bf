import { expect, test } from 'vitest';
import { addDays, dayOf } from '../../core/shop/day.ts';
import type { StockUnit } from '../../shared/stores.ts';
import { dayMs } from '../support/clock.ts';
import { type Client, httpDoor, messagePortDoor } from '../support/doors.ts';
import { seededRandom } from '../support/random.ts';
import { stocked } from '../support/stocked-shop.ts';
import { takeIn, testShop } from '../support/test-shop.ts';
import { chooseAct, type World } from './stock-model/acts.ts';
import { Ledger } from './stock-model/ledger.ts';

/** `npm run campaign` runs ten thousand. */
const commands = Number(process.env.TILLERMARK_STOCK ?? 1000);
/** A shop of its own for so many: more would only make each look at the shelves slower. */
const perShop = 500;

const units: readonly StockUnit[] = ['mL', 'fl oz', 'g', 'sheet'];

function isRefusal(error: unknown): boolean {
  const code = (error as { code?: unknown }).code;
  return ['CONFLICT', 'STALE', 'BAD_INPUT'].includes(String(code));
}

/** One act by one client: `done`, or the sentence that refused it. */
async function tried(client: Client, world: World, trace: string[]): Promise<void> {
  const [name, act] = chooseAct(world.random);
  try {
    await act(client, world);
    trace.push(`${name}: done`);
  } catch (error) {
    if (!isRefusal(error)) throw error;
    trace.push(`${name}: ${(error as Error).message}`);
  }
}

/** Two clients, one through each door, at the same time; after each pair the shelves are looked at. */
async function runShop(seed: number, length: number, outcomes: Map<string, number>) {
  const shop = await testShop();
  const random = seededRandom(seed);
  const consumables = await Promise.all(
    units.map(async (unit) => {
      const openedDays = unit === 'mL' ? 5 : null;
      const { id } = await stocked(shop.owner, { name: `Counted in ${unit}`, unit, openedDays });
      return { id, unit };
    }),
  );
  const orders = [await takeIn(shop), await takeIn(shop)];
  const today = () => dayOf(shop.core.shop().now());
  const world: World = {
    random,
    today,
    dayAfter: (days) => addDays(today(), days),
    consumables,
    orderIds: orders.map(({ id }) => id),
    ledger: new Ledger(),
  };
  const office = (await httpDoor(shop.core)).client(shop.as('office').actor.personId);
  const bench = messagePortDoor(shop.core).client(shop.as('bench').actor.personId);
  const trace: string[] = [];
  for (let done = 0; done < length; done += 2) {
    if (random() < 0.04) shop.clock.advance(dayMs);
    await Promise.all([tried(office, world, trace), tried(bench, world, trace)]);
    const told = `seed ${seed}\n${trace.slice(-12).join('\n')}`;
    expect(await world.ledger.broken(shop.core.shop()), told).toEqual([]);
    const shown = await office.stores.get({ id: consumables[done % units.length]?.id ?? '' });
    expect(world.ledger.shownWrongly(shown.lots), told).toEqual([]);
    expect(shown.onHand).toBeCloseTo(
      shown.lots.reduce((sum, lot) => sum + lot.onHand, 0),
      6,
    );
  }
  for (const line of trace) {
    const kind = line.replace(/: (?!done).*/, ': refused');
    outcomes.set(kind, (outcomes.get(kind) ?? 0) + 1);
  }
  await shop.core.close();
}

test(
  `in ${commands} interleaved commands of two clients no lot is ever below nothing, and on hand is the sum of its moves`,
  async () => {
    const outcomes = new Map<string, number>();
    for (let from = 0; from < commands; from += perShop) {
      await runShop(from + 1, Math.min(perShop, commands - from), outcomes);
    }
    // Commands that were all refused, or none, would show nothing.
    for (const name of ['issue', 'discard', 'book back']) {
      expect(outcomes.get(`${name}: done`) ?? 0, name).toBeGreaterThan(0);
      expect(outcomes.get(`${name}: refused`) ?? 0, name).toBeGreaterThan(0);
    }
    for (const name of ['receive', 'count', 'open']) {
      expect(outcomes.get(`${name}: done`) ?? 0, name).toBeGreaterThan(0);
    }
    console.log([...outcomes].map(([kind, times]) => `${kind} ${times}`).join(', '));
  },
  24 * 3_600_000,
);
