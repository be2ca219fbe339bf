import { changed, id, instant, line, requiredLine } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, keep, nothing, officeRoles, query } from './base.ts';
import { bowFields } from './bows.ts';
import { customerFields } from './customers.ts';
import { orderFields } from './orders.ts';

/** A half-typed request, kept as typed: any text may be in any field. */
export const draftBody = z.record(
  z.string().max(60),
  z.union([z.string().max(4000), z.boolean(), z.array(z.string().max(60)).max(20)]),
);
export type DraftBody = z.infer<typeof draftBody>;

export const draft = z.object({ id, title: line(200), savedAt: instant, body: draftBody });
export type Draft = z.infer<typeof draft>;

/** An existing record by id, or the fields of a new one. */
const customerChoice = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('known'), id }),
  z.strictObject({ is: z.literal('new'), fields: customerFields }),
  z.strictObject({ is: z.literal('shop') }),
]);
const bowChoice = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('known'), id }),
  z.strictObject({ is: z.literal('new'), fields: bowFields }),
  z.strictObject({ is: z.literal('later') }),
]);

export const intake = {
  drafts: query(officeRoles).input(nothing).output(z.array(draft).max(50)),
  saveDraft: keep(officeRoles)
    .input(z.strictObject({ id, body: draftBody }))
    .output(z.object({ savedAt: instant })),
  discardDraft: keep(officeRoles).input(z.strictObject({ id })).output(z.object({ id })),
  /** Turns a request into an order, with its customer and bow, and drops the draft; all or nothing. */
  submit: command(officeRoles)
    .input(
      commandInput({
        draftId: id.nullable(),
        customer: customerChoice,
        bow: bowChoice,
        order: orderFields,
        /** A box already on the table starts as "in the mail" and passes the gate of "arrived". */
        startsAt: z.enum(['requested', 'in-mail']),
        cameBy: requiredLine(60),
      }),
    )
    .output(z.object({ ...changed.shape, number: line(20) })),
};
