import { strungState } from '../arrival.ts';
import { changed, day, id, instant, line, requiredLine, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput } from './base.ts';

/** What is written down at the unpacking table, in the order of the work. */
export const arrivalFields = z.strictObject({
  openedOn: day,
  cameBy: text(1000),
  packaging: text(1000),
  packagingKept: z.boolean(),
  packagingDamaged: z.boolean(),
  condition: text(2000),
  nothingCameAlong: z.boolean(),
  /** Out of the box since then, to reach the temperature of the shop before the first stringing. */
  restingSince: instant.nullable(),
  /** Cracks, delamination, glass, run-out, overlays, grooves and twist were all looked for. */
  lookedOver: z.boolean(),
  strung: strungState,
  notStrungBecause: text(1000),
  alignment: text(1000),
  braceIn: z.number().min(3).max(12).nullable(),
  /** Upper minus lower string-to-limb distance at the fades, inches. */
  tillerIn: z.number().min(-2).max(2).nullable(),
  stringTrack: text(1000),
  note: text(4000),
});
export type ArrivalFields = z.infer<typeof arrivalFields>;

export const arrivalRecord = z.object({
  id,
  rowVersion,
  ...arrivalFields.shape,
  /** Who recorded it last. */
  personName: line(120),
  completedAt: instant.nullable(),
  completedBy: line(120).nullable(),
});
export type ArrivalRecord = z.infer<typeof arrivalRecord>;

const what = text(1000).regex(/\S/, 'This may not be empty.');

/** One thing that came along with the bow and goes back with it. */
export const belonging = z.object({
  id,
  rowVersion,
  what: text(1000),
  backAt: instant.nullable(),
  backBy: line(120).nullable(),
  backNote: text(1000),
});
export type Belonging = z.infer<typeof belonging>;

export const arrival = {
  /**
   * Writes the whole record of the unpacking table: new where `rowVersion` is null. A change
   * other than of the note reopens a completed check.
   */
  record: command()
    .input(commandInput({ orderId: id, rowVersion: rowVersion.nullable(), ...arrivalFields.shape }))
    .output(changed),
  addBelongings: command()
    .input(commandInput({ orderId: id, what: z.array(requiredLine(200)).min(1).max(40) }))
    .output(z.object({ added: z.array(changed).max(40) })),
  correctBelonging: command().input(commandInput({ id, rowVersion, what })).output(changed),
  /** It is back in the box. */
  tickBack: command()
    .input(commandInput({ id, rowVersion, note: text(1000) }))
    .output(changed),
  untick: command().input(commandInput({ id, rowVersion })).output(changed),
  complete: command()
    .input(commandInput({ orderId: id, rowVersion }))
    .output(
      z.discriminatedUnion('outcome', [
        z.object({ outcome: z.literal('completed'), ...changed.shape }),
        z.object({ outcome: z.literal('incomplete'), missing: z.array(line(200)).max(20) }),
      ]),
    ),
};
