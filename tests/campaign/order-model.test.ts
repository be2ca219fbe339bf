import { expect, onTestFinished, test } from 'vitest';
import { seededRandom } from '../support/random.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { chooseAct } from './order-model/acts.ts';
import { broken, historyEndsAt, replayDifferences, snapshot } from './order-model/rules.ts';
import { openWorld, takeInOne, type World } from './order-model/world.ts';

/** `npm run campaign` runs ten thousand. */
const sequences = Number(process.env.TILLERMARK_SEQUENCES ?? 60);
const perShop = 200;
const longest = 60;

/** Refusals are answers; anything else that is thrown is a fault of the program. */
function isRefusal(error: unknown): boolean {
  const code = (error as { code?: unknown }).code;
  return ['CONFLICT', 'NOT_ALLOWED', 'STALE', 'BAD_INPUT', 'NOT_FOUND'].includes(String(code));
}

async function runSequence(world: World, seed: number): Promise<string> {
  const random = seededRandom(seed);
  const subject = await takeInOne(world, random);
  const trace: string[] = [];
  const length = 20 + Math.floor(random() * (longest - 20));
  let before = await snapshot(world, subject.orderId);
  for (let i = 0; i < length; i += 1) {
    const [name, act] = chooseAct(random);
    let outcome = 'done';
    try {
      await act(world, subject);
    } catch (error) {
      if (!isRefusal(error)) throw new Error(`seed ${seed}: ${trace.join('; ')}`, { cause: error });
      outcome = String((error as Error).message);
    }
    trace.push(`${name} at ${before.order.stage}: ${outcome}`);
    const after = await snapshot(world, subject.orderId);
    expect(await broken(world, before, after), `seed ${seed}\n${trace.join('\n')}`).toEqual([]);
    before = after;
  }
  const told = await historyEndsAt(world, subject.orderId);
  expect(told, `seed ${seed}\n${trace.join('\n')}`).toBe(before.order.stage);
  return before.order.stage;
}

test(
  `in ${sequences} random sequences no order stands where its gates did not let it, and history replays`,
  async () => {
    const ends = new Map<string, number>();
    for (let from = 0; from < sequences; from += perShop) {
      const world = await openWorld(tempFolder());
      onTestFinished(() => world.shop.core.close());
      for (let seed = from; seed < Math.min(from + perShop, sequences); seed += 1) {
        const end = await runSequence(world, seed + 1);
        ends.set(end, (ends.get(end) ?? 0) + 1);
      }
      expect(await replayDifferences(world)).toEqual([]);
    }
    // Sequences that never leave the office would show nothing.
    expect([...ends.keys()].length).toBeGreaterThan(4);
    console.log(`ended in: ${[...ends].map(([stage, count]) => `${stage} ${count}`).join(', ')}`);
  },
  24 * 3_600_000,
);
