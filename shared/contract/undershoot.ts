import { changed, drawIn, id, instant, line, reason, rowVersion, text } from '../fields.ts';
import { undershootOffer } from '../undershoot.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles } from './base.ts';

/** The weighing after sanding, held against the target at the same AMO draw. */
const shortfall = z.object({ measuredLbf: z.number(), targetLbf: z.number(), drawIn });
export type Shortfall = z.infer<typeof shortfall>;

export const undershootRecord = z.object({
  id,
  rowVersion,
  ...shortfall.shape,
  offer: undershootOffer,
  priceChangeCents: z.int(),
  words: text(2000),
  proposedAt: instant,
  proposedBy: line(120),
  struckReason: line(400).nullable(),
});
export type UndershootRecord = z.infer<typeof undershootRecord>;

export const orderUndershoot = z.object({
  /** Where the bow stands now; null while it is not under its target. */
  now: shortfall.nullable(),
  /** The newest offer that stands was made for this very shortfall. */
  isOffered: z.boolean(),
  /** Newest first, struck-out ones too. */
  offers: z.array(undershootRecord).max(200),
});
export type OrderUndershoot = z.infer<typeof orderUndershoot>;

export const undershoot = {
  /** Says what the shop offers; freezes the weights it is about. The consent is built from it. */
  propose: command(officeRoles)
    .input(
      commandInput({
        orderId: id,
        offer: undershootOffer,
        /** Negative: the price falls. */
        priceChangeCents: z.int().min(-100_000_000).max(0, 'The price does not rise for this.'),
        words: text(2000),
      }),
    )
    .output(changed),
  strikeOut: command(officeRoles).input(commandInput({ id, rowVersion, reason })).output(changed),
};
