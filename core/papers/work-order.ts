import { weightStrip } from '../../shared/weight-strip.ts';
import { drawBenchTables, drawPlan } from './bench-tables.ts';
import { forCopy } from './copies.ts';
import type { PaperPdf, WorkOrderData } from './data.ts';
import { bodyStyle, Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { octagon, triangle } from './marks.ts';
import { drawPriceTables } from './price-tables.ts';
import { artifact, makeSheet, quiet, stopBrick } from './sheet.ts';
import { drawTable } from './table.ts';
import { drawWeightStrip, weightStripHeight } from './weight-strip.ts';
import { drawFacts } from './work-order-facts.ts';
import { firstHead, headAndFoot, workOrderMargins } from './work-order-head.ts';

const labelStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const bowStyle: TextStyle = { font: fonts.semibold, size: 14 };
const targetStyle: TextStyle = { font: fonts.bold, size: 24 };
const strongStyle: TextStyle = { font: fonts.semibold, size: 10 };
const signRow = 22;

/** The two answers wanted at arm's length: which bow, and what it shall draw. */
function hero(flow: Flow, data: WorkOrderData): void {
  const { doc, left, y } = flow;
  const half = flow.width * 0.58;
  const rest = flow.width - half - 12;
  const bow = wrap(doc, data.bow?.line ?? 'Not identified yet', half, bowStyle);
  const target = wrap(doc, data.order.target ?? 'none', rest, targetStyle);
  const tiller = wrap(doc, `tiller ${data.order.tiller || 'as it is'}`, rest, bodyStyle);
  const x = left + half + 12;
  const below = y + lineHeight(labelStyle);
  flow.tagged('P', () => {
    drawLines(doc, ['Bow'], { x: left, y }, labelStyle);
    drawLines(doc, bow, { x: left, y: below }, bowStyle);
  });
  const tillerY = below + target.length * lineHeight(targetStyle);
  flow.tagged('P', () => {
    drawLines(doc, ['Target'], { x, y }, labelStyle);
    drawLines(doc, target, { x, y: below - 3 }, targetStyle);
    drawLines(doc, tiller, { x, y: tillerY }, bodyStyle);
  });
  const ends = [
    below + bow.length * lineHeight(bowStyle),
    tillerY + tiller.length * lineHeight(bodyStyle),
  ];
  flow.y = Math.max(...ends) + 8;
}

function stops(flow: Flow, data: WorkOrderData): void {
  const { doc } = flow;
  if (data.stopFindings.length > 0) {
    const style: TextStyle = { font: fonts.bold, size: 16, color: stopBrick };
    flow.needs(60);
    const { y } = flow;
    artifact(doc, () => octagon(doc, flow.left, y, 20));
    flow.para('STOP: do not string or draw this bow.', style, 28);
    for (const finding of data.stopFindings) flow.para(finding, strongStyle, 28);
    flow.y += 6;
  }
  if (data.order.hold !== null) {
    flow.needs(30);
    const { y } = flow;
    artifact(doc, () => triangle(doc, flow.left + 4, y + 1, 10));
    flow.para(`On hold: ${data.order.hold}`, strongStyle, 28);
    flow.y += 10;
  }
}

function weights(flow: Flow, data: WorkOrderData): void {
  flow.heading(`Weight at ${data.stripDraw}`, weightStripHeight + 20);
  const { doc } = flow;
  const { text } = weightStrip(data.strip);
  const box = { x: flow.left, y: flow.y, width: flow.width };
  flow.tagged('Figure', () => drawWeightStrip(doc, data.strip, box), {
    alt: `Weight strip: ${text}`,
    bbox: [box.x, box.y, box.x + box.width, box.y + weightStripHeight],
  });
  flow.y += weightStripHeight + 2;
  flow.para(text, strongStyle);
}

function weighings(flow: Flow, data: WorkOrderData): void {
  if (data.weighings.length === 0) return;
  flow.heading('Weighed so far');
  drawTable(flow, {
    columns: [
      { head: 'Date', share: 13 },
      { head: 'When', share: 15 },
      { head: 'Weight', share: 38 },
      { head: 'Brace', share: 10 },
      { head: 'Scale', share: 24 },
    ],
    rows: data.weighings.map((w) => [w.on, w.phase, w.weights, w.brace, w.scale]),
  });
}

function consents(flow: Flow, data: WorkOrderData): void {
  if (data.consents.length === 0) return;
  flow.heading('What the customer agreed to');
  const columns = [
    { head: 'Consent', share: 38 },
    { head: 'Where it stands', share: 46 },
  ];
  const dated = data.consents.some((consent) => consent.on !== undefined);
  drawTable(flow, {
    columns: dated ? [...columns, { head: 'Date', share: 16 }] : columns,
    rows: data.consents.map((consent) => [consent.label, consent.state, consent.on ?? '']),
  });
}

function named(flow: Flow, title: string, rows: readonly (readonly [string, string])[]): void {
  if (rows.length === 0) return;
  flow.heading(title, Math.min((rows.length + 2) * signRow, 200));
  drawTable(flow, {
    columns: [
      { head: '', share: 24, names: true },
      { head: '', share: 76 },
    ],
    headless: true,
    rows,
    blankHeight: signRow,
  });
}

function signOff(flow: Flow, data: WorkOrderData): void {
  if (data.stages.length === 0) return;
  flow.heading('Signed off', Math.min(data.stages.length * signRow + 20, 260));
  drawTable(flow, {
    columns: [
      { head: 'Stage', share: 36 },
      { head: 'By', share: 38 },
      { head: 'Date', share: 26 },
    ],
    rows: data.stages.map((stage) => [stage.label, stage.by, stage.on]),
    rowHeight: signRow,
  });
}

/**
 * The paper that travels with the bow through the shop, Letter or A4.
 * @throws ShopError UNPRINTABLE
 */
export function workOrderPdf(data: WorkOrderData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: workOrderMargins,
    title: `${data.order.number} work order`,
    printedAt: data.printedAt,
    trueSize: false,
    data: forCopy(data),
    body: (doc, root, shown) => {
      const flow = new Flow(doc, root);
      firstHead(flow, shown);
      stops(flow, shown);
      hero(flow, shown);
      drawFacts(flow, shown);
      weights(flow, shown);
      weighings(flow, shown);
      consents(flow, shown);
      drawPlan(flow, shown);
      drawBenchTables(flow, shown);
      named(flow, 'Lettering', shown.lettering);
      named(flow, 'Finish', shown.finish);
      if (shown.price !== null) drawPriceTables(flow, shown.price);
      signOff(flow, shown);
    },
    onEveryPage: headAndFoot,
  });
}
