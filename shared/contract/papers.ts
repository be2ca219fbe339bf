import { commandId, id, instant, line } from '../fields.ts';
import { paperCopy, paperFormat, paperKind } from '../papers.ts';
import { z } from '../zod.ts';
import { command, keep, query } from './base.ts';

export const paper = z.object({
  id,
  kind: paperKind,
  format: paperFormat,
  copy: paperCopy,
  action: z.enum(['printed', 'saved']),
  fileName: line(200),
  pages: z.int(),
  madeAt: instant,
  personName: line(120),
  /** The order has changed since this was made. */
  outdated: z.boolean(),
});
export type Paper = z.infer<typeof paper>;

/** A paper that an order needs as it stands, and why, in one sentence. */
export const paperOffer = z.object({ kind: paperKind, why: line(300) });
export type PaperOffer = z.infer<typeof paperOffer>;

/**
 * A paper among all that went out. Where it is about no order, the line says what it is about: a
 * shelf, a lot, a batch.
 */
export const listedPaper = z.object({
  ...paper.shape,
  aboutId: id.nullable(),
  orderId: id.nullable(),
  orderNumber: line(40).nullable(),
  orderLine: line(400),
});
export type ListedPaper = z.infer<typeof listedPaper>;

export const papersPerPage = 50;

/** `unmade`: it cannot be made as things stand, and the sentence says why. */
export const paperComparison = z.discriminatedUnion('outcome', [
  z.object({ outcome: z.literal('same') }),
  z.object({ outcome: z.literal('differs'), sentence: line(300) }),
  z.object({ outcome: z.literal('unmade'), sentence: line(1000) }),
]);
export type PaperComparison = z.infer<typeof paperComparison>;

const choice = {
  kind: paperKind,
  format: paperFormat,
  copy: paperCopy,
  orderId: id.nullable(),
  /** The bow, lot or batch it is made for; none where it is made for the order. */
  aboutId: id.nullable(),
};

export const papers = {
  /** Newest first, by page. */
  list: query()
    .input(
      z.strictObject({
        kind: paperKind.nullable(),
        /** Part of an order number; empty for all. */
        orderNumber: line(40),
        page: z.int().min(0).max(100_000),
      }),
    )
    .output(z.object({ papers: z.array(listedPaper).max(papersPerPage), more: z.boolean() })),
  /** Whether a paper that went out would come out the same today, but for its date. */
  compare: query().input(z.strictObject({ id })).output(paperComparison),
  preview: keep().input(z.strictObject(choice)).output(z.file()),
  /** Makes the paper to hand over and keeps a record of it. */
  issue: command()
    .input(z.strictObject({ commandId, ...choice, action: z.enum(['printed', 'saved']) }))
    .output(z.file()),
};
