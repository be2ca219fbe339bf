import { changed, id, instant, line, reason, requiredLine, rowVersion, text } from '../fields.ts';
import { paperCopy, paperFormat, paperKind } from '../papers.ts';
import { messageStep } from '../wordings.ts';
import { z } from '../zod.ts';
import { command, commandInput, officeRoles, query } from './base.ts';

export const messageChannels = ['email', 'phone', 'letter', 'other'] as const;
export const messageChannelLabels: Record<(typeof messageChannels)[number], string> = {
  email: 'E-mail',
  phone: 'Phone',
  letter: 'Letter',
  other: 'Other',
};

export const messageMax = 20_000;
const subject = line(300);
const body = text(messageMax);

const messagePaper = z.object({ kind: paperKind, fileName: line(200), sha256: z.string().max(64) });

export const message = z.object({
  id,
  rowVersion,
  step: messageStep,
  channel: z.enum(messageChannels),
  toWhom: line(200),
  subject,
  body,
  papers: z.array(messagePaper).max(10),
  handed: z.enum(['copied', 'mail-program', 'file', 'noted']),
  sentAt: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Message = z.infer<typeof message>;

/** A paper to go along. */
export const attachedPaper = z.strictObject({
  kind: paperKind,
  format: paperFormat,
  copy: paperCopy,
  aboutId: id.nullable(),
});
export type AttachedPaper = z.infer<typeof attachedPaper>;

const written = {
  orderId: id,
  step: messageStep,
  toWhom: requiredLine(200),
  subject,
  body: body.min(1, 'Write the message.'),
};

export const messages = {
  /** The message the shop would write at this step, to be read and changed. */
  draft: query()
    .input(z.strictObject({ orderId: id, step: messageStep }))
    .output(
      z.object({
        toWhom: line(200),
        subject: line(2000),
        body: text(60_000),
        /** Papers that usually go along. */
        papers: z.array(paperKind).max(10),
      }),
    ),
  /** Keeps what was sent, when and to whom; the program itself sends nothing. */
  record: command(officeRoles)
    .input(
      commandInput({
        ...written,
        channel: z.enum(messageChannels),
        handed: z.enum(['copied', 'mail-program', 'noted']),
        sentAt: instant,
      }),
    )
    .output(changed),
  /**
   * The message as a file a mail program opens (RFC 5322), with the papers attached. Message and
   * papers are kept as handed out.
   */
  saveFile: command(officeRoles)
    .input(commandInput({ ...written, papers: z.array(attachedPaper).max(10) }))
    .output(z.file()),
  /** It stays readable, with the reason. */
  strikeOut: command(officeRoles).input(commandInput({ id, rowVersion, reason })).output(changed),
};
