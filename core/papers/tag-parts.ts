import { code128Modules, drawCode128 } from './code128.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { octagon } from './marks.ts';
import { drawQr, qrMatrix, qrQuietModules } from './qr.ts';
import { mm } from './sheet.ts';

/** 0.5 mm: six dots of a 300 dpi label printer, four of a 203 dpi one. */
export const tagModule = 0.5 * mm;
/** QR modules half as wide again as the bars, as GS1 asks of 2D codes beside bars. */
const qrModule = 1.5 * tagModule;
/** Round the label, points. */
export const tagMargin = 14;

const headNumberStyle: TextStyle = { font: fonts.bold, size: 12 };
const signStyle: TextStyle = { font: fonts.bold, size: 18, color: '#FFFFFF' };
const stopStyle: TextStyle = { font: fonts.bold, size: 23 };

/** Number and QR, top right as on every paper of the shop. Answers the width they take. */
export function tagCorner(flow: Flow, number: string): number {
  const { doc } = flow;
  const size = qrMatrix(number).size * qrModule;
  const x = doc.page.width - tagMargin - size;
  const y = flow.y + lineHeight(headNumberStyle) + qrQuietModules * qrModule;
  flow.tagged('H1', () =>
    drawLines(
      doc,
      [number],
      { x: flow.left, y: flow.y, width: flow.width, align: 'right' },
      headNumberStyle,
    ),
  );
  flow.tagged('Figure', () => drawQr(doc, number, { x, y, module: qrModule }), {
    alt: `QR code of the order number ${number}`,
    bbox: [x, y, x + size, y + size],
  });
  return size + qrQuietModules * qrModule;
}

/** Side of the stop sign, points. */
export const stopSize = 66;

/** The sign and its words: nobody strings or draws this bow. */
export function stopSign(flow: Flow): void {
  const { doc, left, y } = flow;
  const draw = () => {
    octagon(doc, left, y, stopSize);
    const middle = y + (stopSize - lineHeight(signStyle)) / 2;
    drawLines(doc, ['STOP'], { x: left, y: middle, width: stopSize, align: 'center' }, signStyle);
  };
  flow.tagged('Figure', draw, {
    alt: 'Stop sign',
    bbox: [left, y, left + stopSize, y + stopSize],
  });
  const words = ['DO NOT STRING', 'OR DRAW'];
  const down = (stopSize - words.length * lineHeight(stopStyle)) / 2;
  flow.tagged('P', () =>
    drawLines(doc, words, { x: left + stopSize + 10, y: y + down }, stopStyle),
  );
  flow.y = y + stopSize;
}

/** The order number as bars in the middle of the label, `bars` points high. */
export function tagBars(flow: Flow, number: string, bars: number): void {
  const { doc, y } = flow;
  const width = code128Modules(number) * tagModule;
  const x = (doc.page.width - width) / 2;
  const draw = () => drawCode128(doc, number, { x, y, height: bars, module: tagModule });
  flow.tagged('Figure', draw, {
    alt: `Barcode of the order number ${number}`,
    bbox: [x, y, x + width, y + bars],
  });
}
