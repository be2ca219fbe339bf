/**
 * What pdfkit 0.20 can do and its published types do not say. Every cast the papers need is here.
 */
export type Doc = PDFKit.PDFDocument;
export type Element = PDFKit.PDFStructureElement;

/** What of a font file the papers need to know. */
export interface GlyphFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** Document settings with the PDF/UA subset, which the types do not list. */
export function documentOptions(settings: {
  size: readonly [number, number];
  subset: 'PDF/UA';
  [name: string]: unknown;
}): PDFKit.PDFDocumentOptions {
  return settings as unknown as PDFKit.PDFDocumentOptions;
}

/** The font in use, asked for single characters. */
export function glyphFontOf(doc: Doc): GlyphFont {
  return (doc as unknown as { _font: { font: GlyphFont } })._font.font;
}

export interface ElementOptions {
  alt?: string;
  /** Upper left and lower right corner, points from the top left of the page. */
  bbox?: [number, number, number, number];
  scope?: 'Row' | 'Column';
}

/** A structure element; the types know neither `bbox` nor `scope`. */
export function element(doc: Doc, tag: string, options: ElementOptions = {}): Element {
  return doc.struct(tag, options as PDFKit.Mixins.StructureElementOptions);
}

/** Tells the print dialog to keep true size instead of fitting to the page. */
export function forbidScaling(doc: Doc): void {
  const root = (doc as unknown as { _root: { data: { ViewerPreferences: { data: object } } } })
    ._root;
  Object.assign(root.data.ViewerPreferences.data, { PrintScaling: 'None' });
}

/** Dashes and gaps in turn, points; the types know one dash only. */
export function dashPattern(doc: Doc, lengths: readonly number[]): void {
  (doc as unknown as { dash(lengths: readonly number[]): void }).dash(lengths);
}
