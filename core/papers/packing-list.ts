import { drawCautions } from './cautions.ts';
import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import type { TextStyle } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet } from './sheet.ts';
import { drawTable } from './table.ts';

export interface PackingListData {
  format: 'letter' | 'a4';
  copy: 'parcel' | 'office';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  /** Empty: the shop's own bow. */
  customerName: string;
  /** What lies in the box, and what is known of it; the last column is ticked by hand. */
  items: { what: string; about: string }[];
  cautions: string[];
}

const nameStyle: TextStyle = { font: fonts.semibold, size: 12 };
/** Room for a tick with a pencil, points. */
const tickRow = 25;

const headOf = (data: PackingListData): PlainHead => ({
  title: 'Packing list',
  number: data.number,
  made: `${data.copy === 'parcel' ? 'Copy for the box' : 'Office copy'}, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.customerName,
});

function body(flow: Flow, data: PackingListData): void {
  plainFirstHead(flow, headOf(data));
  if (data.customerName !== '') flow.para(`For ${data.customerName}`, nameStyle);
  flow.heading('In the box', tickRow * 2);
  drawTable(flow, {
    columns: [
      { head: 'What', share: 46, names: true },
      { head: 'About it', share: 30 },
      { head: 'Packed', share: 12 },
      { head: 'Unpacked', share: 12 },
    ],
    rows: data.items.map(({ what, about }) => [what, about]),
    rowHeight: tickRow,
  });
  flow.heading('Packed', tickRow * 2);
  drawTable(flow, {
    columns: [
      { head: 'By', share: 60 },
      { head: 'Date', share: 40 },
    ],
    rows: [['', '']],
    rowHeight: tickRow,
  });
  flow.heading('When you unpack it', 40);
  drawCautions(flow, data.cautions);
}

/**
 * What lies in the box beside the bow, to tick when packed and when unpacked.
 * @throws ShopError UNPRINTABLE
 */
export function packingListPdf(data: PackingListData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} packing list`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => body(new Flow(doc, root), shown),
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
