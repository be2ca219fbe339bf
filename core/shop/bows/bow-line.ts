import { decimal } from '../../../shared/measure.ts';
import { weightText } from '../../../shared/weight-text.ts';
import type { BowRow } from '../../storage/tables.ts';

/** One line that tells this bow from the others on the rack. */
export function bowLine(bow: BowRow): string {
  const length = bow.amo_length_in === null ? '' : ` ${decimal(bow.amo_length_in, 2)}"`;
  const takeDown = bow.take_down === 'one-piece' ? '' : ' take-down';
  const name = [bow.maker, bow.model].filter((part) => part !== '').join(' ');
  const marked = markedWeight(bow);
  return [`${bow.kind}${length}${takeDown}`, name, marked ? `marked ${marked}` : '']
    .filter((part) => part !== '')
    .join(', ');
}

/** The weight as marked on the bow, with the draw and reference it was marked at, or null. */
export function markedWeight(bow: BowRow): string | null {
  if (bow.marked_weight_lbf === null) return null;
  if (bow.marked_draw_in === null) return `${decimal(bow.marked_weight_lbf)}#, draw not marked`;
  return weightText(bow.marked_weight_lbf, bow.marked_draw_in, bow.marked_draw_reference);
}
