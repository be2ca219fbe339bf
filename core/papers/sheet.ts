import PDFDocument from 'pdfkit';
import type { PaperPdf } from './data.ts';
import { fonts } from './fonts.ts';
import { printable } from './glyphs.ts';
import {
  type Doc,
  documentOptions,
  type Element,
  forbidScaling,
  glyphFontOf,
} from './pdfkit-gaps.ts';

/** Page sizes in points (1/72 in); A sizes per ISO 216. */
export const pageSizes = {
  letter: [612, 792],
  a4: [595.28, 841.89],
  '4x6': [288, 432],
  a6: [297.64, 419.53],
  /** 2 1/4 x 1 1/4 in, a usual size of label stock. */
  label: [162, 90],
} as const;

export const ink = '#22211E';
export const quiet = '#5A574F';
export const stopBrick = '#8C2F24';

/** Points per millimetre. */
export const mm = 72 / 25.4;

export interface SheetOptions<T extends object> {
  /** By name, or width and height in points. */
  size: keyof typeof pageSizes | readonly [number, number];
  margins: { top: number; right: number; bottom: number; left: number };
  title: string;
  printedAt: string;
  /** No "fit to page" in the print dialog. */
  trueSize: boolean;
  data: T;
  body: (doc: Doc, root: Element, data: T) => void;
  /** Heads and page numbers, once the number of pages is known. */
  onEveryPage?: (doc: Doc, data: T, page: number, pages: number) => void;
}

function openDocument<T extends object>(options: SheetOptions<T>): Doc {
  const at = new Date(options.printedAt);
  const settings = documentOptions({
    size: typeof options.size === 'string' ? pageSizes[options.size] : options.size,
    margins: options.margins,
    pdfVersion: '1.7',
    subset: 'PDF/UA',
    tagged: true,
    lang: 'en-US',
    displayTitle: true,
    bufferPages: true,
    font: fonts.regular,
    info: { Title: options.title, CreationDate: at, ModDate: at },
  });
  return new PDFDocument(settings);
}

/** Draws what is decoration to a reader of the structure: rules, grids, repeated page heads. */
export function artifact(
  doc: Doc,
  draw: () => void,
  type: 'Layout' | 'Pagination' = 'Layout',
): void {
  doc.markContent('Artifact', { type });
  draw();
  doc.endMarkedContent();
}

function collected(doc: Doc): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    doc.on('error', reject);
  });
}

/**
 * Makes one paper: checks every string against the font, draws the body, then the page heads.
 * @throws ShopError UNPRINTABLE, before anything is drawn
 */
export async function makeSheet<T extends object>(options: SheetOptions<T>): Promise<PaperPdf> {
  const doc = openDocument(options);
  const data = printable(options.data, glyphFontOf(doc));
  const bytes = collected(doc);
  const root = doc.struct('Document');
  doc.addStructure(root);
  options.body(doc, root, data);
  root.end();
  const { start, count } = doc.bufferedPageRange();
  for (let index = 0; index < count; index += 1) {
    doc.switchToPage(start + index);
    options.onEveryPage?.(doc, data, index + 1, count);
  }
  if (options.trueSize) forbidScaling(doc);
  doc.end();
  return {
    bytes: await bytes,
    pages: count,
    fileName: `${options.title}.pdf`,
    title: options.title,
  };
}
