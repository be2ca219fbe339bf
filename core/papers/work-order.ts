import { weightStrip } from '../../shared/weight-strip.ts';
import { code128ModuleCount, drawCode128, drawQr, qrMatrix } from './barcode.ts';
import type { PaperPdf, WorkOrderData } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { artifact, type Doc, makeSheet, quiet, stopBrick } from './sheet.ts';
import { drawWeightStrip } from './weight-strip.ts';

/** 0.33 mm, four dots of a 300 dpi printer. */
const module = (0.33 / 25.4) * 72;
const margins = { top: 104, right: 42, bottom: 48, left: 42 };
const headTop = 34;
const codeHeight = 34;

function drawCodes(doc: Doc, number: string): void {
  const right = doc.page.width - margins.right;
  const qr = qrMatrix(number).size * module * 1.5;
  const qrX = right - qr;
  const barsX = qrX - 10 * module - code128ModuleCount(number) * module - 8;
  drawQr(doc, number, { x: qrX, y: headTop, module: module * 1.5 });
  drawCode128(doc, number, { x: barsX, y: headTop, height: codeHeight, module });
}

function drawNumber(doc: Doc, number: string): void {
  const right = doc.page.width - margins.right;
  const qr = qrMatrix(number).size * module * 1.5;
  const width = code128ModuleCount(number) * module;
  doc.font(fonts.bold).fontSize(15);
  doc.text(number, right - qr - 10 * module - width - 8, headTop + codeHeight + 3, {
    width,
    align: 'center',
    lineBreak: false,
  });
}

/** The head of page one is content; on the pages after it, the same head is repetition. */
function firstHead(flow: Flow, data: WorkOrderData): void {
  const { doc } = flow;
  flow.tagged(
    'Figure',
    () => drawCodes(doc, data.order.number),
    `Barcode and QR code: ${data.order.number}`,
  );
  flow.tagged('P', () => drawNumber(doc, data.order.number));
  flow.tagged('H1', () => {
    doc
      .font(fonts.bold)
      .fontSize(20)
      .text('Work order', flow.left, headTop - 4, { width: 220 });
  });
  flow.tagged('P', () => {
    const copy = data.copy === 'bench' ? 'Bench copy' : 'Office copy';
    doc.font(fonts.regular).fontSize(9).fillColor(quiet);
    doc.text(
      `${data.shop.name}. ${copy}, printed ${data.printedAt.slice(0, 10)}`,
      flow.left,
      headTop + 24,
      {
        width: 250,
        height: 36,
        ellipsis: true,
      },
    );
  });
  doc.fillColor('#22211E');
  doc.y = margins.top;
}

function everyHead(data: WorkOrderData): (doc: Doc, page: number, pages: number) => void {
  return (doc, page, pages) => {
    artifact(doc, () => {
      if (page > 1) {
        drawCodes(doc, data.order.number);
        drawNumber(doc, data.order.number);
      }
      const bottom = doc.page.margins.bottom;
      // The foot stands inside the margin; pdfkit would start a page for it.
      doc.page.margins.bottom = 0;
      doc.font(fonts.regular).fontSize(8).fillColor(quiet);
      doc.text(
        `${data.order.number}, page ${page} of ${pages}`,
        margins.left,
        doc.page.height - 34,
        {
          width: doc.page.width - margins.left - margins.right,
          align: 'center',
          lineBreak: false,
        },
      );
      doc.page.margins.bottom = bottom;
    });
  };
}

function stops(flow: Flow, data: WorkOrderData): void {
  if (data.stopFindings.length === 0) return;
  flow.para('STOP: do not string or draw this bow.', { size: 14, bold: true, color: stopBrick });
  for (const finding of data.stopFindings) flow.para(finding, { bold: true });
}

