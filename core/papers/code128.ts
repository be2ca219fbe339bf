import bwipjs from 'bwip-js/node';
import type { Doc } from './pdfkit-gaps.ts';

/** Light margin on each side, in modules (ISO/IEC 15417: 10X). */
export const code128QuietModules = 10;

function barsOf(text: string, options: string): number[] {
  const [symbol] = bwipjs.raw('code128', text, options) as unknown as { sbs: number[] }[];
  if (symbol === undefined) throw new Error('no Code 128 symbol');
  return [...symbol.sbs];
}

/** Widths of bars and spaces in modules, bar first. The shortest mix of code sets is chosen. */
export function code128Bars(text: string): number[] {
  return barsOf(text, '');
}

/** The same from symbol values, start symbol first; check and stop symbols are added. */
export function code128BarsOfSymbols(values: readonly number[]): number[] {
  const raw = values.map((value) => `^${String(value).padStart(3, '0')}`).join('');
  return barsOf(raw, 'raw');
}

export function code128Modules(text: string): number {
  return code128Bars(text).reduce((sum, width) => sum + width, 0);
}

export interface Code128Box {
  /** Left edge of the first bar, points; the quiet zone lies left of it. */
  x: number;
  y: number;
  height: number;
  /** Width of one module, points. */
  module: number;
}

/** Draws the bars as filled rectangles, exactly on the module grid. */
export function drawCode128(doc: Doc, text: string, box: Code128Box): void {
  let at = 0;
  for (const [index, width] of code128Bars(text).entries()) {
    if (index % 2 === 0) doc.rect(box.x + at * box.module, box.y, width * box.module, box.height);
    at += width;
  }
  doc.fill('#000000');
}
