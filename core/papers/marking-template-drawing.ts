import type { MarkingLimb, MarkingSide } from './marking-template-data.ts';
import { inch, type MarkingPage, yOf } from './marking-template-places.ts';
import { type Doc, dashPattern } from './pdfkit-gaps.ts';
import { ink, quiet } from './sheet.ts';

/** Points: the line that is cut to is the strongest one. */
export const edgeLine = { present: 0.5, new: 0.9, station: 0.35, hatch: 0.25, centre: 0.6 };
/** Distance between hatch lines along the limb, points. */
const hatchEvery = 3;
/** Station lines and joins end this far outside the limb, points. */
export const outside = 8;

interface Place {
  fromFadeIn: number;
  left: MarkingSide;
  right: MarkingSide;
}

function sideBetween(a: MarkingSide, b: MarkingSide, part: number): MarkingSide {
  return {
    presentIn: a.presentIn + (b.presentIn - a.presentIn) * part,
    newIn: a.newIn + (b.newIn - a.newIn) * part,
  };
}

/** The outline at a place, straight between its points; null before the first and past the last. */
function placeAt({ outline }: MarkingLimb, fromFadeIn: number): Place | null {
  const after = outline.findIndex((point) => point.fromFadeIn >= fromFadeIn);
  const b = outline[after];
  if (b === undefined) return null;
  const a = outline[after - 1];
  if (a === undefined) return b.fromFadeIn === fromFadeIn ? b : null;
  const part = (fromFadeIn - a.fromFadeIn) / (b.fromFadeIn - a.fromFadeIn);
  return {
    fromFadeIn,
    left: sideBetween(a.left, b.left, part),
    right: sideBetween(a.right, b.right, part),
  };
}

/** The outline as far as this page shows it, with a point on each end of the page. */
function shownOutline({ limb, fromIn, toIn }: MarkingPage): Place[] {
  const within = limb.outline.filter((at) => at.fromFadeIn > fromIn && at.fromFadeIn < toIn);
  return [placeAt(limb, fromIn), ...within, placeAt(limb, toIn)].filter((at) => at !== null);
}

const sides = [
  ['left', -1],
  ['right', 1],
] as const;

function edges(doc: Doc, page: MarkingPage, which: keyof MarkingSide): void {
  const points = shownOutline(page);
  for (const [side, sign] of sides) {
    points.forEach((point, i) => {
      const x = page.centre + sign * point[side][which] * inch;
      const y = yOf(page, point.fromFadeIn);
      if (i === 0) doc.moveTo(x, y);
      else doc.lineTo(x, y);
    });
    if (which === 'presentIn') doc.dash(5, { space: 3 });
    doc.lineWidth(which === 'newIn' ? edgeLine.new : edgeLine.present).stroke(ink);
    doc.undash();
  }
}

/** What comes off, hatched between the new edge and the present one. */
function hatch(doc: Doc, page: MarkingPage): void {
  const count = Math.floor(((page.toIn - page.fromIn) * inch) / hatchEvery);
  for (let i = 0; i <= count; i += 1) {
    const place = placeAt(page.limb, page.fromIn + (i * hatchEvery) / inch);
    if (place === null) continue;
    for (const [side, sign] of sides) {
      const { presentIn, newIn } = place[side];
      const off = (presentIn - newIn) * inch;
      if (off < 0.1) continue;
      const y = yOf(page, place.fromFadeIn);
      const x = page.centre + sign * newIn * inch;
      doc.moveTo(x, y).lineTo(x + sign * off, Math.max(page.top, y - off));
    }
  }
  doc.lineWidth(edgeLine.hatch).stroke(ink);
}

/** True centre: long and short dashes, as axes are drawn (ISO 128-2, line type 04.1). */
function centreLine(doc: Doc, page: MarkingPage): void {
  doc.moveTo(page.centre, page.bottom).lineTo(page.centre, page.top);
  doc.lineWidth(edgeLine.centre);
  dashPattern(doc, [14, 3, 3, 3]);
  doc.stroke(ink);
  doc.undash();
}

function stationLines(doc: Doc, page: MarkingPage): void {
  const reach = page.half + outside;
  const { stations } = page.limb;
  for (const { fromFadeIn } of [{ fromFadeIn: 0 }, ...stations]) {
    if (fromFadeIn < page.fromIn || fromFadeIn > page.toIn) continue;
    const y = yOf(page, fromFadeIn);
    doc.moveTo(page.centre - reach, y).lineTo(page.centre + reach, y);
    doc.lineWidth(fromFadeIn === 0 ? edgeLine.new : edgeLine.station).stroke(ink);
  }
}

/** Where the marks of a join stand, points from the left edge. */
export const joinMarks = ({ size }: MarkingPage) => [56, size[0] - 52] as const;

/** A line across the limb and a cross on either side; both sheets show them at the same place. */
function joins(doc: Doc, page: MarkingPage): void {
  const reach = page.half + outside;
  for (const { atIn } of page.joins) {
    const y = yOf(page, atIn);
    doc
      .moveTo(page.centre - reach, y)
      .lineTo(page.centre + reach, y)
      .dash(2, { space: 2 });
    doc.lineWidth(0.5).stroke(quiet);
    doc.undash();
    for (const x of joinMarks(page)) {
      doc.moveTo(x - 6, y).lineTo(x + 6, y);
      doc.moveTo(x, y - 6).lineTo(x, y + 6);
      doc.lineWidth(0.5).stroke(ink);
      doc.circle(x, y, 3.5).lineWidth(0.5).stroke(ink);
    }
  }
}

/** Everything of a limb that this page shows, at true size. */
export function drawLimb(doc: Doc, page: MarkingPage): void {
  hatch(doc, page);
  edges(doc, page, 'presentIn');
  edges(doc, page, 'newIn');
  centreLine(doc, page);
  stationLines(doc, page);
  joins(doc, page);
}
