import { code128Modules, drawCode128 } from './code128.ts';
import type { PaperPdf, Party } from './data.ts';
import { drawFitted, fitText } from './fit.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { octagon } from './marks.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { artifact, makeSheet, quiet, stopBrick } from './sheet.ts';
import { stopSign, tagBars, tagCorner, tagMargin, tagModule } from './tag-parts.ts';

export interface ReturnTagData {
  format: '4x6' | 'a6';
  copy: 'parcel';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  number: string;
  from: Party;
  /** Empty: the shop's own bow. */
  customerName: string;
  bowLine: string;
  /** Nobody may string or draw it: the tag forbids both. */
  unsafe: boolean;
  /** Why it goes back, one sentence each. */
  why: string[];
  /** Worst first. */
  findings: { grade: string; isStop: boolean; words: string }[];
  /** When the customer was told of them; null: not on record. */
  toldOn: string | null;
  /** What to mind before it is handled. */
  mind: string[];
}

const barHeight = 26;
const headHeight = 80;
/** Room at the foot of every label for the bars. */
const bottom = tagMargin + barHeight + 6;
/** Later labels begin under their number. */
const laterTop = 42;

const labelStyle: TextStyle = { font: fonts.regular, size: 8, color: quiet };
const bowStyle: TextStyle = { font: fonts.semibold, size: 11 };
const textStyle: TextStyle = { font: fonts.regular, size: 9.5 };
const stopTextStyle: TextStyle = { font: fonts.semibold, size: 9.5 };
const laterStyle: TextStyle = { font: fonts.bold, size: 12 };
const laterStopStyle: TextStyle = { font: fonts.bold, size: 12, color: stopBrick };

/** Number top right, the shop left of it. */
function head(flow: Flow, data: ReturnTagData): void {
  flow.y = tagMargin;
  const width = flow.width - tagCorner(flow, data.number);
  const from = fitText(flow.doc, {
    parts: [
      { text: data.from.name, font: fonts.bold },
      ...data.from.lines.map((text) => ({ text, font: fonts.regular })),
    ],
    width,
    height: headHeight - lineHeight(labelStyle) - 6,
    sizes: [10, 9, 8, 7, 6],
    name: 'address of the shop',
    paper: 'return tag',
  });
  const { doc, left, y } = flow;
  flow.tagged('P', () => drawLines(doc, ['Returned by'], { x: left, y }, labelStyle));
  flow.tagged('P', () => drawFitted(doc, from, left, y + lineHeight(labelStyle)));
}

function section(flow: Flow, title: string): void {
  flow.needs(lineHeight(labelStyle) + 3 * lineHeight(textStyle));
  const { doc, left, y } = flow;
  flow.tagged('H2', () => drawLines(doc, [title], { x: left, y }, labelStyle));
  flow.y += lineHeight(labelStyle);
}

function found(flow: Flow, data: ReturnTagData): void {
  if (data.findings.length === 0) return;
  section(flow, 'What was found');
  for (const { grade, isStop, words } of data.findings) {
    flow.para(`${grade}: ${words}`, isStop ? stopTextStyle : textStyle);
  }
  const told =
    data.toldOn === null
      ? 'Whether the customer was told is not on record.'
      : `The customer was told on ${data.toldOn}.`;
  flow.para(told, textStyle);
}

function body(flow: Flow, data: ReturnTagData): void {
  flow.y = tagMargin + headHeight;
  if (data.unsafe) {
    stopSign(flow);
    flow.y += 6;
  }
  flow.rule(flow.y);
  flow.y += 4;
  flow.para(data.bowLine, bowStyle);
  if (data.customerName !== '') flow.para(`For ${data.customerName}`, textStyle);
  section(flow, 'Why it goes back');
  flow.para(data.why.join(' '), textStyle);
  found(flow, data);
  section(flow, 'Before you handle it');
  for (const sentence of data.mind) flow.para(sentence, textStyle);
}

function firstFoot(flow: Flow, { number }: ReturnTagData): void {
  flow.y = flow.doc.page.height - tagMargin - barHeight;
  tagBars(flow, number, barHeight);
}

/** A label that came off the first one must still forbid what that one forbids. */
function laterLabel(doc: Doc, data: ReturnTagData, page: number, pages: number): void {
  const width = doc.page.width - 2 * tagMargin;
  const place = `${data.number}, ${page} of ${pages}`;
  drawLines(doc, [place], { x: tagMargin, y: tagMargin, width, align: 'right' }, laterStyle);
  if (data.unsafe) {
    octagon(doc, tagMargin, tagMargin + 2, 12);
    const words = ['DO NOT STRING OR DRAW'];
    drawLines(doc, words, { x: tagMargin + 17, y: tagMargin }, laterStopStyle);
  }
  const x = (doc.page.width - code128Modules(data.number) * tagModule) / 2;
  const y = doc.page.height - tagMargin - barHeight;
  drawCode128(doc, data.number, { x, y, height: barHeight, module: tagModule });
}

/**
 * The tag tied to a bow that goes home unworked, unfinished or unsafe, 4 x 6 in or A6. Nothing on
 * it is cut off: what does not fit goes on a second label.
 * @throws ShopError UNPRINTABLE
 */
export function returnTagPdf(data: ReturnTagData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: { top: laterTop, right: tagMargin, bottom, left: tagMargin },
    title: `${data.number} return tag`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, shown) => {
      const flow = new Flow(doc, root);
      head(flow, shown);
      firstFoot(flow, shown);
      body(flow, shown);
    },
    onEveryPage: (doc, shown, page, pages) => {
      if (page > 1) artifact(doc, () => laterLabel(doc, shown, page, pages), 'Pagination');
    },
  });
}
