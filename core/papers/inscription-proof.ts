import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { linesOnLimb, type ProofLimb } from './inscription-proof-limb.ts';
import type { LetteredLines } from './inscription-proof-lines.ts';
import { checkBar, pageFoot, proofHead, proofMargins } from './inscription-proof-parts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { artifact, ink, makeSheet } from './sheet.ts';
import { drawTable } from './table.ts';

/** What the customer is shown before anything is written on the bow. */
export interface InscriptionProofData extends LetteredLines {
  format: 'letter' | 'a4';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  printedOn: string;
  number: string;
  shop: Party;
  /** null: the shop's own bow. */
  customerName: string | null;
  bowLine: string;
  /** Where and how, as name and value. */
  facts: [string, string][];
  oldMarking: string;
  limb: ProofLimb | null;
  /** Where the approval stands, in one sentence. */
  answer: string;
}

const boxStyle: TextStyle = { font: fonts.semibold, size: 11 };
const penHeight = 22;

/** A box to tick and what ticking it means. */
function tickBox(flow: Flow, words: string): void {
  const size = 11;
  const lines = wrap(flow.doc, words, flow.width - 20, boxStyle);
  flow.needs(lines.length * lineHeight(boxStyle) + 8);
  const { doc, left, y } = flow;
  artifact(doc, () =>
    doc
      .rect(left, y + 2, size, size)
      .lineWidth(0.9)
      .stroke(ink),
  );
  flow.tagged('P', () => drawLines(doc, lines, { x: left + 20, y }, boxStyle));
  flow.y += lines.length * lineHeight(boxStyle) + 7;
}

function answers(flow: Flow, data: InscriptionProofData): void {
  flow.heading('Your answer', 160);
  flow.para(data.answer);
  flow.y += 3;
  tickBox(flow, 'Approved, word for word, as it stands above.');
  tickBox(flow, 'Declined. Please change it as follows:');
  for (let blank = 0; blank < 2; blank += 1) {
    flow.y += penHeight;
    flow.rule(flow.y);
  }
  drawTable(flow, {
    columns: [
      { head: 'Name', share: 2 },
      { head: 'Signature', share: 3 },
      { head: 'Date', share: 1 },
    ],
    rows: [['', '', '']],
    rowHeight: penHeight,
  });
  flow.y += 6;
  flow.para(
    'Nothing is written on the bow before you answer: no reply is no approval. Lettering under a finish cannot be taken off without taking the finish off.',
  );
}

function body(flow: Flow, data: InscriptionProofData): void {
  proofHead(flow, {
    title: 'Inscription proof',
    number: data.number,
    shop: data.shop,
    printedOn: data.printedOn,
  });
  const whose = data.customerName === null ? "The shop's own bow" : `For ${data.customerName}`;
  flow.para(`${whose}: ${data.bowLine}`);
  flow.heading('Exactly these lines, at true size');
  linesOnLimb(flow, data, data.limb);
  checkBar(flow);
  flow.heading('Where and how');
  drawTable(flow, {
    columns: [
      { head: '', share: 1, names: true },
      { head: '', share: 3 },
    ],
    rows: [
      ...data.facts,
      ['Old marking, kept', data.oldMarking.trim() === '' ? 'none on record' : data.oldMarking],
    ],
    plain: true,
  });
  answers(flow, data);
}

/**
 * The proof for the customer, Letter or A4, never scaled by the print dialog.
 * @throws ShopError UNPRINTABLE, also where a line is longer than the paper is wide
 */
export function inscriptionProofPdf(data: InscriptionProofData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: proofMargins,
    title: `${data.number} inscription proof`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, checked) => body(new Flow(doc, root), checked),
    onEveryPage: (doc, checked, page, pages) =>
      pageFoot(doc, `${checked.number}, inscription proof, ${checked.shop.name}`, page, pages),
  });
}
