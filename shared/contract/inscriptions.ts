import { limb } from '../bows.ts';
import { between, changed, id, instant, line, requiredLine, rowVersion, text } from '../fields.ts';
import {
  letteringManner,
  letteringSurface,
  markingRoundLbf,
  suggestionKinds,
} from '../inscription.ts';
import { z } from '../zod.ts';
import { command, commandInput, nothing, ownerOnly, query } from './base.ts';

/** How the lines are put on the bow; the lines themselves stand on the order. */
export const inscriptionLayout = z.strictObject({
  /** Which limb, face and distance from the grip, in words. The customer approves it. */
  position: requiredLine(200),
  /** Where the maker's own mark stays, or what becomes of it. The customer approves it. */
  makerMark: line(200),
  surface: letteringSurface,
  manner: letteringManner,
  ink: line(120),
  /** Of a capital letter, inches. */
  letterHeightIn: between(0.08, 0.75, 'Letters are between 0.08 and 3/4 inch high.'),
  /** What stood on the bow before, kept for the record. */
  oldMarking: text(1000),
  note: text(1000),
});
export type InscriptionLayout = z.infer<typeof inscriptionLayout>;

export const inscriptionLayoutRecord = z.object({
  id,
  rowVersion,
  ...inscriptionLayout.shape,
  recordedAt: instant,
  personName: line(120),
});
export type InscriptionLayoutRecord = z.infer<typeof inscriptionLayoutRecord>;

export const lineSuggestion = z.object({
  kind: z.enum(suggestionKinds),
  /** The line as it would be written. */
  text: line(200),
  /** Where it comes from, with the exact value where it was rounded. */
  from: line(400),
});
export type LineSuggestion = z.infer<typeof lineSuggestion>;

const limbOutline = z.object({
  limb,
  /** Where and how wide, inches, from the fade to the tip. */
  stations: z.array(z.object({ fromFadeIn: z.number(), widthIn: z.number() })).max(200),
});
export type LimbOutline = z.infer<typeof limbOutline>;

export const inscriptions = {
  /**
   * Lines that the records of an order bear out, and what cannot be written yet, with the reason.
   * `masterStringIn`: a master string measured in the shop, never a string the customer sent.
   */
  suggest: query()
    .input(
      z.strictObject({
        orderId: id,
        masterStringIn: between(
          30,
          84,
          'A master string is between 30 and 84 inches long.',
        ).optional(),
      }),
    )
    .output(
      z.object({
        lines: z.array(lineSuggestion).max(60),
        missing: z.array(z.object({ kind: z.enum(suggestionKinds), why: line(300) })).max(20),
        /** Length of the master string that goes with the AMO length marked, inches. */
        masterStringIn: z.number().nullable(),
        /** What the records say stood on the bow as it came. */
        oldMarking: text(1000),
        /** Photographs on the order: the old marking should be on one of them. */
        photographs: z.int(),
        /** Limbs as last measured; empty where nobody measured them. */
        outlines: z.array(limbOutline).max(2),
      }),
    ),
  /** Position and maker's mark are part of what the customer approves; a change asks again. */
  setLayout: command()
    .input(
      commandInput({
        orderId: id,
        /** Of the layout that is replaced; null for the first. */
        rowVersion: rowVersion.nullable(),
        ...inscriptionLayout.shape,
      }),
    )
    .output(changed),
  policy: query().input(nothing).output(z.object({ markingRoundLbf, rowVersion })),
  setPolicy: command(ownerOnly)
    .input(commandInput({ rowVersion, markingRoundLbf }))
    .output(changed),
};
