import type { PaperPdf, Party, ShippingTagData } from './data.ts';
import { drawFitted, fitText } from './fit.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import { drawLines, lineHeight, type TextStyle } from './lines.ts';
import { makeSheet, quiet } from './sheet.ts';
import { tagBars, tagCorner, tagMargin } from './tag-parts.ts';

const barHeight = 58;
const gap = 6;
const fromHeight = 72;

const labelStyle: TextStyle = { font: fonts.regular, size: 8, color: quiet };
const numberStyle: TextStyle = { font: fonts.bold, size: 18 };
const fragileStyle: TextStyle = { font: fonts.bold, size: 18 };

interface PartyPlace {
  label: string;
  /** What a refusal calls it. */
  name: string;
  width: number;
  height: number;
  sizes: readonly number[];
}

function party(flow: Flow, who: Party, place: PartyPlace): void {
  const { doc, y } = flow;
  const label = lineHeight(labelStyle);
  const fitted = fitText(doc, {
    parts: [
      { text: who.name, font: fonts.bold },
      ...who.lines.map((text) => ({ text, font: fonts.regular })),
    ],
    width: place.width,
    height: place.height - label,
    sizes: place.sizes,
    name: place.name,
    paper: 'shipping tag',
  });
  flow.tagged('H2', () => drawLines(doc, [place.label], { x: flow.left, y }, labelStyle));
  flow.tagged('P', () => drawFitted(doc, fitted, flow.left, y + label));
  flow.y = y + place.height;
}

function fragile(flow: Flow): void {
  const { doc, left, y } = flow;
  flow.tagged('P', () => drawLines(doc, ['Fragile - do not bend'], { x: left, y }, fragileStyle));
}

/** Lines of small print; value and size of the parcel are nobody's business on the way. */
function details(data: ShippingTagData): string[] {
  const open = [data.contents, data.carrier].filter((text) => text !== null);
  if (data.copy === 'parcel') return open;
  return [
    'Office copy: keep it, do not stick it on the parcel.',
    ...open,
    `Box: ${data.box ?? 'not noted'}. Declared value: ${data.declaredValue ?? 'not noted'}.`,
  ];
}

/** Head and foot of the label have their places; the address gets all that is left between. */
function drawTag(flow: Flow, data: ShippingTagData): void {
  const { doc } = flow;
  const cornerWidth = tagCorner(flow, data.number);
  party(flow, data.from, {
    label: 'From',
    name: 'sender address',
    width: flow.width - cornerWidth,
    height: fromHeight,
    sizes: [10.5, 10, 9, 8, 7, 6],
  });
  const small = fitText(doc, {
    parts: details(data).map((text) => ({ text, font: fonts.regular })),
    width: flow.width,
    height: 62,
    sizes: [10, 9, 8, 7, 6],
    name: 'carrier, contents and box text',
    paper: 'shipping tag',
  });
  const barsTop = flow.bottom - barHeight - lineHeight(numberStyle);
  const detailsTop = barsTop - 8 - small.height;
  const fragileTop = detailsTop - lineHeight(fragileStyle) - 4;
  flow.y += gap;
  flow.rule(flow.y);
  flow.y += gap;
  party(flow, data.to, {
    label: 'To',
    name: 'delivery address',
    width: flow.width,
    height: fragileTop - gap * 2 - 3 - flow.y,
    sizes: [24, 22, 20, 18, 16, 14, 13, 12, 11, 10, 9, 8, 7],
  });
  flow.rule(fragileTop - gap);
  flow.y = fragileTop;
  fragile(flow);
  if (small.height > 0) flow.tagged('P', () => drawFitted(doc, small, flow.left, detailsTop));
  flow.y = barsTop;
  tagBars(flow, data.number, barHeight);
  const under = { x: flow.left, y: barsTop + barHeight + 1, width: flow.width };
  flow.tagged('P', () => drawLines(doc, [data.number], { ...under, align: 'center' }, numberStyle));
}

/**
 * The tag on the outside of the parcel: it tells nobody on the way what lies in it. What is unsafe
 * stands on the return tag, on the bow itself.
 * 4 x 6 in or A6, always one page.
 * @throws ShopError UNPRINTABLE, also where an address is too long to print whole
 */
export function shippingTagPdf(data: ShippingTagData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: { top: tagMargin, right: tagMargin, bottom: tagMargin, left: tagMargin },
    title: `${data.number} shipping tag`,
    printedAt: data.printedAt,
    trueSize: true,
    data,
    body: (doc, root, shown) => drawTag(new Flow(doc, root), shown),
  });
}
