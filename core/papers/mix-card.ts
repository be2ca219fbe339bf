import { drawCautions } from './cautions.ts';
import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet } from './sheet.ts';
import { drawTable, penRow } from './table.ts';

/** One part as it goes into the cup; a measure nobody can reckon is empty. */
export interface MixCardPart {
  part: string;
  name: string;
  ml: string;
  fluidOunces: string;
  grams: string;
  scaleReads: string;
  lots: string;
}

export interface MixCardData {
  format: 'letter' | 'a4';
  copy: 'bench';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  /** Name of the batch, as on the cup. */
  number: string;
  finish: string;
  /** Day and times of the wall clock, large: from when and until when it may be used. */
  usable: string;
  /** `DISCARDED` and why; empty while it is not. */
  discarded: string;
  parts: MixCardPart[];
  facts: [label: string, value: string][];
  /** What it has coated so far: order, coat, time, wet film. */
  coats: [order: string, coat: string, at: string, wetFilm: string][];
  cautions: string[];
}

/** Lines to write on while the guns are out, at least. */
const penRows = 4;
const largeStyle: TextStyle = { font: fonts.bold, size: 17 };

const headOf = (data: MixCardData): PlainHead => ({
  title: 'Mix card',
  number: data.number,
  numberOf: 'batch',
  made: `Batch ${data.number}, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.finish,
});

function large(flow: Flow, text: string): void {
  const lines = wrap(flow.doc, text, flow.width, largeStyle);
  const { y } = flow;
  flow.tagged('P', () => drawLines(flow.doc, lines, { x: flow.left, y }, largeStyle));
  flow.y += lines.length * lineHeight(largeStyle) + 6;
}

function pouring(flow: Flow, { parts }: MixCardData): void {
  flow.heading('Pour in this order, the cup tared once', 80);
  drawTable(flow, {
    columns: [
      { head: 'Part', share: 12, names: true },
      { head: 'What', share: 27 },
      { head: 'mL', share: 9, align: 'right' },
      { head: 'US fl oz', share: 10, align: 'right' },
      { head: 'g', share: 9, align: 'right' },
      { head: 'Scale reads, g', share: 12, align: 'right' },
      { head: 'Lots, use by', share: 24 },
    ],
    rows: parts.map((each) => [
      each.part,
      each.name,
      each.ml || 'not known',
      each.fluidOunces || 'not known',
      each.grams || 'not known',
      each.scaleReads || 'not known',
      each.lots || 'not from the stores',
    ]),
  });
}

function coated(flow: Flow, { coats }: MixCardData): void {
  flow.heading('Coated with it', penRow * penRows);
  drawTable(flow, {
    columns: [
      { head: 'Order', share: 20 },
      { head: 'Coat', share: 42 },
      { head: 'At', share: 22 },
      { head: 'Wet film', share: 16 },
    ],
    rows: [...coats, ...Array.from({ length: penRows }, () => ['', '', '', ''])],
    blankHeight: penRow,
  });
}

function body(flow: Flow, data: MixCardData): void {
  plainFirstHead(flow, headOf(data));
  flow.para(data.finish, { font: fonts.semibold, size: 12 });
  flow.y += 2;
  large(flow, data.discarded === '' ? data.usable : data.discarded);
  pouring(flow, data);
  flow.heading('The batch', 60);
  drawTable(flow, {
    columns: [
      { head: '', share: 26, names: true },
      { head: '', share: 74 },
    ],
    rows: data.facts,
    plain: true,
  });
  flow.heading('Cautions', 40);
  drawCautions(flow, data.cautions);
  coated(flow, data);
}

/**
 * What stands beside the cup: what was poured from which lot, and until when it may be used.
 * @throws ShopError UNPRINTABLE
 */
export function mixCardPdf(data: MixCardData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} mix card`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => body(new Flow(doc, root), shown),
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
