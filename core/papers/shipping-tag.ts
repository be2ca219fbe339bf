import { code128ModuleCount, drawCode128, drawQr, qrMatrix } from './barcode.ts';
import type { PaperPdf, Party, ShippingTagData } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { type Doc, makeSheet, quiet, stopBrick } from './sheet.ts';

/** 0.5 mm: six dots of a 300 dpi label printer. */
const module = (0.5 / 25.4) * 72;
const margin = 16;
const barHeight = 54;

function fitted(doc: Doc, text: string, width: number, sizes: readonly number[]): number {
  return sizes.find((size) => doc.fontSize(size).widthOfString(text) <= width) ?? sizes.at(-1) ?? 8;
}

function party(flow: Flow, label: string, who: Party, size: number, height: number): void {
  const { doc } = flow;
  const top = doc.y;
  flow.tagged('H2', () => {
    doc
      .font(fonts.regular)
      .fontSize(8)
      .fillColor(quiet)
      .text(label, flow.left, top, { width: flow.width });
  });
  doc.fillColor('#22211E');
  flow.tagged('P', () => {
    doc.font(fonts.semibold);
    const fit = fitted(doc, who.name, flow.width, [size, size - 2, size - 4, 9]);
    doc
      .fontSize(fit)
      .text(who.name, flow.left, doc.y, { width: flow.width, height: fit * 2.6, ellipsis: true });
    const left = height - (doc.y - top);
    doc.font(fonts.regular).fontSize(Math.max(size - 3, 9));
    doc.text(who.lines.join('\n'), flow.left, doc.y, {
      width: flow.width,
      height: left,
      ellipsis: true,
    });
  });
  doc.y = top + height;
}

function octagon(doc: Doc, x: number, y: number, size: number): void {
  const cut = size * 0.293;
  doc
    .moveTo(x + cut, y)
    .lineTo(x + size - cut, y)
    .lineTo(x + size, y + cut)
    .lineTo(x + size, y + size - cut)
    .lineTo(x + size - cut, y + size)
    .lineTo(x + cut, y + size)
    .lineTo(x, y + size - cut)
    .lineTo(x, y + cut)
    .fill(stopBrick);
}

function warning(flow: Flow, data: ShippingTagData): void {
  const { doc } = flow;
  const top = doc.y;
  if (data.unsafe) {
    flow.tagged('Figure', () => octagon(doc, flow.left, top + 2, 30), 'Stop sign');
    flow.tagged('P', () => {
      doc.font(fonts.bold).fontSize(16).fillColor(stopBrick);
      doc.text('DO NOT STRING OR DRAW', flow.left + 38, top + 6, {
        width: flow.width - 38,
        height: 40,
      });
    });
    doc.fillColor('#22211E');
    doc.y = top + 38;
    return;
  }
  flow.tagged('P', () => {
    doc
      .font(fonts.bold)
      .fontSize(15)
      .text('Fragile - do not bend', flow.left, top, { width: flow.width });
  });
}

function codes(flow: Flow, data: ShippingTagData): void {
  const { doc } = flow;
  const { height, width } = doc.page;
  const top = height - margin - barHeight - 20;
  const quietZone = 10 * module;
  const bars = code128ModuleCount(data.number) * module;
  const qrModule = module * 1.5;
  const qr = qrMatrix(data.number).size * qrModule;
  const x = margin + quietZone * 0.3;
  flow.tagged(
    'Figure',
    () => {
      drawCode128(doc, data.number, { x, y: top, height: barHeight, module });
      const qrX = width - margin - qr;
      if (qrX - (x + bars) >= quietZone)
        drawQr(doc, data.number, { x: qrX, y: height - margin - qr - 4, module: qrModule });
    },
    `Barcode and QR code: ${data.number}`,
  );
  flow.tagged('P', () => {
    doc.font(fonts.bold).fontSize(14);
    doc.text(data.number, x, top + barHeight + 2, {
      width: bars,
      align: 'center',
      lineBreak: false,
    });
  });
}

function officeLines(data: ShippingTagData): string[] {
  if (data.copy !== 'office') return [];
  return [
    data.box === null ? 'Box: not noted' : `Box: ${data.box}`,
    data.declaredValue === null
      ? 'Declared value: not noted'
      : `Declared value: ${data.declaredValue}`,
    'Office copy: keep, do not stick on the parcel.',
  ];
}

/** The tag on the parcel, 4 x 6 in or A6; one page. @throws ShopError UNPRINTABLE */
export function shippingTagPdf(data: ShippingTagData): Promise<PaperPdf> {
  const title = `${data.number} shipping tag`;
  return makeSheet(
    {
      size: data.format,
      margins: { top: margin, right: margin, bottom: margin, left: margin },
      title,
      fileName: `${title}.pdf`,
      printedAt: data.printedAt,
      trueSize: true,
      data,
    },
    (doc, root) => {
      const flow = new Flow(doc, root);
      // Only text that was measured to fit is drawn; nothing may start a second label.
      doc.page.margins.bottom = 0;
      flow.tagged('H1', () => {
        doc.font(fonts.regular).fontSize(8).fillColor(quiet);
        doc.text(`Shipping tag ${data.number}`, flow.left, margin, { width: flow.width });
      });
      party(flow, 'From', data.from, 11, 88);
      party(flow, 'To', data.to, 17, 114);
      warning(flow, data);
      const lines = [data.contents, data.carrier, ...officeLines(data)].filter(
        (line) => line !== null,
      );
      for (const line of lines) {
        flow.tagged('P', () => {
          doc.font(fonts.regular).fontSize(9);
          doc.text(line, flow.left, doc.y, { width: flow.width, height: 12, ellipsis: true });
        });
      }
      codes(flow, data);
    },
  );
}
