import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { ConsentFormData } from './consent-form.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, shortened, type TextStyle, wrap } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { artifact, mm, quiet } from './sheet.ts';

/** 0.33 mm: four dots of a 300 dpi printer, eight of a 600 dpi one. */
const module = 0.33 * mm;
export const consentMargins = { top: 118, right: 45, bottom: 54, left: 45 };
const headTop = 36;
const barHeight = 36;

const titleStyle: TextStyle = { font: fonts.bold, size: 20 };
const nameStyle: TextStyle = { font: fonts.semibold, size: 12 };
const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };

function bars(doc: Doc, number: string) {
  const width = code128Modules(number) * module;
  return { x: doc.page.width - consentMargins.right - width, width };
}

/** Width left of the barcode and its light margin, points. */
function wordsWidth(doc: Doc, number: string): number {
  return bars(doc, number).x - code128QuietModules * module - consentMargins.left - 8;
}

function drawBars(doc: Doc, number: string): void {
  drawCode128(doc, number, { x: bars(doc, number).x, y: headTop, height: barHeight, module });
}

function drawNumber(doc: Doc, number: string): void {
  const { x, width } = bars(doc, number);
  drawLines(doc, [number], { x, y: headTop + barHeight + 4, width, align: 'right' }, titleStyle);
}

/** The head of page one is content. */
export function firstConsentHead(flow: Flow, data: ConsentFormData): void {
  const { doc, left } = flow;
  const { number, shop } = data;
  const width = wordsWidth(doc, number);
  let y = headTop - 6;
  const put = (tag: string, text: string, style: TextStyle) => {
    const lines = wrap(doc, shortened(doc, text, width, style), width, style);
    flow.tagged(tag, () => drawLines(doc, lines, { x: left, y }, style));
    y += lineHeight(style);
  };
  put('H1', 'Consent', titleStyle);
  put('P', data.title, nameStyle);
  const contact = [shop.phone, shop.email].filter((text) => text !== '').join(' · ');
  for (const text of [
    `Customer copy, printed ${data.printedAt.slice(0, 10)}`,
    shop.name,
    contact,
  ]) {
    if (text !== '') put('P', text, smallStyle);
  }
  const { x, width: wide } = bars(doc, number);
  flow.tagged('Figure', () => drawBars(doc, number), {
    alt: `Barcode of the order number ${number}`,
    bbox: [x, headTop, x + wide, headTop + barHeight],
  });
  flow.tagged('P', () => drawNumber(doc, number));
}

/** Later pages repeat what page one says, and the hash on each binds them to the same text. */
export function consentHeadAndFoot(doc: Doc, data: ConsentFormData, page: number, pages: number) {
  artifact(
    doc,
    () => {
      const { left, right } = consentMargins;
      if (page > 1) {
        drawBars(doc, data.number);
        drawNumber(doc, data.number);
        const title = shortened(
          doc,
          `${data.title}, continued`,
          wordsWidth(doc, data.number),
          nameStyle,
        );
        drawLines(doc, [title], { x: left, y: headTop - 3 }, nameStyle);
      }
      const width = doc.page.width - left - right;
      const box = { x: left, y: doc.page.height - 40, width };
      drawLines(doc, [`Text ${data.textMark}`], box, smallStyle);
      const place = `${data.number}  page ${page} of ${pages}`;
      drawLines(doc, [place], { ...box, align: 'right' }, smallStyle);
    },
    'Pagination',
  );
}
