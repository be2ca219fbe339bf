/** Anything a text may not hold: control characters other than line ends, tabs and page breaks. */
const control = /[^\P{Cc}\t\n\r\f]/u;
const headerLine = /^[!-9;-~]+:/;

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Header field names of a message (RFC 5322, section 2.2): the lines before the first empty one. */
function headerNames(text: string): string[] {
  const head = text.slice(0, 65_536).split(/\r?\n\r?\n/, 1)[0] ?? '';
  const lines = head.split(/\r?\n/).filter((line) => !/^[ \t]/.test(line));
  // Mailbox files begin with a line "From somebody at some time".
  const fields = lines[0]?.startsWith('From ') ? lines.slice(1) : lines;
  if (!fields.every((line) => headerLine.test(line))) return [];
  return fields.map((line) => line.slice(0, line.indexOf(':')).toLowerCase());
}

/** A saved message, plain text, or null where it is neither. */
export function mailOrText(bytes: Uint8Array): 'message/rfc822' | 'text/plain' | null {
  const text = decoded(bytes);
  if (text === null || text.trim() === '' || control.test(text)) return null;
  const names = headerNames(text);
  // RFC 5322, section 3.6: a message has From and Date; a saved one may have lost its date.
  const isMail = names.includes('from') && (names.includes('date') || names.includes('subject'));
  return isMail ? 'message/rfc822' : 'text/plain';
}
