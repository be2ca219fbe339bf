import type { FrozenStory } from './fill-shop.ts';

type Told = Record<string, unknown>;

/** Version 1 knew one facing for the whole limb; since version 2 back and belly have one each. */
function bowSince2(bow: Told): Told {
  const { facing, ...rest } = bow;
  if (facing === undefined) return bow;
  return { ...rest, faces: { back: { facing }, belly: { facing } } };
}

/** What came off is worded from its figures each time it is read; inches had no mark at first. */
function benchInMarks(bench: Told): Told {
  const removals = bench.removals as Told[];
  return {
    ...bench,
    removals: removals.map((removal) => ({
      ...removal,
      words: String(removal.words).replaceAll(
        /([\d/ ]*\d) in per side, ([\d/ ]*\d) in in total/g,
        '$1" per side, $2" in total',
      ),
    })),
  };
}

/**
 * A story as an older version told it, in the shape of today. A fact that moved must still be
 * told, so every record of the old story has its place in the new one. What the next stage still
 * needs is left out: that is the program's judgement, whose rules may grow, and no record.
 */
export function retell(story: FrozenStory): FrozenStory {
  const orders = story.orders as unknown as Told[];
  return {
    ...story,
    orders: orders.map((order) => ({
      ...order,
      bow: order.bow === null ? null : bowSince2(order.bow as Told),
      ...(order.bench === undefined ? {} : { bench: benchInMarks(order.bench as Told) }),
      next: order.next === null ? null : { stage: (order.next as Told).stage },
    })) as unknown as FrozenStory['orders'],
  };
}
