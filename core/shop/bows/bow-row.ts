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
    back_facing: fields.facing,
    belly_facing: fields.facing,
    back_glass_made_in: null,
    back_glass_now_in: null,
    back_glass_how: 'not-measured',
    belly_glass_made_in: null,
    belly_glass_now_in: null,
    belly_glass_how: 'not-measured',
    core_wood: '',
    moisture_pct: null,
    edge_radius_in: null,
    low_stretch_tips: 'unknown',
    tip_to_tip_in: null,
    profile: 'unknown',
    recurve_depth_in: null,
    throat_to_fade_in: null,
    limb_pad_deg: null,
    upper_fade_in: null,
    upper_limb_in: null,
    lower_fade_in: null,
    lower_limb_in: null,
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
    facing: row.back_facing,
    notes: row.notes,
  };
}
