import { fonts } from './fonts.ts';
import { artifact, type Doc, ink, quiet } from './sheet.ts';

type Parent = PDFKit.PDFStructureElement;

/** Text that flows down one column and over pages, each block tagged. */
export class Flow {
  readonly doc: Doc;
  readonly root: Parent;

  constructor(doc: Doc, root: Parent) {
    this.doc = doc;
    this.root = root;
  }

  get left(): number {
    return this.doc.page.margins.left;
  }

  get width(): number {
    const { width, margins } = this.doc.page;
    return width - margins.left - margins.right;
  }

  /** Starts a new page unless this many points are left on the page. */
  needs(points: number): void {
    const { doc } = this;
    if (doc.y + points > doc.page.height - doc.page.margins.bottom) doc.addPage();
  }

  tagged(tag: string, draw: () => void, alt?: string): void {
    this.root.add(this.doc.struct(tag, alt === undefined ? {} : { alt }, draw));
  }

  heading(text: string): void {
    this.needs(44);
    this.doc.y += 8;
    artifact(this.doc, () => {
      const y = this.doc.y;
      this.doc
        .moveTo(this.left, y)
        .lineTo(this.left + this.width, y)
        .lineWidth(0.5)
        .stroke(quiet);
    });
    this.doc.y += 4;
    this.tagged('H2', () => {
      this.doc.font(fonts.bold).fontSize(11).fillColor(ink);
      this.doc.text(text, this.left, this.doc.y, { width: this.width });
    });
    this.doc.y += 2;
  }

  para(
    text: string,
    options: { size?: number; bold?: boolean; color?: string; width?: number } = {},
  ): void {
    if (text.trim() === '') return;
    this.tagged('P', () => {
      this.doc
        .font(options.bold ? fonts.semibold : fonts.regular)
        .fontSize(options.size ?? 10)
        .fillColor(options.color ?? ink);
      this.doc.text(text, this.left, this.doc.y, { width: options.width ?? this.width });
    });
    this.doc.fillColor(ink);
  }

  /** A ruled table; empty cells are there to be written in by hand. */
  table(
    columns: readonly { head: string; width: number }[],
    rows: readonly (readonly string[])[],
  ): void {
    const { doc } = this;
    doc.font(fonts.regular).fontSize(9).fillColor(ink);
    this.needs(48);
    const total = columns.reduce((sum, column) => sum + column.width, 0);
    const border = { border: [0, 0, 0.5, 0], borderColor: quiet, padding: [4, 4, 4, 2] };
    doc.x = this.left;
    doc.table({
      structParent: this.root,
      columnStyles: columns.map((column) => ({ width: (column.width / total) * this.width })),
      defaultStyle: border,
      data: [
        columns.map((column) => ({
          text: column.head,
          type: 'TH',
          font: { src: fonts.semibold, size: 9 },
        })),
        ...rows.map((row) => row.map((cell) => cell)),
      ],
    } as unknown as PDFKit.Mixins.TableOptionsWithData);
    doc.x = this.left;
    doc.y += 4;
  }
}
