import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { Party } from './data.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, shortened, type TextStyle } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { artifact, mm, quiet } from './sheet.ts';

/** 0.33 mm: four dots of a 300 dpi printer, eight of a 600 dpi one. */
export const plainModule = 0.33 * mm;
export const plainMargins = { top: 118, right: 45, bottom: 54, left: 45 };
const headTop = 36;
const barHeight = 36;

/** What stands over a paper of the shop without a QR code. */
export interface PlainHead {
  title: string;
  number: string;
  /** What the number is of, where it is not the order. */
  numberOf?: string;
  /** Copy and day. */
  made: string;
  shop: Party & { phone: string; email: string };
  /** Repeated on later pages. */
  about: string;
}

const titleStyle: TextStyle = { font: fonts.bold, size: 20 };
const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };

function bars(doc: Doc, number: string) {
  const width = code128Modules(number) * plainModule;
  return { x: doc.page.width - plainMargins.right - width, width };
}

/** Width left of the barcode and its light margin, points. */
function wordsWidth(doc: Doc, number: string): number {
  return bars(doc, number).x - code128QuietModules * plainModule - plainMargins.left - 8;
}

function drawBars(doc: Doc, number: string): void {
  const place = { x: bars(doc, number).x, y: headTop, height: barHeight, module: plainModule };
  drawCode128(doc, number, place);
}

function drawNumber(doc: Doc, number: string): void {
  const { x, width } = bars(doc, number);
  drawLines(doc, [number], { x, y: headTop + barHeight + 4, width, align: 'right' }, titleStyle);
}

function shopLines({ shop }: PlainHead): string[] {
  const contact = [shop.phone, shop.email].filter((text) => text !== '').join(' · ');
  return [shop.name, shop.lines.join(', '), contact].filter((text) => text !== '');
}

/** The head of page one is content. */
export function plainFirstHead(flow: Flow, data: PlainHead): void {
  const { doc, left } = flow;
  const { number } = data;
  const width = wordsWidth(doc, number);
  const y = headTop - 6;
  flow.tagged('H1', () => drawLines(doc, [data.title], { x: left, y }, titleStyle));
  let below = y + lineHeight(titleStyle);
  for (const text of [data.made, ...shopLines(data)]) {
    flow.tagged('P', () =>
      drawLines(doc, [shortened(doc, text, width, smallStyle)], { x: left, y: below }, smallStyle),
    );
    below += lineHeight(smallStyle);
  }
  const { x, width: wide } = bars(doc, number);
  flow.tagged('Figure', () => drawBars(doc, number), {
    alt: `Barcode of the ${data.numberOf ?? 'order number'} ${number}`,
    bbox: [x, headTop, x + wide, headTop + barHeight],
  });
  flow.tagged('P', () => drawNumber(doc, number));
}

/** On later pages the head repeats what page one says, so it is no content of its own. */
function laterHead(doc: Doc, data: PlainHead): void {
  const x = plainMargins.left;
  drawBars(doc, data.number);
  drawNumber(doc, data.number);
  const title = `${data.title}, continued`;
  drawLines(doc, [title], { x, y: headTop - 3 }, { ...titleStyle, size: 13 });
  const name = shortened(doc, data.about, wordsWidth(doc, data.number), smallStyle);
  drawLines(doc, [name], { x, y: headTop + 17 }, smallStyle);
}

export function plainHeadAndFoot(doc: Doc, data: PlainHead, page: number, pages: number): void {
  artifact(
    doc,
    () => {
      if (page > 1) laterHead(doc, data);
      const width = doc.page.width - plainMargins.left - plainMargins.right;
      const box = { x: plainMargins.left, y: doc.page.height - 40, width };
      drawLines(doc, [shortened(doc, data.shop.name, width * 0.6, smallStyle)], box, smallStyle);
      const place = `${data.number}  page ${page} of ${pages}`;
      drawLines(doc, [place], { ...box, align: 'right' }, smallStyle);
    },
    'Pagination',
  );
}
