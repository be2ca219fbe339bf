import { changed, id, instant, line, requiredLine, rowVersion } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, everyone, nothing, ownerOnly, query } from './base.ts';

const load = z.number().min(0.1).max(250);

export const scaleCheck = z.object({
  checkedAt: instant,
  checkedBy: line(120),
  lowLoadLbf: load,
  lowReadingLbf: z.number(),
  highLoadLbf: load,
  highReadingLbf: z.number(),
  /** Larger of the two errors, reading minus load, pound-force. */
  worstErrorLbf: z.number(),
});

export const scale = z.object({
  id,
  name: requiredLine(120),
  resolutionLbf: z.number(),
  active: z.boolean(),
  rowVersion,
  lastCheck: scaleCheck.nullable(),
  /** Checked today and inside half a pound. */
  usable: z.boolean(),
  /** Why not, in one sentence; empty when usable. */
  reason: line(300),
});
export type Scale = z.infer<typeof scale>;

/** One check of a scale with the error at both loads, reading minus load, pound-force. */
export const pastCheck = scaleCheck.extend({
  id,
  lowErrorLbf: z.number(),
  highErrorLbf: z.number(),
});
export type PastCheck = z.infer<typeof pastCheck>;

export const scales = {
  /** Checks of one scale, newest first, and how its error moved since the first of this year. */
  checks: query()
    .input(z.strictObject({ id }))
    .output(
      z.object({
        checks: z.array(pastCheck).max(500),
        /** Null with fewer than two checks in this year; each is the last error minus the first. */
        drift: z
          .object({ since: instant, checks: z.int(), lowLbf: z.number(), highLbf: z.number() })
          .nullable(),
        words: line(400),
      }),
    ),
  list: query().input(nothing).output(z.array(scale).max(100)),
  add: command(ownerOnly)
    .input(commandInput({ name: requiredLine(120), resolutionLbf: z.number().min(0.001).max(2) }))
    .output(changed),
  edit: command(ownerOnly)
    .input(
      commandInput({
        id,
        rowVersion,
        name: requiredLine(120),
        resolutionLbf: z.number().min(0.001).max(2),
        active: z.boolean(),
      }),
    )
    .output(changed),
  /** Two known loads hung on the scale and what it read. */
  check: command(everyone)
    .input(
      commandInput({
        scaleId: id,
        lowLoadLbf: load,
        lowReadingLbf: z.number().min(0).max(300),
        highLoadLbf: load,
        highReadingLbf: z.number().min(0).max(300),
      }),
    )
    .output(changed),
};
