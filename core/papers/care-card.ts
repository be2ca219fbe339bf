import { drawCautions } from './cautions.ts';
import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import type { TextStyle } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet } from './sheet.ts';
import { drawTable } from './table.ts';

export interface CareCardData {
  format: 'letter' | 'a4';
  copy: 'customer';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  /** Empty: the shop's own bow. */
  customerName: string;
  bowLine: string;
  work: string;
  /** Label and value, as all pairs below. */
  weights: [string, string][];
  string: [string, string][];
  arrows: string[];
  /** Empty where nothing was finished here. */
  finish: [string, string][];
  use: string[];
  /** Findings to keep an eye on. */
  watch: string[];
  /** The shop's own terms; nothing else on the card is a promise. */
  terms: string;
}

const bowStyle: TextStyle = { font: fonts.semibold, size: 12 };

function pairs(flow: Flow, title: string, rows: readonly [string, string][]): void {
  if (rows.length === 0) return;
  flow.heading(title, 30);
  drawTable(flow, {
    columns: [
      { head: '', share: 26, names: true },
      { head: '', share: 74 },
    ],
    rows,
    plain: true,
    gapsAs: 3,
  });
}

function paras(flow: Flow, title: string, lines: readonly string[]): void {
  if (lines.length === 0) return;
  flow.heading(title, 30);
  for (const line of lines) flow.para(line);
}

const headOf = (data: CareCardData): PlainHead => ({
  title: 'Care card',
  number: data.number,
  made: `Customer copy, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.customerName,
});

function body(flow: Flow, data: CareCardData): void {
  plainFirstHead(flow, headOf(data));
  flow.para(data.bowLine, bowStyle);
  const about = [
    data.customerName === '' ? '' : `For ${data.customerName}`,
    data.work === '' ? '' : `Work: ${data.work}`,
  ];
  flow.para(about.filter((part) => part !== '').join('. '));
  pairs(flow, 'Draw weight and string', [...data.weights, ...data.string]);
  paras(flow, 'Arrows', data.arrows);
  pairs(flow, 'Finish', data.finish);
  flow.heading('Using and keeping it', 40);
  drawCautions(flow, data.use);
  paras(flow, 'Keep an eye on', data.watch);
  paras(
    flow,
    'Our terms',
    data.terms.split('\n').filter((line) => line.trim() !== ''),
  );
}

/**
 * What the owner of a bow must know to string, shoot and keep it, Letter or A4.
 * @throws ShopError UNPRINTABLE
 */
export function careCardPdf(data: CareCardData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} care card`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => body(new Flow(doc, root), shown),
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
