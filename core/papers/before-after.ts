import { type StripFacts, weightStrip } from '../../shared/weight-strip.ts';
import { drawPhotographs } from './before-after-photographs.ts';
import type { PaperPdf, Party } from './data.ts';
import { bodyStyle, Flow } from './flow.ts';
import { fonts } from './fonts.ts';
import type { TextStyle } from './lines.ts';
import { type PlainHead, plainFirstHead, plainHeadAndFoot, plainMargins } from './plain-head.ts';
import { makeSheet, quiet } from './sheet.ts';
import { drawTable } from './table.ts';
import { drawWeightStrip, weightStripHeight } from './weight-strip.ts';

export interface BeforeAfterPhotograph {
  label: 'Before' | 'After';
  /** Day and caption, as printed under it. */
  words: string;
  /** Upright, without anything the camera noted; JPEG as base64. */
  jpeg: string;
  widthPx: number;
  heightPx: number;
}

export interface BeforeAfterData {
  format: 'letter' | 'a4';
  copy: 'customer';
  /** Instant, ISO-8601 UTC. */
  printedAt: string;
  shop: Party & { phone: string; email: string };
  number: string;
  customerName: string;
  bowLine: string;
  photographs: BeforeAfterPhotograph[];
  /** When and how each side was weighed; empty where it was not. */
  weighed: { before: string; after: string };
  /** One line a draw: what draw it is, weight before and after with draw and reference. */
  weights: { draw: string; before: string; after: string }[];
  strip: StripFacts;
  stripDraw: string;
  /** One line a limb: left, right, total width, belly, back. */
  removed: { limb: string; cells: string[] }[];
  /** Work noted in words, or that nothing came off. */
  removedWords: string[];
  facts: { label: string; before: string; after: string }[];
  finished: [string, string][];
  /** Only where an acknowledgement is on record. */
  acknowledged: string | null;
}

const smallStyle: TextStyle = { font: fonts.regular, size: 8.5, color: quiet };
const bowStyle: TextStyle = { font: fonts.semibold, size: 12 };

function weights(flow: Flow, data: BeforeAfterData): void {
  flow.heading('Measured', 80);
  drawTable(flow, {
    columns: [
      { head: 'What', share: 34, names: true },
      { head: `Before${data.weighed.before}`, share: 33 },
      { head: `After${data.weighed.after}`, share: 33 },
    ],
    rows: [
      ...data.weights.map(({ draw, before, after }) => [`Weight, ${draw}`, before, after]),
      ...data.facts.map(({ label, before, after }) => [label, before, after]),
    ],
  });
  const { text } = weightStrip(data.strip);
  flow.needs(weightStripHeight + 20);
  const box = { x: flow.left, y: flow.y + 4, width: flow.width };
  flow.tagged('Figure', () => drawWeightStrip(flow.doc, data.strip, box), {
    alt: `Weight strip at ${data.stripDraw}: ${text}`,
    bbox: [box.x, box.y, box.x + box.width, box.y + weightStripHeight],
  });
  flow.y = box.y + weightStripHeight + 2;
  flow.para(`At ${data.stripDraw}: ${text}`, smallStyle);
}

function removed(flow: Flow, data: BeforeAfterData): void {
  flow.heading('What came off');
  drawTable(flow, {
    columns: [
      { head: 'Limb', share: 12, names: true },
      { head: 'Left side, at most', share: 19 },
      { head: 'Right side, at most', share: 19 },
      { head: 'Width in total, at most', share: 24 },
      { head: 'Belly face', share: 13 },
      { head: 'Back face', share: 13 },
    ],
    rows: data.removed.map(({ limb, cells }) => [limb, ...cells]),
  });
  for (const words of data.removedWords) flow.para(words);
  if (data.removed.length > 0) {
    flow.para(
      'Left and right with the back up and the tip away; faces in thousandths of an inch.',
      smallStyle,
    );
  }
}

function finished(flow: Flow, data: BeforeAfterData): void {
  if (data.finished.length > 0) flow.heading('Work and finish');
  drawTable(flow, {
    columns: [
      { head: '', share: 34, names: true },
      { head: '', share: 66 },
    ],
    rows: data.finished,
    plain: true,
    gapsAs: 3,
  });
  if (data.acknowledged !== null) flow.para(data.acknowledged, bodyStyle);
}

const headOf = (data: BeforeAfterData): PlainHead => ({
  title: 'Before and after',
  number: data.number,
  made: `Customer copy, printed ${data.printedAt.slice(0, 10)}`,
  shop: data.shop,
  about: data.customerName,
});

/**
 * What was done to a bow, for its owner, Letter or A4: what was measured, and no promise.
 * @throws ShopError UNPRINTABLE
 */
export function beforeAfterPdf(data: BeforeAfterData): Promise<PaperPdf> {
  // Pictures are no text: they are not asked for glyphs.
  const { photographs } = data;
  return makeSheet({
    size: data.format,
    margins: plainMargins,
    title: `${data.number} before and after`,
    printedAt: data.printedAt,
    trueSize: false,
    data: { ...data, photographs: photographs.map((each) => ({ ...each, jpeg: '' })) },
    body: (doc, root, shown) => {
      const flow = new Flow(doc, root);
      plainFirstHead(flow, headOf(shown));
      flow.para(shown.bowLine, bowStyle);
      if (shown.customerName !== '') flow.para(`For ${shown.customerName}`);
      drawPhotographs(
        flow,
        shown.photographs.map((each, i) => ({ ...each, jpeg: photographs[i]?.jpeg ?? '' })),
      );
      weights(flow, shown);
      removed(flow, shown);
      finished(flow, shown);
    },
    onEveryPage: (doc, shown, page, pages) => plainHeadAndFoot(doc, headOf(shown), page, pages),
  });
}
