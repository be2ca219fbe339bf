import { ShopError } from '../../shared/errors.ts';
import type { GlyphFont } from './pdfkit-gaps.ts';

const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}]/u;
/** Control and format characters, private use and unpaired surrogates draw nothing a person can read. */
const invisible = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/u;
const namedAtMost = 8;

/** Composed letters, plain line ends, spaces for tabs: the same text, as the font has it. */
export function normalised(text: string): string {
  return text
    .normalize('NFC')
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[\t\u00a0\u202f]/g, ' ');
}

/** Characters of a normalised text that the papers' font cannot write, each once. */
export function unprintable(text: string, font: GlyphFont): string[] {
  const odd = [...text].filter(
    (char) =>
      char !== '\n' &&
      (rightToLeft.test(char) ||
        invisible.test(char) ||
        !font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0)),
  );
  return [...new Set(odd)];
}

function named(char: string): string {
  if (!invisible.test(char)) return `"${char}"`;
  const code = (char.codePointAt(0) ?? 0).toString(16).toUpperCase();
  return `an invisible character (U+${code.padStart(4, '0')})`;
}

/** Field names as a person says them: `customer name`, `weighings scale`. */
function inWords(path: readonly string[]): string {
  return path
    .filter((key) => !/^\d+$/.test(key))
    .map((key) => key.replaceAll(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`))
    .join(' ');
}

function checked(value: unknown, path: readonly string[], font: GlyphFont): unknown {
  if (typeof value === 'string') {
    const text = normalised(value);
    const odd = unprintable(text, font);
    if (odd.length === 0) return text;
    const shown = odd.slice(0, namedAtMost).map(named).join(', ');
    const more = odd.length > namedAtMost ? ' and more' : '';
    throw new ShopError(
      'UNPRINTABLE',
      `The papers cannot write ${shown}${more} in the ${inWords(path)}: write it in other letters.`,
      { [path.join('.')]: odd.map(named).join(', ').slice(0, 200) },
    );
  }
  if (Array.isArray(value))
    return value.map((item, i) => checked(item, [...path, String(i)], font));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, child]) => [key, checked(child, [...path, key], font)]),
  );
}

/**
 * A copy of the data with every text normalised for the font.
 * pdfkit has no second font to fall back on and no right-to-left, so anything else is refused
 * here, before a page is begun.
 * @throws ShopError UNPRINTABLE naming the characters and the field.
 */
export function printable<T extends object>(data: T, font: GlyphFont): T {
  return checked(data, [], font) as T;
}
