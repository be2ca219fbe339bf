import { type Signature, signatureBox } from '../../shared/signatures.ts';
import { consentHeadAndFoot, consentMargins, firstConsentHead } from './consent-form-head.ts';
import type { PaperPdf, Party } from './data.ts';
import { bodyStyle, Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { ink, makeSheet, quiet } from './sheet.ts';
import { drawTable } from './table.ts';

export interface ConsentAnswerLine {
  answer: 'granted' | 'declined' | 'withdrawn';
  /** Answer, person, day, way, contact and the words agreed, as label and value. */
  facts: [string, string][];
  signature: Signature | null;
}

export interface ConsentFormData {
  format: 'letter' | 'a4';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  customer: string;
  bow: string;
  /** What kind of consent it is. */
  title: string;
  asked: string;
  /** Exactly as asked. */
  text: string;
  /** First digits of the SHA-256 of the text, in groups. */
  textMark: string;
  /** What became of it, where it no longer waits; empty where it does. */
  state: string;
  answers: ConsentAnswerLine[];
  /** How to answer, to withdraw, and to get a copy on paper. */
  notes: string[];
}

const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const stateStyle: TextStyle = { font: fonts.semibold, size: 10 };
/** Points an inch. */
const inch = 72;

function about(flow: Flow, data: ConsentFormData): void {
  drawTable(flow, {
    plain: true,
    columns: [
      { head: '', share: 16, names: true },
      { head: '', share: 84 },
    ],
    rows: [
      ['For', data.customer],
      ['Bow', data.bow],
      ['Asked', data.asked],
    ],
  });
}

/** Lines and blank lines as they were written. */
function wordForWord(flow: Flow, text: string): void {
  for (const line of text.split('\n')) {
    if (line.trim() === '') flow.y += lineHeight(bodyStyle) / 2;
    else flow.para(line);
  }
}

/** A box to tick with its words beside it. */
function box(flow: Flow, words: string): void {
  const { doc, left } = flow;
  flow.needs(20);
  const { y } = flow;
  flow.tagged('P', () => {
    doc
      .rect(left, y + 1, 11, 11)
      .lineWidth(0.75)
      .stroke(ink);
    drawLines(doc, [words], { x: left + 20, y }, bodyStyle);
  });
  flow.y += 20;
}

/** A line to write on, what belongs there under it. */
function blank(flow: Flow, label: string, from: number, to: number): void {
  const { doc, left, width, y } = flow;
  const x = left + width * from;
  flow.tagged('P', () => {
    doc
      .moveTo(x, y)
      .lineTo(left + width * to, y)
      .lineWidth(0.5)
      .stroke(ink);
    drawLines(doc, [label], { x, y: y + 3 }, smallStyle);
  });
}

function toSign(flow: Flow): void {
  flow.heading('Your answer', 130);
  box(flow, 'I agree to the text above.');
  box(flow, 'I do not agree.');
  flow.y += 30;
  blank(flow, 'Signature', 0, 0.44);
  blank(flow, 'Name in full', 0.48, 0.8);
  blank(flow, 'Date', 0.84, 1);
  flow.y += lineHeight(smallStyle) + 10;
}

function drawnSignature(flow: Flow, signature: Signature): void {
  if (signature.manner === 'typed') {
    flow.para(`Signed by typing the full name: ${signature.name} ("${signature.intent}")`);
    return;
  }
  const height = signatureBox.heightIn * inch;
  flow.needs(height + 20);
  const { doc, left, y } = flow;
  const draw = () => {
    doc.lineWidth(1.2).lineCap('round').lineJoin('round').strokeColor(ink);
    for (const points of signature.strokes) {
      for (const [i, [x, down]] of points.entries()) {
        const at = [left + x * inch, y + down * inch] as const;
        if (i === 0) doc.moveTo(...at);
        // A point alone is a dot: a line of no length with a round cap.
        if (i > 0 || points.length === 1) doc.lineTo(...at);
      }
      doc.stroke();
    }
  };
  const width = signatureBox.widthIn * inch;
  flow.tagged('Figure', draw, {
    alt: 'Signature drawn on the screen',
    bbox: [left, y, left + width, y + height],
  });
  flow.y += height;
  flow.rule(flow.y);
  flow.y += 3;
  flow.para(`Signed on the screen with the words "${signature.intent}"`, smallStyle);
}

function answerRecord(flow: Flow, { facts, signature }: ConsentAnswerLine): void {
  drawTable(flow, {
    plain: true,
    columns: [
      { head: '', share: 22, names: true },
      { head: '', share: 78 },
    ],
    rows: facts,
  });
  if (signature !== null) drawnSignature(flow, signature);
  flow.y += 6;
}

/**
 * What a customer is asked, word for word, to be signed; or, once answered, with its answers.
 * @throws ShopError UNPRINTABLE
 */
export function consentFormPdf(data: ConsentFormData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: consentMargins,
    title: `${data.number} consent ${data.textMark.replaceAll(' ', '').slice(0, 8)}`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => {
      const flow = new Flow(doc, root);
      firstConsentHead(flow, shown);
      about(flow, shown);
      flow.heading('What is asked, word for word');
      wordForWord(flow, shown.text);
      flow.para(`Mark of this text (SHA-256): ${shown.textMark}`, smallStyle);
      if (shown.state !== '') flow.para(shown.state, stateStyle);
      if (shown.answers.length === 0) toSign(flow);
      else {
        flow.heading('The answer as recorded');
        for (const answer of shown.answers) answerRecord(flow, answer);
      }
      flow.heading('Answering and taking back');
      for (const each of shown.notes) flow.para(each);
    },
    onEveryPage: consentHeadAndFoot,
  });
}
