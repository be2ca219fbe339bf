import type { Doc } from './pdfkit-gaps.ts';
import { ink, stopBrick } from './sheet.ts';

/** Solid octagon: stop. Always beside words. Lengths in points. */
export function octagon(doc: Doc, x: number, y: number, size: number): void {
  // Corner cut of a regular octagon in its square: 1 / (2 + sqrt 2).
  const cut = size / (2 + Math.SQRT2);
  doc
    .moveTo(x + cut, y)
    .lineTo(x + size - cut, y)
    .lineTo(x + size, y + cut)
    .lineTo(x + size, y + size - cut)
    .lineTo(x + size - cut, y + size)
    .lineTo(x + cut, y + size)
    .lineTo(x, y + size - cut)
    .lineTo(x, y + cut)
    .closePath()
    .fill(stopBrick);
}

/** Open triangle: attention. Always beside words. */
export function triangle(doc: Doc, x: number, y: number, size: number): void {
  doc
    .moveTo(x + size / 2, y)
    .lineTo(x + size, y + size * 0.9)
    .lineTo(x, y + size * 0.9)
    .closePath()
    .lineWidth(1)
    .stroke(ink);
}
