import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const require = createRequire(import.meta.url);

prepareZXingModule({
  overrides: {
    wasmBinary: new Uint8Array(readFileSync(require.resolve('zxing-wasm/reader/zxing_reader.wasm')))
      .buffer,
  },
});

/** The pages of a PDF as another program reads them. */
export async function pagesOf(bytes: Uint8Array): Promise<PDFPageProxy[]> {
  const document = await getDocument({
    data: new Uint8Array(bytes),
    useSystemFonts: false,
    verbosity: 0,
  }).promise;
  return Promise.all(Array.from({ length: document.numPages }, (_, i) => document.getPage(i + 1)));
}

export async function textOf(bytes: Uint8Array): Promise<string> {
  const pages = await pagesOf(bytes);
  const texts = await Promise.all(pages.map((page) => page.getTextContent()));
  return texts
    .flatMap((text) => text.items.map((item) => ('str' in item ? item.str : '')))
    .join(' ');
}

/** A page drawn at the given dots per inch. */
export async function raster(page: PDFPageProxy, dpi: number) {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
  await page.render({ canvas: canvas as never, viewport }).promise;
  return canvas;
}

export interface DecodedCode {
  format: string;
  text: string;
  /** Width of the symbol on the page, points. */
  widthPt: number;
}

/** Barcodes on a drawn page, read by an independent decoder. */
export async function decode(page: PDFPageProxy, dpi = 300): Promise<DecodedCode[]> {
  const canvas = await raster(page, dpi);
  const image = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const found = await readBarcodes(
    {
      data: new Uint8ClampedArray(image.data),
      width: canvas.width,
      height: canvas.height,
      colorSpace: 'srgb',
    } as ImageData,
    { formats: ['Code128', 'QRCode'], tryHarder: true, maxNumberOfSymbols: 8 },
  );
  return found.map((code) => ({
    format: code.format,
    text: code.text,
    widthPt: ((code.position.topRight.x - code.position.topLeft.x) * 72) / dpi,
  }));
}

/** Roles of the structure tree, in reading order, over all pages. */
export async function rolesOf(bytes: Uint8Array): Promise<string[]> {
  const pages = await pagesOf(bytes);
  const trees = await Promise.all(pages.map((page) => page.getStructTree()));
  const roles = (node: unknown): string[] => {
    if (typeof node !== 'object' || node === null || !('role' in node)) return [];
    const children = 'children' in node && Array.isArray(node.children) ? node.children : [];
    return [String(node.role), ...children.flatMap(roles)];
  };
  return trees.flatMap(roles);
}

/** Alternative texts of the figures on the pages. */
export async function figureTexts(bytes: Uint8Array): Promise<string[]> {
  const pages = await pagesOf(bytes);
  const trees = await Promise.all(pages.map((page) => page.getStructTree()));
  const texts = (node: unknown): string[] => {
    if (typeof node !== 'object' || node === null) return [];
    const alt = 'alt' in node && typeof node.alt === 'string' ? [node.alt] : [];
    const children = 'children' in node && Array.isArray(node.children) ? node.children : [];
    return [...alt, ...children.flatMap(texts)];
  };
  return trees.flatMap(texts);
}
