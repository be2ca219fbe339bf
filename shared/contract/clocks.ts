import { id, instant, line } from '../fields.ts';
import { clockKind } from '../finish.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

/** A time that runs by itself in the finish room, from stored records only. */
export const clock = z.object({
  /** Stable while it runs: kind and what it belongs to. */
  id: line(120),
  kind: clockKind,
  orderId: id.nullable(),
  batchId: id.nullable(),
  /** Order number or name of the batch. */
  label: line(120),
  from: instant,
  /** It ends then. */
  until: instant,
  /** `past`: it ended; kept for a day so that nobody overlooks it. */
  state: z.enum(['running', 'past']),
  /** What its end means: `Safe to wrap`, `Pot life ends`. */
  words: line(200),
});
export type Clock = z.infer<typeof clock>;

export const clocks = {
  /** Soonest end first. `trouble`: the computer's clock stands before the last record. */
  list: query()
    .input(nothing)
    .output(
      z.object({ now: instant, clocks: z.array(clock).max(1000), trouble: line(500).nullable() }),
    ),
  /**
   * The clock of the computer is right, though records lie after it: it once ran ahead. Times count
   * again from here on. CONFLICT where nothing is wrong with the clock.
   */
  confirm: command(ownerOnly)
    .input(commandInput({}))
    .output(z.object({ confirmedAt: instant })),
};