function facts(flow: Flow, data: WorkOrderData): void {
  const { order, customer } = data;
  const who =
    customer === null
      ? "The shop's own bow"
      : [customer.name, ...customer.lines, customer.phone, customer.email]
          .filter(Boolean)
          .join(', ');
  const rows: [string, string][] = [
    ['Customer', who],
    ['Bow', data.bow?.line ?? 'Not identified yet'],
    ...(data.bow?.facts ?? []),
    ['Work', order.services.join(', ')],
    ['Target', order.target ?? 'none'],
    ['Tiller target', order.tiller || 'as it is'],
    ['To be written on it', order.inscription.replaceAll('\n', ' / ') || 'nothing yet'],
    ['Came with', data.belongings || 'not listed yet'],
    ['Taken in', order.createdOn],
    ['Promised', order.promisedOn ?? 'no date'],
    ['Stands in', order.hold === null ? order.stage : `${order.stage}, on hold: ${order.hold}`],
  ];
  flow.table(
    [
      { head: 'What', width: 22 },
      { head: 'As recorded', width: 78 },
    ],
    rows,
  );
  if (data.bow !== null && data.bow.notes !== '') flow.para(`About the bow: ${data.bow.notes}`);
  if (order.notes !== '') flow.para(`Notes: ${order.notes}`);
}

function weights(flow: Flow, data: WorkOrderData): void {
  flow.heading(`Weight, lb at ${data.stripDraw}`);
  flow.needs(40);
  const { doc } = flow;
  const { text } = weightStrip(data.strip);
  flow.tagged(
    'Figure',
    () => {
      const y = doc.y + 2;
      const used = drawWeightStrip(doc, data.strip, { x: flow.left, y, width: flow.width * 0.55 });
      doc.y = y + used;
    },
    `Weight strip: ${text}`,
  );
  flow.para(text);
  if (data.weighings.length > 0) {
    flow.table(
      [
        { head: 'Weighed', width: 16 },
        { head: 'Phase', width: 16 },
        { head: 'Weight', width: 34 },
        { head: 'Brace', width: 12 },
        { head: 'Scale', width: 22 },
      ],
      data.weighings.map((w) => [w.on, w.phase, w.weights, w.brace, w.scale]),
    );
  }
}

const blankBites = 6;

function blanks(flow: Flow): void {
  flow.heading('At the bench: re-round the edges, flex, read tiller, weigh, then write it down');
  const rows = Array.from({ length: blankBites }, (_, i) => [
    String(i + 1),
    '',
    '',
    '',
    '',
    '',
    '',
  ]);
  flow.table(
    [
      { head: 'Bite', width: 7 },
      { head: 'Upper, per side', width: 17 },
      { head: 'Lower, per side', width: 17 },
      { head: 'Glass looked at', width: 15 },
      { head: 'Tiller', width: 14 },
      { head: 'Weight and draw', width: 19 },
      { head: 'By', width: 11 },
    ],
    rows,
  );
}

function consents(flow: Flow, data: WorkOrderData): void {
  if (data.consents.length === 0) return;
  flow.heading('What the customer agreed to');
  flow.table(
    [
      { head: 'Consent', width: 40 },
      { head: 'Where it stands', width: 60 },
    ],
    data.consents.map((consent) => [consent.label, consent.state]),
  );
}

function signOff(flow: Flow, data: WorkOrderData): void {
  flow.heading('Signed off');
  flow.table(
    [
      { head: 'Stage', width: 40 },
      { head: 'By', width: 35 },
      { head: 'Date', width: 25 },
    ],
    data.stages.map((stage) => [stage.label, stage.by, stage.on]),
  );
}

/** The paper that travels with the bow through the shop, Letter or A4. @throws ShopError UNPRINTABLE */
export function workOrderPdf(data: WorkOrderData): Promise<PaperPdf> {
  const { number } = data.order;
  return makeSheet(
    {
      size: data.format,
      margins,
      title: `${number} work order`,
      fileName: `${number} work order.pdf`,
      printedAt: data.printedAt,
      trueSize: false,
      data,
    },
    (doc, root) => {
      const flow = new Flow(doc, root);
      firstHead(flow, data);
      stops(flow, data);
      facts(flow, data);
      weights(flow, data);
      if (data.cautions.length > 0) {
        flow.heading('Before you start');
        for (const caution of data.cautions) flow.para(caution, { size: 9 });
      }
      blanks(flow);
      consents(flow, data);
      signOff(flow, data);
    },
    everyHead(data),
  );
}
