import { decimal } from '../../shared/measure.ts';
import { type StripFacts, type StripMark, weightStrip } from '../../shared/weight-strip.ts';
import { type Doc, ink, quiet } from './sheet.ts';

interface Box {
  x: number;
  y: number;
  width: number;
}

const height = 26;

function drawMark(doc: Doc, mark: StripMark, box: Box, axis: number): void {
  const x = box.x + mark.at * box.width;
  const to = box.x + (mark.to ?? mark.at) * box.width;
  switch (mark.kind) {
    case 'arrival':
      doc.circle(x, axis, 3.5).lineWidth(1.2).fillAndStroke('#FFFFFF', ink);
      return;
    case 'now':
      doc.circle(x, axis, 3.5).fill(ink);
      return;
    case 'target':
      doc
        .moveTo(x, axis - 8)
        .lineTo(x, axis + 8)
        .lineWidth(1.6)
        .stroke(ink);
      return;
    case 'stop-band':
      doc
        .moveTo(x + 2, axis - 6)
        .lineTo(x, axis - 6)
        .lineTo(x, axis + 6)
        .lineTo(x + 2, axis + 6);
      doc
        .moveTo(to - 2, axis - 6)
        .lineTo(to, axis - 6)
        .lineTo(to, axis + 6)
        .lineTo(to - 2, axis + 6);
      doc.lineWidth(1).stroke(ink);
      return;
    case 'forecast':
      doc
        .moveTo(x, axis)
        .lineTo(to, axis - 5)
        .lineTo(to, axis + 5)
        .closePath()
        .fill('#B9CFCB');
  }
}

/** Draws the strip and answers the height it used. Its words go beside it as text. */
export function drawWeightStrip(doc: Doc, facts: StripFacts, box: Box): number {
  const strip = weightStrip(facts);
  const axis = box.y + 10;
  doc
    .moveTo(box.x, axis)
    .lineTo(box.x + box.width, axis)
    .lineWidth(0.5)
    .stroke(quiet);
  for (const tick of strip.ticks) {
    const x = box.x + tick * box.width;
    doc
      .moveTo(x, axis)
      .lineTo(x, axis + 3)
      .lineWidth(0.5)
      .stroke(quiet);
  }
  for (const mark of strip.marks) drawMark(doc, mark, box, axis);
  doc.fontSize(7).fillColor(quiet);
  doc.text(decimal(strip.minLbf), box.x, axis + 6, { lineBreak: false });
  doc.text(`${decimal(strip.maxLbf)} lb`, box.x + box.width - 40, axis + 6, {
    width: 40,
    align: 'right',
    lineBreak: false,
  });
  doc.fillColor(ink);
  return height;
}
