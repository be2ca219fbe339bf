import type { PaperPdf, Party } from './data.ts';
import { bodyStyle, Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { drawPriceTables, type PriceTables } from './price-tables.ts';
import { makeSheet, quiet } from './sheet.ts';

export interface PricePaperData extends PriceTables {
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
      drawPriceTables(flow, shown);
      flow.y += 8;
      for (const term of shown.terms) flow.para(term);
    },
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
