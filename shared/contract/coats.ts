import { changed, id, instant, line, rowVersion } from '../fields.ts';
import { bowSection, bowSections, coatPurpose } from '../finish.ts';
import { missingItem } from '../gates.ts';
import { grit } from '../grit.ts';
import { z } from '../zod.ts';
import { coatCount, doneAt, number, sentences, surfaceF, wetMil } from './finish-fields.ts';

export const sessionFields = {
  finishSystemId: id,
  /** The batch, for a two-part finish. */
  batchId: id.nullable(),
  /** The lot used straight from the can, for what has no batch. */
  lotId: id.nullable(),
  /** null: the latest reading that stands. */
  airReadingId: id.nullable(),
  purpose: coatPurpose,
  /** Parts of the bows that were coated; empty: the whole bow. */
  sections: z.array(bowSection).max(bowSections.length),
  /** How many coats this entry stands for. */
  coats: coatCount,
  /** null: as last time, else the middle of the sheet's range. */
  wetMil: wetMil.nullable(),
  bows: z
    .array(
      z.strictObject({
        orderId: id,
        /** The film was scuffed before this coat, and with what; null where it was not. */
        scuffed: z.strictObject({ grit: grit.nullable() }).nullable(),
        /** null: measured with the air, or the room's once the bow has hung two hours. */
        surfaceF: surfaceF.nullable(),
        /** Hanging in the finish room since then; null: since its last coat. */
        hungSince: instant.nullable(),
      }),
    )
    .min(1, 'Choose at least one bow.')
    .max(40),
  at: doneAt,
};

const orderMissing = z.object({
  orderId: id,
  number: line(40),
  missing: z.array(missingItem).max(100),
});
export type OrderMissing = z.infer<typeof orderMissing>;

export const sessionLook = z.object({
  /** Of the batch, lots, air and rack: what stands against the whole session. */
  session: z.array(missingItem).max(40),
  orders: z.array(orderMissing).max(40),
  /** Film that each coat leaves, mil; null where it cannot be gauged. */
  wetMil: number.nullable(),
  dryMil: number.nullable(),
  slots: z.object({ used: z.int(), wanted: z.int(), all: z.int() }),
});
export type SessionLook = z.infer<typeof sessionLook>;

export const sprayed = z.discriminatedUnion('outcome', [
  z.object({
    outcome: z.literal('recorded'),
    ...changed.shape,
    coatIds: z.array(id).max(40),
    /** What the owner let pass, in words. */
    warnings: sentences,
  }),
  z.object({
    outcome: z.literal('refused'),
    session: z.array(missingItem).max(40),
    orders: z.array(orderMissing).max(40),
  }),
]);

export const coat = z.object({
  id,
  rowVersion,
  sessionId: id,
  purpose: coatPurpose,
  sections: z.array(bowSection).max(bowSections.length),
  coats: z.int(),
  wetMil: number.nullable(),
  dryMil: number.nullable(),
  scuffed: z.object({ grit: grit.nullable() }).nullable(),
  at: instant,
  systemName: line(120),
  batchId: id.nullable(),
  batchName: line(120),
  /** Let pass by the owner, and why; null where nothing stood against it. */
  overrideReason: line(400).nullable(),
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Coat = z.infer<typeof coat>;
