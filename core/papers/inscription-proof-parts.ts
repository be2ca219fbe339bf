import { code128Modules, code128QuietModules, drawCode128 } from './code128.ts';
import type { Party } from './data.ts';
import type { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, shortened, type TextStyle } from './lines.ts';
import type { Doc } from './pdfkit-gaps.ts';
import { artifact, mm, quiet } from './sheet.ts';

export const proofMargins = { top: 100, right: 45, bottom: 54, left: 45 };
const headTop = 36;
const barHeight = 32;
/** 0.33 mm: four dots of a 300 dpi printer. */
const barModule = 0.33 * mm;
/** Four inches: long enough to show a print scaled by one in a hundred on any rule. */
export const checkBarPt = 288;

const titleStyle: TextStyle = { font: fonts.bold, size: 18 };
const numberStyle: TextStyle = { font: fonts.bold, size: 16 };
const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };

export interface ProofHead {
  title: string;
  number: string;
  shop: Party;
  printedOn: string;
}

/** Title and shop left, number and barcode top right, as on every paper of the shop. */
export function proofHead(flow: Flow, head: ProofHead): void {
  const { doc, left } = flow;
  const right = left + flow.width;
  const barsX = right - code128Modules(head.number) * barModule;
  const words = barsX - code128QuietModules * barModule - left;
  flow.tagged('H1', () => drawLines(doc, [head.title], { x: left, y: headTop - 6 }, titleStyle));
  let y = headTop - 6 + lineHeight(titleStyle);
  const said = [`Printed ${head.printedOn}`, head.shop.name, head.shop.lines.join(', ')];
  for (const text of said.filter((part) => part !== '')) {
    const line = shortened(doc, text, words, smallStyle);
    flow.tagged('P', () => drawLines(doc, [line], { x: left, y }, smallStyle));
    y += lineHeight(smallStyle);
  }
  const box = { x: barsX, y: headTop, height: barHeight, module: barModule };
  flow.tagged('Figure', () => drawCode128(doc, head.number, box), {
    alt: `Barcode of the order number ${head.number}`,
    bbox: [barsX, headTop, right, headTop + barHeight],
  });
  const place = { x: left, y: headTop + barHeight + 3, width: flow.width, align: 'right' } as const;
  flow.tagged('P', () => drawLines(doc, [head.number], place, numberStyle));
}

/** The bar that shows whether the paper came out at true size. */
export function checkBar(flow: Flow): void {
  const { doc, left } = flow;
  flow.needs(44);
  flow.y += 4;
  const { y } = flow;
  const draw = () => {
    doc.rect(left, y, checkBarPt, 6).fill('#000000');
  };
  flow.tagged('Figure', draw, {
    alt: 'Check bar, 4 inches long',
    bbox: [left, y, left + checkBarPt, y + 6],
  });
  flow.y += 10;
  flow.para(
    'This bar is 4 inches (101.6 mm) long. Lay a rule on it: if it differs, the paper was scaled. Print it again at 100 %.',
    smallStyle,
  );
}

export function pageFoot(doc: Doc, text: string, page: number, pages: number): void {
  const draw = () => {
    const width = doc.page.width - proofMargins.left - proofMargins.right;
    const box = { x: proofMargins.left, y: doc.page.height - 40, width };
    drawLines(doc, [shortened(doc, text, width * 0.7, smallStyle)], box, smallStyle);
    drawLines(doc, [`page ${page} of ${pages}`], { ...box, align: 'right' }, smallStyle);
  };
  artifact(doc, draw, 'Pagination');
}
