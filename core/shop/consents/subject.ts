import type { ConsentKind } from '../../../shared/consents.ts';
import { weightAtDraw } from '../../../shared/measure.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { InscriptionRow } from '../../storage/agreement-tables.ts';
import type { FindingRow, OrderRow, PriceLineRow, UndershootRow } from '../../storage/tables.ts';
import { servicesOf } from '../orders/order-json.ts';
import { priceLinesText } from '../prices/price-text.ts';
import type { StoredReading } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';

export interface SubjectRows {
  order: OrderRow;
  findings: readonly FindingRow[];
  readings: readonly StoredReading[];
  undershoots: readonly UndershootRow[];
  /** Lines of the price that stand, in their order. */
  priceLines: readonly PriceLineRow[];
  /** How the lines are put on the bow; null where nobody said. */
  layout: InscriptionRow | null;
}

function scopeText(order: OrderRow): string {
  const services = servicesOf(order).map((service) => serviceLabels[service]);
  return `Work: ${services.join(', ')}`;
}

function targetText(order: OrderRow): string {
  if (order.target_weight_lbf === null || order.target_draw_in === null) return 'Target: none';
  return `Target: ${weightAtDraw(order.target_weight_lbf, order.target_draw_in)}`;
}

export function dollars(cents: number): string {
  return `$${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;
}

function priceText({ order, priceLines }: SubjectRows): string {
  if (priceLines.length > 0) return priceLinesText(order, priceLines);
  return order.estimate_cents === null
    ? 'Price: not set'
    : `Price: ${dollars(order.estimate_cents)}`;
}

function watchText(findings: readonly FindingRow[]): string {
  return findings
    .filter((finding) => finding.grade === 'watch' && finding.resolved_at === null)
    .map((finding) => `${finding.place}: ${finding.note}`)
    .join('\n');
}

function sandedText({ order, readings }: SubjectRows): string {
  const last = readings
    .filter((reading) => reading.struck_reason === null && reading.phase === 'after-sanding')
    .at(-1);
  if (last === undefined || order.target_draw_in === null) return 'Measured: not yet';
  const force = weightAtAmoDraw(last.pulls, last.draw_reference, order.target_draw_in);
  return force === null
    ? 'Measured: not yet'
    : `Measured: ${weightAtDraw(force, order.target_draw_in)}`;
}

function offerText({ undershoots }: SubjectRows): string {
  const offer = undershoots.filter((row) => row.struck_reason === null).at(-1);
  if (offer === undefined) return 'Offer: none yet';
  const lower = -offer.price_change_cents;
  const what = [
    offer.offer === 'accept' ? 'the bow stays as it is, at the agreed price.' : '',
    offer.words,
    lower === 0 ? '' : `The price falls by ${dollars(lower)}.`,
  ];
  return `Offer: ${what.filter((words) => words !== '').join('\n')}`;
}

/**
 * The lines, and before them where they stand and what becomes of the maker's own mark: a customer
 * sees all three on the bow for good. Ink, letter height, surface and manner are the shop's craft,
 * and a change of pen must not send the office back for another answer.
 */
function markingText({ order, layout }: SubjectRows): string {
  const lines = `To be written on the bow:\n${order.inscription}`;
  if (layout === null) return lines;
  const mark = layout.maker_mark === '' ? '' : `Maker's own mark: ${layout.maker_mark}\n`;
  return `Where on the bow: ${layout.position}\n${mark}${lines}`;
}

/**
 * What each kind of consent refers to, as the records stand now. A consent holds only while
 * its frozen subject is the same, to the letter: a changed target, scope, price, inscription,
 * finding, weighing or offer outdates it.
 */
export function subjectsOf(rows: SubjectRows): Record<ConsentKind, string> {
  const { order } = rows;
  const scope = scopeText(order);
  const target = targetText(order);
  return {
    'alteration-acknowledgement': `${scope}\n${target}`,
    'marking-approval': markingText(rows),
    'price-and-scope': `${scope}\n${target}\n${priceText(rows)}`,
    'watch-findings': watchText(rows.findings),
    'expected-weight-loss': `${scope}\n${target}`,
    undershoot: `${target}\n${sandedText(rows)}\n${offerText(rows)}`,
  };
}
