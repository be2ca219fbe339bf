import { code128Modules, drawCode128 } from './code128.ts';
import type { PaperPdf, Party, ShippingTagData } from './data.ts';
import { drawFitted, fitText } from './fit.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { octagon } from './marks.ts';
import { drawQr, qrMatrix, qrQuietModules } from './qr.ts';
import { makeSheet, mm, quiet } from './sheet.ts';

/** 0.5 mm: six dots of a 300 dpi label printer, four of a 203 dpi one. */
export const tagModule = 0.5 * mm;
/** QR modules half as wide again as the bars, as GS1 asks of 2D codes beside bars. */
const qrModule = 1.5 * tagModule;
const margin = 14;
const barHeight = 58;
const gap = 6;
const fromHeight = 72;
const stopSize = 66;

const labelStyle: TextStyle = { font: fonts.regular, size: 8, color: quiet };
const headNumberStyle: TextStyle = { font: fonts.bold, size: 12 };
const numberStyle: TextStyle = { font: fonts.bold, size: 18 };
const fragileStyle: TextStyle = { font: fonts.bold, size: 18 };
const fragileBesideStyle: TextStyle = { font: fonts.bold, size: 12 };
const signStyle: TextStyle = { font: fonts.bold, size: 18, color: '#FFFFFF' };
const stopStyle: TextStyle = { font: fonts.bold, size: 23 };

/** Number and QR, top right as on every paper of the shop. Answers the width they take. */
function corner(flow: Flow, number: string): number {
  const { doc } = flow;
  const size = qrMatrix(number).size * qrModule;
  const x = doc.page.width - margin - size;
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

interface PartyPlace {
  label: string;
  /** What a refusal calls it. */
  name: string;
  width: number;
  height: number;
  sizes: readonly number[];
}

function party(flow: Flow, who: Party, place: PartyPlace): void {
  const { doc, y } = flow;
  const label = lineHeight(labelStyle);
  const fitted = fitText(doc, {
    parts: [
      { text: who.name, font: fonts.bold },
      ...who.lines.map((text) => ({ text, font: fonts.regular })),
    ],
    width: place.width,
    height: place.height - label,
    sizes: place.sizes,
    name: place.name,
  });
  flow.tagged('H2', () => drawLines(doc, [place.label], { x: flow.left, y }, labelStyle));
  flow.tagged('P', () => drawFitted(doc, fitted, flow.left, y + label));
  flow.y = y + place.height;
}

const fragileWords = ['Fragile - do not bend'];

function fragile(flow: Flow): void {
  const { doc, left, y } = flow;
  flow.tagged('P', () => drawLines(doc, fragileWords, { x: left, y }, fragileStyle));
}

function stop(flow: Flow): void {
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
  const x = left + stopSize + 10;
  const words = ['DO NOT STRING', 'OR DRAW'];
  const below = y - 6 + words.length * lineHeight(stopStyle);
  flow.tagged('P', () => drawLines(doc, words, { x, y: y - 6 }, stopStyle));
  flow.tagged('P', () => drawLines(doc, fragileWords, { x, y: below }, fragileBesideStyle));
}

/** Lines of small print; value and size of the parcel are nobody's business on the way. */
function details(data: ShippingTagData): string[] {
  const open = [data.contents, data.carrier].filter((text) => text !== null);
  if (data.copy === 'parcel') return open;
  return [
    'Office copy: keep it, do not stick it on the parcel.',
    ...open,
    `Box: ${data.box ?? 'not noted'}. Declared value: ${data.declaredValue ?? 'not noted'}.`,
  ];
}

function bars(flow: Flow, number: string): void {
  const { doc, y } = flow;
  const width = code128Modules(number) * tagModule;
  const x = (doc.page.width - width) / 2;
  const draw = () => drawCode128(doc, number, { x, y, height: barHeight, module: tagModule });
  flow.tagged('Figure', draw, {
    alt: `Barcode of the order number ${number}`,
    bbox: [x, y, x + width, y + barHeight],
  });
  flow.tagged('P', () =>
    drawLines(
      doc,
      [number],
      { x: flow.left, y: y + barHeight + 1, width: flow.width, align: 'center' },
      numberStyle,
    ),
  );
}

/** Head and foot of the label have their places; the address gets all that is left between. */
function drawTag(flow: Flow, data: ShippingTagData): void {
  const { doc } = flow;
  const cornerWidth = corner(flow, data.number);
  party(flow, data.from, {
    label: 'From',
    name: 'sender address',
    width: flow.width - cornerWidth,
    height: fromHeight,
    sizes: [10.5, 10, 9, 8, 7, 6],
  });
  const small = fitText(doc, {
    parts: details(data).map((text) => ({ text, font: fonts.regular })),
    width: flow.width,
    height: 62,
    sizes: [10, 9, 8, 7, 6],
    name: 'carrier, contents and box text',
  });
  const barsTop = flow.bottom - barHeight - lineHeight(numberStyle);
  const warnings = data.unsafe ? stopSize : lineHeight(fragileStyle);
  const detailsTop = barsTop - 8 - small.height;
  const warningsTop = detailsTop - warnings - 4;
  flow.y += gap;
  flow.rule(flow.y);
  flow.y += gap;
  party(flow, data.to, {
    label: 'To',
    name: 'delivery address',
    width: flow.width,
    height: warningsTop - gap * 2 - 3 - flow.y,
    sizes: [24, 22, 20, 18, 16, 14, 13, 12, 11, 10, 9, 8, 7],
  });
  flow.rule(warningsTop - gap);
  flow.y = warningsTop;
  if (data.unsafe) stop(flow);
  else fragile(flow);
  if (small.height > 0) flow.tagged('P', () => drawFitted(doc, small, flow.left, detailsTop));
  flow.y = barsTop;
  bars(flow, data.number);
}

/**
 * The tag on the parcel, 4 x 6 in or A6, always one page.
 * @throws ShopError UNPRINTABLE, also where an address is too long to print whole
 */
export function shippingTagPdf(data: ShippingTagData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: { top: margin, right: margin, bottom: margin, left: margin },
    title: `${data.number} shipping tag`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, shown) => drawTag(new Flow(doc, root), shown),
  });
}
