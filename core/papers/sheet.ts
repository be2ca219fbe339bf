import PDFDocument from 'pdfkit';
import type { PaperPdf } from './data.ts';
import { fonts } from './fonts.ts';
import { type GlyphFont, refuseUnprintable } from './glyphs.ts';

export type Doc = PDFKit.PDFDocument;

/** Page sizes in points (1/72 in). */
export const pageSizes = {
  letter: [612, 792],
  a4: [595.28, 841.89],
  '4x6': [288, 432],
  a6: [297.64, 419.53],
} as const;

export const ink = '#22211E';
export const quiet = '#5A574F';
export const stopBrick = '#8C2F24';

export interface SheetOptions {
  size: keyof typeof pageSizes;
  margins: { top: number; right: number; bottom: number; left: number };
  title: string;
  fileName: string;
  printedAt: string;
  /** True to scale on the printer: no "fit to page". */
  trueSize: boolean;
  data: object;
}

function openDocument(options: SheetOptions): Doc {
  const settings = {
    size: [...pageSizes[options.size]],
    margins: options.margins,
    pdfVersion: '1.7',
    subset: 'PDF/UA',
    tagged: true,
    lang: 'en-US',
    displayTitle: true,
    bufferPages: true,
    font: fonts.regular,
    info: {
      Title: options.title,
      CreationDate: new Date(options.printedAt),
      ModDate: new Date(options.printedAt),
    },
  };
  // pdfkit's types do not list the PDF/UA subset that its code has.
  return new PDFDocument(settings as unknown as PDFKit.PDFDocumentOptions);
}

function glyphFontOf(doc: Doc): GlyphFont {
  return (doc as unknown as { _font: { font: GlyphFont } })._font.font;
}

function forbidScaling(doc: Doc): void {
  const root = (
    doc as unknown as { _root: { data: { ViewerPreferences?: { data?: object } & object } } }
  )._root;
  const preferences = root.data.ViewerPreferences as { data?: Record<string, unknown> } | undefined;
  if (preferences?.data) preferences.data.PrintScaling = 'None';
  else root.data.ViewerPreferences = { ...(preferences ?? {}), PrintScaling: 'None' } as never;
}

/** Draws what is decoration to a reader of the structure: rules, grids, repeated page heads. */
export function artifact(doc: Doc, draw: () => void): void {
  doc.markContent('Artifact', { type: 'Layout' });
  draw();
  doc.endMarkedContent();
}

/**
 * Makes one paper: checks every string against the font, then draws with `body`,
 * then `onEveryPage` for heads and page numbers.
 * @throws ShopError UNPRINTABLE
 */
export async function makeSheet(
  options: SheetOptions,
  body: (doc: Doc, root: PDFKit.PDFStructureElement) => void,
  onEveryPage: (doc: Doc, page: number, pages: number) => void = () => {},
): Promise<PaperPdf> {
  const doc = openDocument(options);
  refuseUnprintable(options.data, glyphFontOf(doc));
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve);
    doc.on('error', reject);
  });
  doc.fillColor(ink).fontSize(10);
  const root = doc.struct('Document');
  doc.addStructure(root);
  body(doc, root);
  root.end();
  const { start, count } = doc.bufferedPageRange();
  for (let page = start; page < start + count; page += 1) {
    doc.switchToPage(page);
    onEveryPage(doc, page - start + 1, count);
  }
  if (options.trueSize) forbidScaling(doc);
  doc.end();
  await ended;
  return {
    bytes: Buffer.concat(chunks),
    pages: count,
    fileName: options.fileName,
    title: options.title,
  };
}
