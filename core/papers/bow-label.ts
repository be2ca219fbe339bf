import { ShopError } from '../../shared/errors.ts';
import { decimal } from '../../shared/measure.ts';
import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import {
  type LetteredLines,
  letterBlock,
  letterLine,
  letterSizes,
  refuseTooLong,
} from './inscription-proof-lines.ts';
import { checkBar, pageFoot, proofHead, proofMargins } from './inscription-proof-parts.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { artifact, makeSheet, pageSizes, quiet } from './sheet.ts';

/** Lines as approved, for the hand that letters them or for label stock. */
export interface BowLabelData extends LetteredLines {
  format: 'letter' | 'a4' | 'label';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  printedOn: string;
  number: string;
  shop: Party;
  bowLine: string;
  position: string;
  makerMark: string;
  /** Who approved the lines and when, or that nobody has to. */
  approval: string;
}

/** Label printers leave a rim they cannot print on, about a sixteenth of an inch. */
const labelMargin = 5;

function drawLabel(flow: Flow, data: BowLabelData): void {
  refuseTooLong(flow.doc, data, flow.width);
  const { height } = letterSizes(data);
  if (height > flow.pageRoom) {
    const [, tall] = pageSizes.label;
    throw new ShopError(
      'UNPRINTABLE',
      `These ${data.lines.length} lines are ${decimal(height / 72, 2)}" high, the label is ${decimal(tall / 72, 2)}": choose smaller letters or fewer lines.`,
      { letterHeightIn: 'Choose smaller letters, or fewer lines.' },
    );
  }
  letterBlock(flow, data, flow.left, flow.y + (flow.pageRoom - height) / 2);
}

/** Thin rules at the base line and at the height of a capital. */
function guides(doc: Doc, x: number, width: number, base: number, capital: number): void {
  artifact(doc, () => {
    for (const y of [base, base - capital]) doc.moveTo(x, y).lineTo(x + width, y);
    doc.lineWidth(0.25).stroke(quiet);
  });
}

function asItReads(flow: Flow, data: BowLabelData): void {
  const { capital, step } = letterSizes(data);
  flow.heading('As it shall read, at true size', step + capital);
  flow.y += capital * 0.4;
  for (const line of data.lines) {
    flow.needs(step);
    letterBlock(flow, { ...data, lines: [line] }, flow.left, flow.y);
    flow.y += step;
  }
}

/** Letters in outline between their rules, a reader of the structure gets them as one picture. */
function toTrace(flow: Flow, data: BowLabelData): void {
  const { capital, step, style } = letterSizes(data);
  flow.heading('To trace: base line, height of a capital, letters in outline', step + capital);
  flow.y += capital * 0.4;
  for (const line of data.lines) {
    flow.needs(step);
    const base = flow.y + capital;
    const { doc, left } = flow;
    guides(doc, left, flow.width, base, capital);
    if (line.trim() !== '') {
      const draw = () => letterLine(doc, line, { x: left, base }, style, 'outline');
      flow.tagged('Figure', draw, {
        alt: `The line ${line} in outline`,
        bbox: [left, base - capital * 1.3, left + flow.width, base + capital * 0.4],
      });
    }
    flow.y += step;
  }
}

function drawGuide(flow: Flow, data: BowLabelData): void {
  proofHead(flow, {
    title: 'Lettering guide',
    number: data.number,
    shop: data.shop,
    printedOn: data.printedOn,
  });
  refuseTooLong(flow.doc, data, flow.width);
  flow.para(data.bowLine);
  flow.para(`Where: ${data.position}`);
  if (data.makerMark !== '') flow.para(`Maker's own mark: ${data.makerMark}`);
  flow.para(`Height of a capital: ${decimal(data.letterHeightIn, 3)} in. ${data.approval}`);
  checkBar(flow);
  asItReads(flow, data);
  toTrace(flow, data);
}

/**
 * Lettering guide on a sheet, or the lines alone on label stock of 2 1/4 x 1 1/4 in; one to one.
 * @throws ShopError UNPRINTABLE, also where the lines do not fit at their true size
 */
export function bowLabelPdf(data: BowLabelData): Promise<PaperPdf> {
  const isLabel = data.format === 'label';
  const rim = { top: labelMargin, right: labelMargin, bottom: labelMargin, left: labelMargin };
  return makeSheet({
    size: data.format,
    margins: isLabel ? rim : proofMargins,
    title: `${data.number} ${isLabel ? 'bow label' : 'lettering guide'}`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, checked) => (isLabel ? drawLabel : drawGuide)(new Flow(doc, root), checked),
    onEveryPage: (doc, checked, page, pages) => {
      if (!isLabel) pageFoot(doc, `${checked.number}, lettering guide`, page, pages);
    },
  });
}
