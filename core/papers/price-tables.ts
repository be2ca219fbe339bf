import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { drawTable } from './table.ts';

/** Every amount is written out by the caller, so that all papers of an order say the same. */
export interface PriceTables {
  lines: { what: string; quantity: string; each: string; amount: string }[];
  /** Subtotal, tax and total, as label and amount; the last one is what it comes to. */
  sums: [string, string][];
  /** Money that came or went, oldest first. */
  payments: { on: string; what: string; reference: string; amount: string }[];
  /** Deposit, received, balance. */
  open: [string, string][];
}

const totalStyle: TextStyle = { font: fonts.bold, size: 14 };

function priceLines(flow: Flow, data: PriceTables): void {
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

function payments(flow: Flow, data: PriceTables): void {
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

/** What an order costs, what was paid and what is open, line by line. */
export function drawPriceTables(flow: Flow, data: PriceTables): void {
  priceLines(flow, data);
  flow.needs(70);
  amounts(flow, data.sums.slice(0, -1));
  const sum = data.sums.at(-1);
  if (sum !== undefined) total(flow, sum);
  payments(flow, data);
}
