/** Longest address a mail program is sure to take over; Windows cuts off at 2,083 characters. */
export const mailtoMax = 1900;

/**
 * A mailto address (RFC 6068) with subject and body; line ends as CRLF, everything percent-encoded.
 * Null where it is too long to arrive whole.
 */
export function mailtoOf(toWhom: string, subject: string, body: string): string | null {
  const lines = encodeURIComponent(body.replaceAll(/\r?\n/g, '\r\n'));
  const to = encodeURIComponent(toWhom.trim()).replaceAll('%40', '@');
  const address = `mailto:${to}?subject=${encodeURIComponent(subject)}&body=${lines}`;
  return address.length > mailtoMax ? null : address;
}
