import { ShopError } from '../../shared/errors.ts';

/** What of a font file the papers need to know; pdfkit exposes it without a type. */
export interface GlyphFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}]/u;

/** Characters of the text that the papers' font cannot write, each once. */
export function unprintable(text: string, font: GlyphFont): string[] {
  const odd = [...text].filter((char) => {
    if (char === '\n' || char === '\t') return false;
    return rightToLeft.test(char) || !font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0);
  });
  return [...new Set(odd)];
}

function strings(value: unknown, at: string): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) =>
    strings(child, at === '' ? key : `${at} ${key}`),
  );
}

/**
 * Refuses before anything is drawn, naming the characters and where they stand.
 * @throws ShopError UNPRINTABLE
 */
export function refuseUnprintable(data: object, font: GlyphFont): void {
  for (const [field, text] of strings(data, '')) {
    const odd = unprintable(text, font);
    if (odd.length > 0) {
      const shown = odd.slice(0, 8).map((char) => `"${char}"`);
      throw new ShopError(
        'UNPRINTABLE',
        `The paper's font cannot write ${shown.join(' ')} (${field.replaceAll(/ \d+/g, '')}: "${text.slice(0, 60)}"). Write it in other letters.`,
        { [field]: text.slice(0, 200) },
      );
    }
  }
}
