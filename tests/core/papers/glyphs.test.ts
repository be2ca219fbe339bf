import PDFDocument from 'pdfkit';
import { expect, test } from 'vitest';
import { fonts } from '../../../core/papers/fonts.ts';
import { normalised, printable, unprintable } from '../../../core/papers/glyphs.ts';
import { glyphFontOf } from '../../../core/papers/pdfkit-gaps.ts';

function fontOf(file: string) {
  return glyphFontOf(new PDFDocument().font(file));
}

const font = fontOf(fonts.regular);

test.each(Object.entries(fonts))('the %s cut writes what shops write', (_, file) => {
  const cut = fontOf(file);
  const texts = ['45# @ 28"', '7 ¼ ⅛ ⅞', '→ ·', 'Sørensen Łukasz Ångström', 'Δω', 'Иванова', '€'];
  for (const text of texts) expect(unprintable(text, cut)).toEqual([]);
});

test('letters written in two pieces are composed, line ends and tabs made plain', () => {
  expect(normalised('Rene\u0301\r\na\tb\u00a0c')).toBe('René\na b c');
});

test.each([
  ['山', '"山"'],
  ['🏹', '"🏹"'],
  ['שלום', '"ש", "ל", "ו", "ם"'],
  ['a\u0007', 'an invisible character (U+0007)'],
  ['a\u202eb', 'an invisible character (U+202E)'],
  ['a\u200b', 'an invisible character (U+200B)'],
])('%j is refused and named', (text, named) => {
  const data = { order: { notes: ['fine', text] } };
  expect(() => printable(data, font)).toThrow(
    `The papers cannot write ${named} in the order notes: write it in other letters.`,
  );
});

test('a refusal names at most eight characters', () => {
  expect(() => printable({ name: '一二三四五六七八九十' }, font)).toThrow(
    /"八" and more in the name/,
  );
});

test('everything that is no text passes unchanged', () => {
  const data = { a: null, b: 4.5, c: [true, 'x'], d: { e: 'y\r\nz' } };
  expect(printable(data, font)).toEqual({ ...data, d: { e: 'y\nz' } });
});
