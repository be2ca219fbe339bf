import { entryItem, entryOutcome } from '../entries.ts';
import { changed, day, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import { override, refused } from '../gates.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

export const entry = z.object({
  id,
  rowVersion,
  item: entryItem,
  outcome: entryOutcome,
  doneOn: day,
  personName: line(120),
  note: text(1000),
  overrideReason: line(400).nullable(),
  recordedAt: instant,
  struckReason: line(400).nullable(),
});
export type Entry = z.infer<typeof entry>;

export const entries = {
  /** Writes a dated entry; an entry that is a step of work passes that step's gate first. */
  record: command()
    .input(
      commandInput({
        orderId: id,
        item: entryItem,
        outcome: entryOutcome,
        doneOn: day,
        note: text(1000),
        override: override.optional(),
      }),
    )
    .output(
      z.discriminatedUnion('outcome', [
        z.object({ outcome: z.literal('recorded'), ...changed.shape }),
        refused,
      ]),
    ),
  /** The entry stays readable, with the reason; no gate counts it any more. */
  strikeOut: command().input(commandInput({ id, rowVersion, reason })).output(changed),
};
