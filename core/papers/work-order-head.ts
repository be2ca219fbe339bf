import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { WorkOrderData } from './data.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, shortened, type TextStyle, wrap } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { drawQr, qrMatrix, qrQuietModules } from './qr.ts';
import { artifact, mm, quiet } from './sheet.ts';

/** 0.33 mm: four dots of a 300 dpi printer, eight of a 600 dpi one. */
export const workOrderModule = 0.33 * mm;
const qrModule = 0.6 * mm;
export const workOrderMargins = { top: 118, right: 45, bottom: 54, left: 45 };
const headTop = 36;
const barHeight = 36;

const titleStyle: TextStyle = { font: fonts.bold, size: 20 };
const numberStyle: TextStyle = { font: fonts.bold, size: 20 };
const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };

interface HeadPlaces {
  bars: { x: number; width: number };
  qr: { x: number; size: number };
  /** Width left for words, points. */
  words: number;
}

/** QR at the right margin, bars left of it; each keeps its own light margin. */
function places(doc: Doc, number: string): HeadPlaces {
  const right = doc.page.width - workOrderMargins.right;
  const qrSize = qrMatrix(number).size * qrModule;
  const qrX = right - qrSize;
  const width = code128Modules(number) * workOrderModule;
  const quietBars = code128QuietModules * workOrderModule;
  const x = qrX - qrQuietModules * qrModule - quietBars - width;
  return {
    bars: { x, width },
    qr: { x: qrX, size: qrSize },
    words: x - quietBars - workOrderMargins.left - 8,
  };
}

function drawCodes(doc: Doc, number: string): void {
  const { bars, qr } = places(doc, number);
  drawCode128(doc, number, { x: bars.x, y: headTop, height: barHeight, module: workOrderModule });
  drawQr(doc, number, { x: qr.x, y: headTop, module: qrModule });
}

function drawNumber(doc: Doc, number: string): void {
  const { bars, qr } = places(doc, number);
  const width = qr.x + qr.size - bars.x;
  const y = headTop + barHeight + 4;
  drawLines(doc, [number], { x: bars.x, y, width, align: 'right' }, numberStyle);
}

function shopLines(data: WorkOrderData): string[] {
  const { shop } = data;
  const contact = [shop.phone, shop.email].filter((text) => text !== '').join(' · ');
  return [shop.name, shop.lines.join(', '), contact].filter((text) => text !== '');
}

/** The head of page one is content. */
export function firstHead(flow: Flow, data: WorkOrderData): void {
  const { doc, left } = flow;
  const { number } = data.order;
  const { words, bars, qr } = places(doc, number);
  flow.tagged('H1', () => drawLines(doc, ['Work order'], { x: left, y: headTop - 6 }, titleStyle));
  const copy = data.copy === 'bench' ? 'Bench copy' : 'Office copy';
  const made = `${copy}, printed ${data.printedAt.slice(0, 10)}`;
  let y = headTop - 6 + lineHeight(titleStyle);
  for (const text of [made, ...shopLines(data)]) {
    flow.tagged('P', () =>
      drawLines(doc, [shortened(doc, text, words, smallStyle)], { x: left, y }, smallStyle),
    );
    y += lineHeight(smallStyle);
  }
  flow.tagged('Figure', () => drawCodes(doc, number), {
    alt: `Barcode and QR code of the order number ${number}`,
    bbox: [bars.x, headTop, qr.x + qr.size, headTop + Math.max(barHeight, qr.size)],
  });
  flow.tagged('P', () => drawNumber(doc, number));
}

/** On later pages the head repeats what page one says, so it is no content of its own. */
function laterHead(doc: Doc, data: WorkOrderData): void {
  const { words } = places(doc, data.order.number);
  const x = workOrderMargins.left;
  drawCodes(doc, data.order.number);
  drawNumber(doc, data.order.number);
  drawLines(doc, ['Work order, continued'], { x, y: headTop - 3 }, { ...titleStyle, size: 13 });
  const about = [data.customer?.name ?? '', data.bow?.line ?? ''].filter((text) => text !== '');
  const lines = about.flatMap((text) => wrap(doc, text, words, smallStyle).slice(0, 2));
  drawLines(doc, lines, { x, y: headTop + 17 }, smallStyle);
}

export function headAndFoot(doc: Doc, data: WorkOrderData, page: number, pages: number): void {
  artifact(
    doc,
    () => {
      if (page > 1) laterHead(doc, data);
      const width = doc.page.width - workOrderMargins.left - workOrderMargins.right;
      const box = { x: workOrderMargins.left, y: doc.page.height - 40, width };
      const foot = shortened(doc, data.shop.name, width * 0.6, smallStyle);
      drawLines(doc, [foot], box, smallStyle);
      const place = `${data.order.number}  page ${page} of ${pages}`;
      drawLines(doc, [place], { ...box, align: 'right' }, smallStyle);
    },
    'Pagination',
  );
}
