import { cautionsHeight, drawCautions } from './cautions.ts';
import type { PaperPdf, Party } from './data.ts';
import { Flow } from './flow.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet } from './sheet.ts';
import { drawTable, penRow } from './table.ts';

/** What a form asks; an empty answer is a blank for the pen. */
export type CustomsRow = [asked: string, answer: string];

export interface CustomsNoteData {
  format: 'letter' | 'a4';
  copy: 'parcel' | 'office';
  /** Instant, ISO-8601 UTC. The same data gives the same bytes. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  to: Party;
  /** Why it crosses the border, one sentence each. */
  statement: string[];
  bow: CustomsRow[];
  work: CustomsRow[];
  values: CustomsRow[];
  /** For the shop, so on the office copy only. */
  cautions: string[];
}

const headOf = (data: CustomsNoteData): PlainHead => ({
  title: 'Customs note',
  number: data.number,
  made: `${data.copy === 'parcel' ? 'Copy for the parcel' : 'Office copy'}, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.to.name,
});

function rowsOf(flow: Flow, title: string, rows: readonly CustomsRow[]): void {
  flow.heading(title, penRow * 3);
  drawTable(flow, {
    columns: [
      { head: '', share: 32, names: true },
      { head: '', share: 68 },
    ],
    headless: true,
    rows,
    blankHeight: penRow,
  });
}

/** What no record of the shop says, by name: a blank must not be taken for "none". */
function stillBlank(flow: Flow, data: CustomsNoteData): void {
  const blank = [...data.bow, ...data.work, ...data.values].filter(([, answer]) => answer === '');
  if (blank.length === 0) return;
  const names = blank.map(([asked]) => asked).join('; ');
  flow.para(`Not on record, to be filled in by hand: ${names}.`);
}

function body(flow: Flow, data: CustomsNoteData): void {
  plainFirstHead(flow, headOf(data));
  flow.para(data.statement.join(' '));
  flow.y += 4;
  drawTable(flow, {
    columns: [
      { head: 'From', share: 50 },
      { head: 'To', share: 50 },
    ],
    rows: [
      [
        [data.shop.name, ...data.shop.lines].join('\n'),
        [data.to.name, ...data.to.lines].join('\n'),
      ],
    ],
  });
  rowsOf(flow, 'The bow', data.bow);
  rowsOf(flow, 'The work', data.work);
  rowsOf(flow, 'Values', data.values);
  stillBlank(flow, data);
  flow.heading('Signed for the shop', penRow * 2);
  drawTable(flow, {
    columns: [
      { head: 'Name', share: 36 },
      { head: 'Signature', share: 40 },
      { head: 'Date', share: 24 },
    ],
    rows: [['', '', '']],
    rowHeight: penRow,
  });
  if (data.copy === 'parcel') return;
  flow.heading('Before it is posted', cautionsHeight(flow, data.cautions));
  drawCautions(flow, data.cautions);
}

/**
 * What the customs of another country is told of a bow on its way home, beside the carrier's form.
 * @throws ShopError UNPRINTABLE
 */
export function customsNotePdf(data: CustomsNoteData): Promise<PaperPdf> {
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} customs note`,
    printedAt: data.printedAt,
    trueSize: false,
    data,
    body: (doc, root, shown) => body(new Flow(doc, root), shown),
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
