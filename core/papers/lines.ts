import type { Doc } from './pdfkit-gaps.ts';
import { ink } from './sheet.ts';

/** How a piece of text is set; size in points. */
export interface TextStyle {
  font: string;
  size: number;
  color?: string;
}

/** Distance between base lines as a multiple of the size; Source Sans 3 itself asks for 1.257. */
const leading = 1.27;

export function lineHeight(style: TextStyle): number {
  return style.size * leading;
}

export function useStyle(doc: Doc, style: TextStyle): void {
  doc
    .font(style.font)
    .fontSize(style.size)
    .fillColor(style.color ?? ink);
}

/** A word, cut where it must be if it is wider than the column. */
function chopped(doc: Doc, word: string, width: number): string[] {
  // Most words fit, and a word is measured once where each of its beginnings would be.
  if (doc.widthOfString(word) <= width) return [word];
  const pieces: string[] = [];
  let piece = '';
  for (const char of word) {
    if (piece !== '' && doc.widthOfString(piece + char) > width) {
      pieces.push(piece);
      piece = char;
    } else piece += char;
  }
  return [...pieces, piece];
}

/**
 * The lines a text takes in a column this many points wide. Nothing is dropped.
 * Wrapped here, not by pdfkit, so that a block's height is known before its page is chosen.
 */
export function wrap(doc: Doc, text: string, width: number, style: TextStyle): string[] {
  if (text.trim() === '') return [];
  useStyle(doc, style);
  const lines: string[] = [];
  for (const paragraph of text.trim().split('\n')) {
    let line = '';
    for (const word of paragraph.split(' ').filter((part) => part !== '')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (doc.widthOfString(longer) <= width) line = longer;
      else {
        if (line !== '') lines.push(line);
        const pieces = chopped(doc, word, width);
        lines.push(...pieces.slice(0, -1));
        line = pieces.at(-1) ?? '';
      }
    }
    lines.push(line);
  }
  return lines;
}

/** One line that fits, shortened with an ellipsis. Only for what is printed in full elsewhere. */
export function shortened(doc: Doc, text: string, width: number, style: TextStyle): string {
  useStyle(doc, style);
  const flat = text.replaceAll('\n', ' ');
  if (doc.widthOfString(flat) <= width) return flat;
  const chars = [...flat];
  const start = (length: number) => chars.slice(0, length).join('');
  // The longest start that fits: halving, as a start is never narrower than a shorter one.
  let [fits, tooLong] = [0, chars.length];
  while (tooLong - fits > 1) {
    const middle = (fits + tooLong) >> 1;
    if (doc.widthOfString(`${start(middle)}…`) <= width) fits = middle;
    else tooLong = middle;
  }
  return `${start(fits).trimEnd()}…`;
}

/** Draws lines from the given top left corner; `align` is within `width`. */
export function drawLines(
  doc: Doc,
  lines: readonly string[],
  box: { x: number; y: number; width?: number; align?: 'left' | 'center' | 'right' },
  style: TextStyle,
): void {
  useStyle(doc, style);
  const share = { left: 0, center: 0.5, right: 1 }[box.align ?? 'left'];
  for (const [index, line] of lines.entries()) {
    const spare = (box.width ?? 0) - (share === 0 ? 0 : doc.widthOfString(line));
    const x = box.x + (share === 0 ? 0 : spare * share);
    doc.text(line, x, box.y + index * lineHeight(style), { lineBreak: false });
  }
}
