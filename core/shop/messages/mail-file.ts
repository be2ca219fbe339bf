import nodemailer from 'nodemailer';
import type { PaperPdf } from '../../papers/data.ts';

/** A message to write into a file. */
export interface MailDraft {
  from: { name: string; address: string } | null;
  to: string;
  subject: string;
  body: string;
  papers: readonly PaperPdf[];
  /** Instant, ISO-8601 UTC. */
  at: string;
  id: string;
}

/**
 * The message as RFC 5322 text with its attachments (RFC 2045). `X-Unsent: 1` is common practice:
 * mail programs that know it open the file as a draft, to be looked at and sent.
 */
export async function mailFile(draft: MailDraft): Promise<Uint8Array> {
  const writer = nodemailer.createTransport({
    streamTransport: true,
    buffer: true,
    newline: 'windows',
  });
  const { message } = await writer.sendMail({
    ...(draft.from === null ? {} : { from: draft.from }),
    to: { name: '', address: draft.to },
    subject: draft.subject,
    text: draft.body,
    date: new Date(draft.at),
    messageId: `<${draft.id}@tillermark.invalid>`,
    headers: { 'X-Unsent': '1' },
    disableFileAccess: true,
    disableUrlAccess: true,
    attachments: draft.papers.map(({ fileName, bytes }) => ({
      filename: fileName,
      content: Buffer.from(bytes),
      contentType: 'application/pdf',
    })),
  });
  if (!Buffer.isBuffer(message)) throw new Error('the message was not written into memory');
  return new Uint8Array(message);
}
