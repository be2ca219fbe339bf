import { answer, channel, consentKind, consentState, consentTextMax } from '../consents.ts';
import { changed, day, id, instant, line, requiredLine, text } from '../fields.ts';
import { signature } from '../signatures.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles, query } from './base.ts';
import { consentChange } from './consent-change.ts';

const sha256 = z.string().length(64);

const consentAnswer = z.object({
  id,
  answer,
  answeredAt: instant,
  channel,
  answeredBy: line(120),
  contact: line(200),
  words: text(2000),
  costChangeCents: z.int(),
  recordedBy: line(120),
  recordedAt: instant,
  signature: signature.nullable(),
  /** The message or scan that shows the answer. */
  attachment: z.object({ id, fileName: line(200) }).nullable(),
});

const consentReminder = z.object({
  id,
  sentAt: instant,
  how: line(200),
  note: text(1000),
  personName: line(120),
});

export const consent = z.object({
  id,
  kind: consentKind,
  text: text(consentTextMax),
  textSha256: sha256,
  /** What the text refers to, frozen when it was asked. */
  subject: text(consentTextMax),
  subjectSha256: sha256,
  /** Whether text, subject and answers still have the hashes of the day they were written. */
  verified: z.object({ text: z.boolean(), subject: z.boolean(), answers: z.boolean() }),
  /** Version of the shop's wording it was made from; 0 is the built-in text. */
  wordingVersion: z.int().min(0),
  state: consentState,
  askedAt: instant,
  askedHow: line(200),
  askedBy: line(120),
  answers: z.array(consentAnswer).max(200),
  /** Oldest first. */
  reminders: z.array(consentReminder).max(500),
  /** Day of the shop's ladder to remind on next; null where nothing waits or the ladder is done. */
  remindOn: day.nullable(),
});
export type Consent = z.infer<typeof consent>;

export const consents = {
  /** The text the shop would ask now, for reading and changing before it is asked. */
  propose: query()
    .input(z.strictObject({ orderId: id, kind: consentKind }))
    .output(
      z.object({
        text: text(consentTextMax),
        subject: text(consentTextMax),
        wordingVersion: z.int().min(0),
      }),
    ),
  ask: command(officeRoles)
    .input(
      commandInput({
        orderId: id,
        kind: consentKind,
        text: text(consentTextMax).min(20, 'The text the customer is asked may not be empty.'),
        askedHow: requiredLine(200),
        /** Of the proposal the text came from; left out, the one in use. */
        wordingVersion: z.int().min(0).max(1_000_000).optional(),
      }),
    )
    .output(changed),
  /**
   * Records what the customer said to the exact text, whose hash the screen sends back.
   * A phone answer needs the number called and the words agreed.
   */
  answer: command(officeRoles)
    .input(
      commandInput({
        consentId: id,
        textSha256: sha256,
        answer,
        answeredAt: instant,
        channel,
        answeredBy: requiredLine(120),
        contact: line(200),
        words: text(2000),
        costChangeCents: z.int().min(-100_000_000).max(100_000_000),
        /** Given on this screen by who answers in person. */
        signature: signature.nullable().optional(),
        /** A file of this order that shows the answer: the message, or the signed paper. */
        attachmentId: id.nullable().optional(),
      }),
    )
    .output(changed),
  /** Writes down that the customer was reminded of a text without an answer. */
  remind: command(officeRoles)
    .input(commandInput({ consentId: id, how: requiredLine(200), note: text(1000) }))
    .output(changed),
  /** Approvals that would no longer fit if the order were changed so; for a warning before saving. */
  wouldVoid: query()
    .input(z.strictObject({ orderId: id, change: consentChange }))
    .output(z.array(z.object({ kind: consentKind, state: consentState })).max(10)),
};
