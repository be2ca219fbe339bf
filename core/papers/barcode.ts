import bwipjs from 'bwip-js/node';
import type { Doc } from './sheet.ts';

/** Widths of the bars and spaces of a Code 128 symbol, in modules, bar first. Code set chosen for shortness. */
export function code128Widths(text: string): number[] {
  const [symbol] = bwipjs.raw('code128', text, '') as { sbs: number[] }[];
  if (symbol === undefined) throw new Error('no Code 128 symbol');
  return [...symbol.sbs];
}

export function code128ModuleCount(text: string): number {
  return code128Widths(text).reduce((sum, width) => sum + width, 0);
}

export interface Code128Box {
  x: number;
  y: number;
  height: number;
  /** Width of the narrowest bar, points. */
  module: number;
}

/** Draws the bars as filled rectangles, exactly on the module grid. Quiet zones (10 modules) are the caller's. */
export function drawCode128(doc: Doc, text: string, box: Code128Box): void {
  let x = box.x;
  for (const [index, width] of code128Widths(text).entries()) {
    const points = width * box.module;
    if (index % 2 === 0) doc.rect(x, box.y, points, box.height);
    x += points;
  }
  doc.fill('#000000');
}

export interface QrMatrix {
  size: number;
  dark: boolean[];
}

/** Modules of a QR symbol, error correction M. */
export function qrMatrix(text: string): QrMatrix {
  const [symbol] = bwipjs.raw('qrcode', text, 'eclevel=M') as { pixs: number[]; pixx: number }[];
  if (symbol === undefined) throw new Error('no QR symbol');
  return { size: symbol.pixx, dark: [...symbol.pixs].map((pixel) => pixel === 1) };
}

/** Draws the QR symbol with its upper left module at x, y. The 4-module quiet zone is the caller's. */
export function drawQr(
  doc: Doc,
  text: string,
  box: { x: number; y: number; module: number },
): void {
  const { size, dark } = qrMatrix(text);
  for (const [index, isDark] of dark.entries()) {
    if (!isDark) continue;
    const column = index % size;
    const row = Math.floor(index / size);
    doc.rect(box.x + column * box.module, box.y + row * box.module, box.module, box.module);
  }
  doc.fill('#000000');
}
