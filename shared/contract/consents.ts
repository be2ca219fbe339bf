import { answer, channel, consentKind, consentState, consentTextMax } from '../consents.ts';
import { changed, id, instant, line, requiredLine, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles, query } from './base.ts';

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
});

export const consent = z.object({
  id,
  kind: consentKind,
  text: text(consentTextMax),
  textSha256: sha256,
  /** What the text refers to, frozen when it was asked. */
  subject: text(consentTextMax),
  state: consentState,
  askedAt: instant,
  askedHow: line(200),
  askedBy: line(120),
  answers: z.array(consentAnswer).max(200),
});
export type Consent = z.infer<typeof consent>;

export const consents = {
  /** The text the shop would ask now, for reading and changing before it is asked. */
  propose: query()
    .input(z.strictObject({ orderId: id, kind: consentKind }))
    .output(z.object({ text: text(consentTextMax), subject: text(consentTextMax) })),
  ask: command(officeRoles)
    .input(
      commandInput({
        orderId: id,
        kind: consentKind,
        text: text(consentTextMax).min(20, 'The text the customer is asked may not be empty.'),
        askedHow: requiredLine(200),
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
      }),
    )
    .output(changed),
};
