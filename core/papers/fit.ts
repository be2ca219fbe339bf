import { ShopError } from '../../shared/errors.ts';
import { drawLines, lineHeight, type TextStyle, wrap } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';

/** A block of text in the largest size that fits. */
export interface FittedText {
  parts: { lines: string[]; style: TextStyle }[];
  /** Points. */
  height: number;
}

export interface FitRequest {
  /** Each part begins a line of its own. */
  parts: readonly { text: string; font: string }[];
  width: number;
  height: number;
  /** Points, largest first. */
  sizes: readonly number[];
  /** What the refusal calls this text. */
  name: string;
  /** What it calls the paper. */
  paper: string;
}

/**
 * Nothing on a tag is cut off: a text that fits in no size is refused.
 * @throws ShopError UNPRINTABLE
 */
export function fitText(doc: Doc, request: FitRequest): FittedText {
  for (const size of request.sizes) {
    const parts = request.parts.map(({ text, font }) => {
      const style = { font, size };
      return { lines: wrap(doc, text, request.width, style), style };
    });
    const count = parts.reduce((sum, part) => sum + part.lines.length, 0);
    const height = count * lineHeight({ font: '', size });
    if (height <= request.height) return { parts, height };
  }
  throw new ShopError(
    'UNPRINTABLE',
    `The ${request.name} is too long for the ${request.paper}: shorten it.`,
    { field: request.name },
  );
}

export function drawFitted(doc: Doc, fitted: FittedText, x: number, y: number): void {
  let at = y;
  for (const { lines, style } of fitted.parts) {
    drawLines(doc, lines, { x, y: at }, style);
    at += lines.length * lineHeight(style);
  }
}
