import { entryOutcome } from '../entries.ts';
import { changed, day, id, line, requiredLine, text } from '../fields.ts';
import { finalCheckItems } from '../final-checklist.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';
import { entry } from './entries.ts';

export const finalCheckItem = z.enum(finalCheckItems);

/** One row of the checklist with the last time it was recorded. */
export const finalCheckRow = z.object({
  item: finalCheckItem,
  label: line(120),
  hint: line(400),
  safety: z.boolean(),
  entry: entry.nullable(),
  /** The entry is from before the last bite and counts no more. */
  outdated: z.boolean(),
});
export type FinalCheckRow = z.infer<typeof finalCheckRow>;

export const finalCheck = {
  /**
   * Records what was looked at, all of it or nothing. Refused before the order stands in Final
   * check, and while a stop finding is open: a bow that may not be drawn is not flexed.
   */
  record: command()
    .input(
      commandInput({
        orderId: id,
        doneOn: day,
        checks: z
          .array(
            z.strictObject({
              item: finalCheckItem,
              outcome: entryOutcome,
              /** Required where it is not in order. */
              note: text(1000),
              /** Written with it where a check is not in order and the bow needs one. */
              finding: z
                .strictObject({ grade: z.enum(['watch', 'stop']), place: requiredLine(200) })
                .nullable(),
            }),
          )
          .min(1, 'Tick at least one check.')
          .max(finalCheckItems.length),
      }),
    )
    .output(changed),
};
