import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { PaperPdf } from './data.ts';
import { drawFitted, fitText } from './fit.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { drawQr, qrMatrix, qrQuietModules } from './qr.ts';
import { makeSheet, mm } from './sheet.ts';

/** What the labels of the stores have in common: 2 1/4 x 1 1/4 in, one to one. */
export interface StockLabelData {
  format: 'label';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  /** What it is. */
  name: string;
  /** Under the name, a line each, the first of them in bold. */
  facts: readonly string[];
  /** Printed as bars, as a QR code and in letters. */
  barcode: string;
}

/** Label printers leave a rim they cannot print on, about a sixteenth of an inch. */
const rim = 5;
/** Whole dots of a 203 dpi label printer (8 a millimetre), widest first. */
const barModules = [0.5 * mm, 0.375 * mm, 0.25 * mm];
const qrModule = 0.5 * mm;
const barHeight = 17;
const nameShare = 0.4;
const letters: TextStyle = { font: fonts.regular, size: 7 };
const steps = [11, 10, 9, 8, 7, 6.5, 6, 5.5, 5];

/** The widest bars the label has room for, or null for a barcode that only a QR code holds. */
function moduleFor(barcode: string, width: number): number | null {
  const modules = code128Modules(barcode) + 2 * code128QuietModules;
  return barModules.find((module) => modules * module <= width) ?? null;
}

/** Top right, its light margin inside the label. Answers the width it takes off the column. */
function qr(flow: Flow, barcode: string): number {
  const { doc } = flow;
  const light = qrQuietModules * qrModule;
  const size = qrMatrix(barcode).size * qrModule;
  const x = doc.page.width - light - size;
  const y = light;
  flow.tagged('Figure', () => drawQr(doc, barcode, { x, y, module: qrModule }), {
    alt: `QR code of ${barcode}`,
    bbox: [x, y, x + size, y + size],
  });
  return flow.left + flow.width - x + light;
}

function bars(flow: Flow, barcode: string): void {
  const { doc } = flow;
  const y = flow.bottom - lineHeight(letters) - barHeight;
  const module = moduleFor(barcode, doc.page.width);
  if (module !== null) {
    const width = code128Modules(barcode) * module;
    const x = (doc.page.width - width) / 2;
    const draw = () => drawCode128(doc, barcode, { x, y, height: barHeight, module });
    flow.tagged('Figure', draw, {
      alt: `Barcode ${barcode}`,
      bbox: [x, y, x + width, y + barHeight],
    });
  }
  const at = { x: flow.left, y: y + barHeight, width: flow.width, align: 'center' as const };
  flow.tagged('P', () => drawLines(doc, [barcode], at, letters));
}

function drawLabel(flow: Flow, data: StockLabelData): void {
  const { doc } = flow;
  const width = flow.width - qr(flow, data.barcode);
  const height = flow.pageRoom - lineHeight(letters) - barHeight - 2;
  const room = { width, sizes: steps, paper: 'label' };
  const name = fitText(doc, {
    ...room,
    parts: [{ text: data.name, font: fonts.bold }],
    height: height * nameShare,
    name: 'name',
  });
  flow.tagged('H1', () => drawFitted(doc, name, flow.left, flow.y));
  const facts = fitText(doc, {
    ...room,
    sizes: steps.slice(2),
    parts: data.facts.map((text, index) => ({
      text,
      font: index === 0 ? fonts.bold : fonts.regular,
    })),
    height: height - name.height,
    name: 'text under the name',
  });
  if (facts.height > 0) {
    flow.tagged('P', () => drawFitted(doc, facts, flow.left, flow.y + name.height));
  }
  bars(flow, data.barcode);
}

/** @throws ShopError UNPRINTABLE, also where the text does not fit on the label */
export function stockLabelPdf(data: StockLabelData, title: string): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: { top: rim, right: rim, bottom: rim, left: rim },
    title,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, shown) => drawLabel(new Flow(doc, root), shown),
  });
}
