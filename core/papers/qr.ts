import bwipjs from 'bwip-js/node';
import type { Doc } from './pdfkit-gaps.ts';

/** Light margin on every side, in modules (ISO/IEC 18004). */
export const qrQuietModules = 4;

export interface QrMatrix {
  /** Modules along one side. */
  size: number;
  /** Row by row from the top left. */
  dark: boolean[];
}

/** A paper has the same symbol on every page. */
let latest: { text: string; matrix: QrMatrix } | null = null;

/** Modules of a QR symbol, error correction M (15 %). */
export function qrMatrix(text: string): QrMatrix {
  if (latest?.text !== text) latest = { text, matrix: encoded(text) };
  return latest.matrix;
}

function encoded(text: string): QrMatrix {
  const [symbol] = bwipjs.raw('qrcode', text, 'eclevel=M') as unknown as {
    pixs: number[];
    pixx: number;
  }[];
  if (symbol === undefined) throw new Error('no QR symbol');
  return { size: symbol.pixx, dark: [...symbol.pixs].map((pixel) => pixel === 1) };
}

/** Draws the symbol with its first module at x, y (points); neighbours in a row are one rectangle. */
export function drawQr(
  doc: Doc,
  text: string,
  box: { x: number; y: number; module: number },
): void {
  const { size, dark } = qrMatrix(text);
  const { module } = box;
  for (let row = 0; row < size; row += 1) {
    let column = 0;
    while (column < size) {
      const from = column;
      while (column < size && dark[row * size + column]) column += 1;
      if (column > from)
        doc.rect(box.x + from * module, box.y + row * module, (column - from) * module, module);
      column += 1;
    }
  }
  doc.fill('#000000');
}
