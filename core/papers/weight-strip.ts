import { decimal } from '../../shared/measure.ts';
import { type StripFacts, type StripMark, weightStrip } from '../../shared/weight-strip.ts';
import { fonts } from './fonts.ts';
import { drawLines } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { ink, quiet } from './sheet.ts';

/** Where the strip stands, points; `y` is its top edge. */
export interface StripBox {
  x: number;
  y: number;
  width: number;
}

/** Height the strip takes, points. */
export const weightStripHeight = 35;
const axisDown = 15;
const light = '#C9DBD8';

function bracket(doc: Doc, from: number, to: number, axis: number): void {
  for (const [x, turn] of [
    [from, 2.5],
    [to, -2.5],
  ] as const) {
    doc
      .moveTo(x + turn, axis - 7)
      .lineTo(x, axis - 7)
      .lineTo(x, axis + 7)
      .lineTo(x + turn, axis + 7);
  }
  doc.lineWidth(1.1).stroke(ink);
}

function drawMark(doc: Doc, mark: StripMark, box: StripBox, axis: number): void {
  const place = (at: number) => box.x + at * box.width;
  const x = place(mark.at);
  const to = place(mark.to ?? mark.at);
  const mid = place(mark.mid ?? mark.at);
  switch (mark.kind) {
    case 'arrival':
      doc.circle(x, axis, 4).lineWidth(1.4).fillAndStroke('#FFFFFF', ink);
      return;
    case 'now':
      doc.circle(x, axis, 3.4).fill(ink);
      return;
    case 'target':
      doc
        .moveTo(x, axis - 10)
        .lineTo(x, axis + 10)
        .lineWidth(1.8)
        .stroke(ink);
      return;
    case 'stop-band':
      bracket(doc, x, to, axis);
      return;
    case 'forecast':
      // The wedge hangs over the band and points at the forecast itself.
      doc
        .moveTo(x, axis - 13)
        .lineTo(to, axis - 13)
        .lineTo(mid, axis)
        .closePath()
        .lineWidth(0.5)
        .fillAndStroke(light, quiet);
  }
}

/** Draws the strip; its words go beside it as text. */
export function drawWeightStrip(doc: Doc, facts: StripFacts, box: StripBox): void {
  const strip = weightStrip(facts);
  const axis = box.y + axisDown;
  doc.moveTo(box.x, axis).lineTo(box.x + box.width, axis);
  for (const tick of strip.ticks) {
    const x = box.x + tick * box.width;
    doc.moveTo(x, axis).lineTo(x, axis + 3);
  }
  doc.lineWidth(0.5).stroke(quiet);
  for (const mark of strip.marks) drawMark(doc, mark, box, axis);
  const small = { font: fonts.regular, size: 8, color: quiet };
  const end = { x: box.x, y: axis + 9, width: box.width };
  drawLines(doc, [decimal(strip.minLbf)], end, small);
  drawLines(doc, [`${decimal(strip.maxLbf)} lb`], { ...end, align: 'right' }, small);
}
