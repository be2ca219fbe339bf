import { cameAs } from '../bows.ts';
import { changed, day, id, instant, line, requiredLine, text } from '../fields.ts';
import { missingItem } from '../gates.ts';
import { stage } from '../stages.ts';
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

/** Where the bow is when the request is written down. */
export const intakeStarts = ['requested', 'in-mail', 'arrived'] as const;

/** What is seen at once of a bow that is on the table already; the rest follows at the table. */
export const intakeArrival = z.strictObject({
  openedOn: day,
  packaging: text(1000),
  condition: text(2000),
  belongings: z.array(requiredLine(200)).max(40),
  nothingCameAlong: z.boolean(),
});
export type IntakeArrival = z.infer<typeof intakeArrival>;

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
        startsAt: z.enum(intakeStarts),
        cameBy: requiredLine(60),
        /** Needed where the bow is here; the order then passes the gate of "arrived" if it can. */
        arrival: intakeArrival.optional(),
        handover: z.enum(['shipped', 'collected']).optional(),
        stripFirst: z.boolean().optional(),
        cameAs: cameAs.optional(),
      }),
    )
    .output(
      z.object({
        ...changed.shape,
        number: line(20),
        stage,
        /** What kept a bow that is here from counting as arrived. */
        missing: z.array(missingItem).max(100),
      }),
    ),
};
