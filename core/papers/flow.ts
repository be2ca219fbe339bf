import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import { type Doc, type Element, type ElementOptions, element } from './pdfkit-gaps.ts';
import { artifact, quiet } from './sheet.ts';

export const bodyStyle: TextStyle = { font: fonts.regular, size: 10 };
/** Paragraphs of so many lines are not cut where a page ends. */
const wholeLines = 3;
const headingStyle: TextStyle = { font: fonts.bold, size: 12 };

/** One column that runs down the pages, each block tagged. Lengths in points. */
export class Flow {
  readonly doc: Doc;
  readonly root: Element;
  y: number;

  constructor(doc: Doc, root: Element) {
    this.doc = doc;
    this.root = root;
    this.y = doc.page.margins.top;
  }

  get left(): number {
    return this.doc.page.margins.left;
  }

  get width(): number {
    const { width, margins } = this.doc.page;
    return width - margins.left - margins.right;
  }

  get bottom(): number {
    return this.doc.page.height - this.doc.page.margins.bottom;
  }

  get room(): number {
    return this.bottom - this.y;
  }

  /** Points a whole page offers. */
  get pageRoom(): number {
    return this.bottom - this.doc.page.margins.top;
  }

  newPage(): void {
    this.doc.addPage();
    this.y = this.doc.page.margins.top;
  }

  /** Starts a new page unless this much is left, or no page could give it. */
  needs(points: number): void {
    const atTop = this.y <= this.doc.page.margins.top;
    if (points > this.room && !atTop) this.newPage();
  }

  /** Draws content of one structure element under the document, or under `parent`. */
  tagged(tag: string, draw: () => void, options: ElementOptions = {}, parent = this.root): void {
    const item = element(this.doc, tag, options);
    parent.add(item);
    item.add(draw);
    item.end();
  }

  rule(y: number): void {
    const { doc } = this;
    artifact(doc, () =>
      doc
        .moveTo(this.left, y)
        .lineTo(this.left + this.width, y)
        .lineWidth(0.5)
        .stroke(quiet),
    );
  }

  /** A section head with its rule; `keep` is how much of the section must stand on the same page. */
  heading(text: string, keep = 60): void {
    const lines = wrap(this.doc, text, this.width, headingStyle);
    const height = 22 + lines.length * lineHeight(headingStyle);
    this.needs(height + keep);
    const atTop = this.y <= this.doc.page.margins.top;
    if (!atTop) {
      this.y += 12;
      this.rule(this.y);
      this.y += 5;
    }
    this.tagged('H2', () => drawLines(this.doc, lines, { x: this.left, y: this.y }, headingStyle));
    this.y += lines.length * lineHeight(headingStyle) + 4;
  }

  /** Text over the column's width, broken between lines where a page ends. */
  para(text: string, style: TextStyle = bodyStyle, indent = 0): void {
    const lines = wrap(this.doc, text, this.width - indent, style);
    if (lines.length === 0) return;
    const step = lineHeight(style);
    this.needs((lines.length <= wholeLines ? lines.length : 2) * step);
    const item = element(this.doc, 'P');
    this.root.add(item);
    let at = 0;
    while (at < lines.length) {
      const rest = lines.length - at;
      const room = Math.max(1, Math.floor(this.room / step));
      // Of what is cut, two lines at least stand on either page.
      const fits = room === rest - 1 && room > 2 ? room - 1 : room;
      const piece = lines.slice(at, at + fits);
      const { y } = this;
      item.add(() => drawLines(this.doc, piece, { x: this.left + indent, y }, style));
      this.y += piece.length * step;
      at += piece.length;
      if (at < lines.length) this.newPage();
    }
    item.end();
    this.y += 3;
  }
}
