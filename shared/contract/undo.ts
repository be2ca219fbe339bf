import { id, instant, line } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';

/** One thing somebody did, and whether it can be taken back. */
export const doneItem = z.object({
  commandId: id,
  at: instant,
  personName: line(120),
  /** In the words of the history, or of the command where it wrote none. */
  what: line(1000),
  /** What taking it back does to the records, in words. */
  effect: line(400),
  canUndo: z.boolean(),
  /** Why it cannot be taken back, in one sentence; none where it can or already was. */
  why: line(400).nullable(),
  undoneAt: instant.nullable(),
  /** Lines of the history that it wrote. */
  historyIds: z.array(id).max(2000),
});
export type DoneItem = z.infer<typeof doneItem>;

export const undo = {
  /**
   * Takes back what one command wrote, as long as nothing rests on it: rows it added go, rows it
   * changed are as they were. What was said, printed or told as history stays.
   */
  undo: command()
    .input(commandInput({ of: id }))
    .output(z.object({ of: id, orderId: id.nullable(), what: line(1000) })),
  /**
   * The latest 50 things done on an order, for a customer, to a bow or anywhere; or just one.
   * What was undone says so; the undoing itself is not listed.
   */
  recent: query()
    .input(
      z.union([
        z.strictObject({ orderId: id }),
        z.strictObject({ customerId: id }),
        z.strictObject({ bowId: id }),
        z.strictObject({ of: id }),
        z.strictObject({}),
      ]),
    )
    .output(z.array(doneItem).max(50)),
};
