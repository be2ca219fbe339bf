/** Papers as other programs read them: pages, text, structure, pictures and barcodes. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Canvas, createCanvas } from '@napi-rs/canvas';
import {
  getDocument,
  OPS,
  type PDFDocumentProxy,
  type PDFPageProxy,
} from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const require = createRequire(import.meta.url);

// Without its file the decoder would fetch one.
prepareZXingModule({
  overrides: {
    wasmBinary: new Uint8Array(readFileSync(require.resolve('zxing-wasm/reader/zxing_reader.wasm')))
      .buffer,
  },
});

export function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  // pdfjs takes the buffer it is given away from its owner.
  const data = new Uint8Array(bytes);
  return getDocument({ data, useSystemFonts: false, verbosity: 0 }).promise;
}

/** The same work for the same thing is done once, however many checks ask for it. */
export function once<Of extends object, Made>(make: (of: Of) => Promise<Made>) {
  const known = new WeakMap<Of, Promise<Made>>();
  return (of: Of): Promise<Made> => {
    const made = known.get(of) ?? make(of);
    known.set(of, made);
    return made;
  };
}

export const pagesOf = once(async (bytes: Uint8Array): Promise<PDFPageProxy[]> => {
  const document = await openPdf(bytes);
  return Promise.all(Array.from({ length: document.numPages }, (_, i) => document.getPage(i + 1)));
});

/** pdfjs answers dictionaries as maps, whatever its types say. */
export function entries(dictionary: unknown): Record<string, unknown> {
  return dictionary instanceof Map ? Object.fromEntries(dictionary) : {};
}

/** A piece of text with the box its letters fill, points from the top left of the page. */
export interface PlacedText {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Cap height and descender of Source Sans 3 as parts of the size, rounded outward. */
const above = 0.72;
const below = 0.22;

export const placedText = once(async (page: PDFPageProxy): Promise<PlacedText[]> => {
  const { height } = page.getViewport({ scale: 1 });
  const { items } = await page.getTextContent();
  return items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, , , size, left, base] = item.transform as number[];
    if (size === undefined || left === undefined || base === undefined) return [];
    const line = height - base;
    return {
      text: item.str,
      left,
      right: left + item.width,
      top: line - size * above,
      bottom: line + size * below,
    };
  });
});

export async function textOf(bytes: Uint8Array): Promise<string> {
  const pages = await pagesOf(bytes);
  const texts = await Promise.all(pages.map(placedText));
  return texts
    .flat()
    .map((item) => item.text)
    .join(' ');
}

/** A page drawn at the given dots per inch. */
export async function raster(page: PDFPageProxy, dpi: number): Promise<Canvas> {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const canvas = createCanvas(Math.ceil(viewport.width), Math.ceil(viewport.height));
  await page.render({ canvas: canvas as never, viewport }).promise;
  return canvas;
}

export interface DecodedCode {
  format: string;
  text: string;
  /** Where it stands on the page, points from the top left. */
  box: { left: number; right: number; top: number; bottom: number };
}

/**
 * Barcodes on a drawn page, read by an independent decoder that does no more than a plain scanner
 * held straight: upright, dark on light, at no more dots than the coarsest printer lays down.
 */
export async function decode(page: PDFPageProxy, dpi = 203): Promise<DecodedCode[]> {
  const canvas = await raster(page, dpi);
  const image = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
  const found = await readBarcodes(image as ImageData, {
    formats: ['Code128', 'QRCode'],
    tryHarder: true,
    tryRotate: false,
    tryInvert: false,
    tryDownscale: false,
    maxNumberOfSymbols: 8,
  });
  return found.map(({ format, text, position }) => {
    const corners = [
      position.topLeft,
      position.topRight,
      position.bottomLeft,
      position.bottomRight,
    ];
    const xs = corners.map((corner) => (corner.x * 72) / dpi);
    const ys = corners.map((corner) => (corner.y * 72) / dpi);
    return {
      format,
      text,
      box: {
        left: Math.min(...xs),
        right: Math.max(...xs),
        top: Math.min(...ys),
        bottom: Math.max(...ys),
      },
    };
  });
}

/** Dark stretches along a level line across the page, points from the left edge. */
export async function darkRuns(
  page: PDFPageProxy,
  y: number,
  dpi: number,
): Promise<{ from: number; to: number }[]> {
  const canvas = await raster(page, dpi);
  const row = Math.round((y * dpi) / 72);
  const { data } = canvas.getContext('2d').getImageData(0, row, canvas.width, 1);
  const runs: { from: number; to: number }[] = [];
  let from: number | null = null;
  for (let x = 0; x <= canvas.width; x += 1) {
    const dark = x < canvas.width && (data[x * 4] ?? 255) < 128;
    if (dark && from === null) from = x;
    if (!dark && from !== null) {
      runs.push({ from: (from * 72) / dpi, to: (x * 72) / dpi });
      from = null;
    }
  }
  return runs;
}

/** A node of the structure tree. */
export interface TreeNode {
  role: string;
  alt: string | null;
  children: TreeNode[];
}

function nodeOf(value: unknown): TreeNode[] {
  if (typeof value !== 'object' || value === null || !('role' in value)) return [];
  const children = 'children' in value && Array.isArray(value.children) ? value.children : [];
  const alt = 'alt' in value && typeof value.alt === 'string' ? value.alt : null;
  return [{ role: String(value.role), alt, children: children.flatMap(nodeOf) }];
}

/** The structure tree, one root a page. */
export async function structureOf(bytes: Uint8Array): Promise<TreeNode[]> {
  const pages = await pagesOf(bytes);
  const trees = await Promise.all(pages.map((page) => page.getStructTree()));
  return trees.flatMap(nodeOf);
}

function flat(nodes: readonly TreeNode[]): TreeNode[] {
  return nodes.flatMap((node) => [node, ...flat(node.children)]);
}

/** Roles in reading order, over all pages. */
export async function rolesOf(bytes: Uint8Array): Promise<string[]> {
  return flat(await structureOf(bytes)).map((node) => node.role);
}

/** Alternative texts of the figures on the pages. */
export async function figureTexts(bytes: Uint8Array): Promise<string[]> {
  return flat(await structureOf(bytes)).flatMap((node) => node.alt ?? []);
}

const opens = new Set([OPS.beginMarkedContent, OPS.beginMarkedContentProps]);
const draws = new Set([OPS.showText, OPS.showSpacedText, OPS.constructPath, OPS.paintImageXObject]);

/** How many drawing operators stand neither in a structure element nor in an artifact. */
export async function untaggedDrawing(page: PDFPageProxy): Promise<number> {
  const { fnArray } = await page.getOperatorList();
  let depth = 0;
  let untagged = 0;
  for (const operator of fnArray) {
    if (opens.has(operator)) depth += 1;
    else if (operator === OPS.endMarkedContent) depth -= 1;
    else if (draws.has(operator) && depth === 0) untagged += 1;
  }
  return untagged;
}
