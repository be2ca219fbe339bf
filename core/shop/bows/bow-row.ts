import type { Bow, BowFields } from '../../../shared/contract/bows.ts';
import type { BowRow } from '../../storage/tables.ts';

export type BowColumns = Omit<BowRow, 'id' | 'row_version' | 'customer_id' | 'created_at'>;

export function bowColumns(fields: BowFields): BowColumns {
  return {
    kind: fields.kind,
    construction: fields.construction,
    take_down: fields.takeDown,
    hand: fields.hand,
    maker: fields.maker,
    model: fields.model,
    serial: fields.serial,
    amo_length_in: fields.amoLengthIn,
    marked_weight_lbf: fields.markedWeightLbf,
    marked_draw_in: fields.markedDrawIn,
    marked_draw_reference: fields.markedDrawReference,
    max_safe_draw_in: fields.maxSafeDrawIn,
    facing: fields.facing,
    notes: fields.notes,
  };
}

export function bowOf(row: BowRow): Bow {
  return {
    id: row.id,
    rowVersion: row.row_version,
    createdAt: row.created_at,
    customerId: row.customer_id,
    kind: row.kind,
    construction: row.construction,
    takeDown: row.take_down,
    hand: row.hand,
    maker: row.maker,
    model: row.model,
    serial: row.serial,
    amoLengthIn: row.amo_length_in,
    markedWeightLbf: row.marked_weight_lbf,
    markedDrawIn: row.marked_draw_in,
    markedDrawReference: row.marked_draw_reference,
    maxSafeDrawIn: row.max_safe_draw_in,
    facing: row.facing,
    notes: row.notes,
  };
}
