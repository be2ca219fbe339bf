import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { PaperPdf } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, shortened, type TextStyle } from './lines.ts';
import type { MarkingTemplateData } from './marking-template-data.ts';
import { drawLimb, joinMarks } from './marking-template-drawing.ts';
import { drawLabels } from './marking-template-labels.ts';
import { inch, type MarkingPage, pagesOfLimb, yOf } from './marking-template-places.ts';
import type { Doc, Element } from './pdfkit-gaps.ts';
import { ink, makeSheet, mm, quiet } from './sheet.ts';

/** 0.33 mm: four dots of a 300 dpi printer, eight of a 600 dpi one. */
export const markingModule = 0.33 * mm;
const margin = 36;
const headTop = 36;
const barHeight = 30;
/** Four inches, points: what both check bars measure. */
export const checkBar = 4 * inch;

const titleStyle: TextStyle = { font: fonts.bold, size: 18 };
const numberStyle: TextStyle = { font: fonts.bold, size: 14 };
const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const cautionStyle: TextStyle = { font: fonts.semibold, size: 8.5 };

function codes(flow: Flow, number: string, right: number): number {
  const width = code128Modules(number) * markingModule;
  const x = right - width;
  flow.tagged(
    'Figure',
    () =>
      drawCode128(flow.doc, number, { x, y: headTop, height: barHeight, module: markingModule }),
    {
      alt: `Barcode of the order number ${number}`,
      bbox: [x, headTop, right, headTop + barHeight],
    },
  );
  flow.tagged('P', () =>
    drawLines(
      flow.doc,
      [number],
      { x, y: headTop + barHeight + 3, width, align: 'right' },
      numberStyle,
    ),
  );
  return x - code128QuietModules * markingModule - margin - 6;
}

function headLines(data: MarkingTemplateData, page: MarkingPage): string[] {
  const { plan } = data;
  const joined =
    'Join: trim the sheet nearer the tip along its lower dashed line; lay it on the same letter.';
  return [
    `Marking-out template, page ${page.page} of ${page.pages} of this limb; tip up, left and right as you look at it.`,
    `Plan ${plan.version} of ${plan.acceptedOn}: ${plan.words}. Printed ${data.printedAt.slice(0, 10)}.`,
    data.bowLine,
    page.pages > 1 ? joined : '',
    ...(page.page === 1 ? data.uncut : []),
  ].filter((text) => text !== '');
}

function head(flow: Flow, data: MarkingTemplateData, page: MarkingPage, first: boolean): void {
  const { doc } = flow;
  const width = codes(flow, data.number, page.size[0] - margin);
  const title = `${page.limb.limb.toUpperCase()} LIMB, ${page.limb.face.toUpperCase()}`;
  const y = headTop - 8;
  flow.tagged(first ? 'H1' : 'H2', () => drawLines(doc, [title], { x: margin, y }, titleStyle));
  let at = y + lineHeight(titleStyle);
  for (const text of headLines(data, page)) {
    const line = shortened(doc, text, width, smallStyle);
    flow.tagged('P', () => drawLines(doc, [line], { x: margin, y: at }, smallStyle));
    at += lineHeight(smallStyle);
  }
}

/** A bar of four inches with a tick an inch, level or upright. */
function bar(doc: Doc, x: number, y: number, upright: boolean): void {
  if (upright) doc.moveTo(x, y).lineTo(x, y - checkBar);
  else doc.moveTo(x, y).lineTo(x + checkBar, y);
  doc.lineWidth(0.75).stroke(ink);
  for (let i = 0; i <= 4; i += 1) {
    const reach = i % 4 === 0 ? 6 : 3;
    if (upright) doc.moveTo(x - reach, y - i * inch).lineTo(x + reach, y - i * inch);
    else doc.moveTo(x + i * inch, y - reach).lineTo(x + i * inch, y + reach);
  }
  doc.lineWidth(0.5).stroke(ink);
}

function checkBars(flow: Flow, page: MarkingPage): void {
  const { doc } = flow;
  const [width, height] = page.size;
  const x = (width - checkBar) / 2;
  const y = height - 60;
  const upright = 42;
  flow.tagged('Figure', () => bar(doc, x, y, false), {
    alt: 'Check bar across the page, exactly 4 inches',
    bbox: [x - 1, y - 6, x + checkBar + 1, y + 6],
  });
  flow.tagged('Figure', () => bar(doc, upright, page.bottom, true), {
    alt: 'Check bar along the page, exactly 4 inches',
    bbox: [upright - 6, page.bottom - checkBar - 1, upright + 6, page.bottom + 1],
  });
  flow.tagged('P', () => {
    drawLines(doc, ['4 in'], { x: x + checkBar + 10, y: y - 6 }, cautionStyle);
    drawLines(doc, ['4 in'], { x: margin, y: page.bottom + 8 }, cautionStyle);
  });
}

function foot(flow: Flow, page: MarkingPage): void {
  const { doc } = flow;
  const y = page.size[1] - 50;
  const text = [
    'Print at 100 %; check that both bars measure 4 in before cutting. Cut to the strong line; leave the line.',
    'Centre = braced string line: mark it on the limb first, then lay the centre of this template on it.',
  ];
  flow.tagged('P', () => drawLines(doc, text, { x: margin, y }, cautionStyle));
}

function joinLetters(flow: Flow, page: MarkingPage): void {
  const [, right] = joinMarks(page);
  for (const { atIn, letter } of page.joins) {
    const y = yOf(page, atIn) - 6;
    flow.tagged('P', () => drawLines(flow.doc, [letter], { x: right + 8, y }, cautionStyle));
  }
}

function altOf({ limb, fromIn, toIn }: MarkingPage): string {
  const shown = limb.stations.filter((at) => at.fromFadeIn >= fromIn && at.fromFadeIn <= toIn);
  return `Outline of the ${limb.limb} limb at true size with ${shown.length} stations: centre line, present edges, new edges, hatched what comes off`;
}

function drawPage(doc: Doc, root: Element, data: MarkingTemplateData, page: MarkingPage): void {
  const flow = new Flow(doc, root);
  head(flow, data, page, page.page === 1 && page.limb === data.limbs[0]);
  const reach = page.half + 8;
  flow.tagged('Figure', () => drawLimb(doc, page), {
    alt: altOf(page),
    bbox: [page.centre - reach, page.top, page.centre + reach, page.bottom],
  });
  joinLetters(flow, page);
  drawLabels(flow, page);
  checkBars(flow, page);
  foot(flow, page);
}

/**
 * Limbs at true size to mark the new edges by, Letter or A4 in joined sheets or one page a limb.
 * @throws ShopError UNPRINTABLE where stations lie too close for their figures
 */
export function markingTemplatePdf(data: MarkingTemplateData): Promise<PaperPdf> {
  const margins = { top: 0, right: 0, bottom: 0, left: 0 };
  const firstSize = data.limbs.flatMap((limb) => pagesOfLimb(limb, data.format))[0]?.size;
  return makeSheet({
    size: firstSize ?? 'letter',
    margins,
    title: `${data.number} marking-out template`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, shown) => {
      const pages = shown.limbs.flatMap((limb) => pagesOfLimb(limb, shown.format));
      pages.forEach((page, i) => {
        if (i > 0) doc.addPage({ size: [...page.size], margins });
        drawPage(doc, root, shown, page);
      });
    },
  });
}
