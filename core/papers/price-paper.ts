import type { PaperPdf, Party } from './data.ts';
import { bodyStyle, Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet, quiet } from './sheet.ts';
import { drawTable } from './table.ts';

/** Every amount is written out by the caller, so that all papers of an order say the same. */
export interface PricePaperData {
  kind: 'estimate' | 'receipt';
  format: 'letter' | 'a4';
  copy: 'customer' | 'office';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  /** null: the shop's own bow. */
  customer: Party | null;
  bow: string;
  work: string;
  lines: { what: string; quantity: string; each: string; amount: string }[];
  /** Subtotal, tax and total, as label and amount; the last one is what it comes to. */
  sums: [string, string][];
  /** Money that came or went, oldest first. */
  payments: { on: string; what: string; reference: string; amount: string }[];
  /** Deposit, received, balance. */
  open: [string, string][];
  /** What the price covers and what this paper is. */
  terms: string[];
}

const titles = { estimate: 'Estimate', receipt: 'Receipt' };
const copies = { customer: 'Customer copy', office: 'Office copy' };

const headOf = (data: PricePaperData): PlainHead => ({
  title: titles[data.kind],
  number: data.number,
  made: `${copies[data.copy]}, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.customer?.name ?? '',
});

const labelStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const nameStyle: TextStyle = { font: fonts.semibold, size: 10 };
const totalStyle: TextStyle = { font: fonts.bold, size: 14 };

function block(flow: Flow, label: string, name: string, lines: readonly string[], at: number) {
  const { doc, y } = flow;
  const width = flow.width * 0.46;
  const head = wrap(doc, name, width, nameStyle);
  const rest = lines.flatMap((line) => wrap(doc, line, width, bodyStyle));
  const below = y + lineHeight(labelStyle);
  const restY = below + head.length * lineHeight(nameStyle);
  flow.tagged('P', () => {
    drawLines(doc, [label], { x: at, y }, labelStyle);
    drawLines(doc, head, { x: at, y: below }, nameStyle);
    drawLines(doc, rest, { x: at, y: restY }, bodyStyle);
  });
  return restY + rest.length * lineHeight(bodyStyle);
}

/** Whose bow it is, and which. */
function parties(flow: Flow, data: PricePaperData): void {
  const { customer } = data;
  const right = flow.left + flow.width * 0.52;
  const ends = [
    block(flow, 'For', customer?.name ?? "the shop's own bow", customer?.lines ?? [], flow.left),
    block(flow, 'Bow and work', data.bow, [data.work], right),
  ];
  flow.y = Math.max(...ends) + 4;
}

function priceLines(flow: Flow, data: PricePaperData): void {
  flow.heading('Price');
  drawTable(flow, {
    columns: [
      { head: 'What', share: 54 },
      { head: 'Quantity', share: 12, align: 'right' },
      { head: 'Each', share: 17, align: 'right' },
      { head: 'Amount', share: 17, align: 'right' },
    ],
    rows: data.lines.map((line) => [line.what, line.quantity, line.each, line.amount]),
  });
}

/** Labels and amounts under the amounts of the lines. */
function amounts(flow: Flow, rows: readonly (readonly [string, string])[]): void {
  drawTable(flow, {
    plain: true,
    gapsAs: 4,
    columns: [
      { head: '', share: 83, names: true, align: 'right' },
      { head: '', share: 17, align: 'right' },
    ],
    rows,
  });
}

/** What it comes to is the one large figure. */
function total(flow: Flow, [label, amount]: readonly [string, string]): void {
  const step = lineHeight(totalStyle);
  flow.needs(step + 4);
  const { doc, y, width, left } = flow;
  flow.tagged('P', () =>
    drawLines(doc, [`${label}  ${amount}`], { x: left, y, width, align: 'right' }, totalStyle),
  );
  flow.y += step + 4;
}

function payments(flow: Flow, data: PricePaperData): void {
  if (data.payments.length > 0) {
    flow.heading('Paid');
    drawTable(flow, {
      columns: [
        { head: 'Date', share: 16 },
        { head: 'What', share: 33 },
        { head: 'Reference', share: 34 },
        { head: 'Amount', share: 17, align: 'right' },
      ],
      rows: data.payments.map((each) => [each.on, each.what, each.reference, each.amount]),
    });
  }
  const last = data.open.at(-1);
  amounts(flow, data.open.slice(0, -1));
  if (last !== undefined) total(flow, last);
}

/**
 * Estimate and receipt: one drawing, so that they agree line by line.
 * @throws ShopError UNPRINTABLE
 */
export function pricePaperPdf(data: PricePaperData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} ${data.kind}`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => {
      const flow = new Flow(doc, root);
      plainFirstHead(flow, headOf(shown));
      parties(flow, shown);
      priceLines(flow, shown);
      flow.needs(70);
      amounts(flow, shown.sums.slice(0, -1));
      const sum = shown.sums.at(-1);
      if (sum !== undefined) total(flow, sum);
      payments(flow, shown);
      flow.y += 8;
      for (const term of shown.terms) flow.para(term);
    },
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
