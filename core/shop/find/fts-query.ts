/**
 * A search as typed, made safe for FTS5: every word quoted and matched by its beginning,
 * all words needed. Null when nothing is left to search for.
 */
export function ftsQuery(text: string): string | null {
  const words = text
    .normalize('NFC')
    .split(/[^\p{L}\p{M}\p{N}.@]+/u)
    .filter((word) => /[\p{L}\p{N}]/u.test(word));
  if (words.length === 0) return null;
  return words
    .slice(0, 12)
    .map((word) => `"${word}"*`)
    .join(' ');
}
