import type { DrawReference, GlassHow, Limb } from '../../shared/bows.ts';
import type { Row } from './row.ts';

export type FacingMaterial =
  | 'E-glass'
  | 'clear over veneer'
  | 'carbon'
  | 'wood'
  | 'bamboo'
  | 'unknown';

export interface BowRow extends Row {
  customer_id: string | null;
  kind: 'longbow' | 'hybrid' | 'recurve';
  construction: 'glass-laminated' | 'all-wood' | 'other';
  take_down: 'one-piece' | 'sleeve' | 'bolted three-piece';
  hand: 'right' | 'left' | 'unknown';
  maker: string;
  model: string;
  serial: string;
  amo_length_in: number | null;
  marked_weight_lbf: number | null;
  marked_draw_in: number | null;
  marked_draw_reference: DrawReference;
  max_safe_draw_in: number | null;
  back_facing: FacingMaterial;
  belly_facing: FacingMaterial;
  back_glass_made_in: number | null;
  back_glass_now_in: number | null;
  back_glass_how: GlassHow;
  belly_glass_made_in: number | null;
  belly_glass_now_in: number | null;
  belly_glass_how: GlassHow;
  core_wood: string;
  moisture_pct: number | null;
  edge_radius_in: number | null;
  low_stretch_tips: 'yes' | 'no' | 'unknown';
  tip_to_tip_in: number | null;
  profile: 'straight' | 'reflex-deflex' | 'recurve' | 'unknown';
  recurve_depth_in: number | null;
  throat_to_fade_in: number | null;
  limb_pad_deg: number | null;
  upper_fade_in: number | null;
  upper_limb_in: number | null;
  lower_fade_in: number | null;
  lower_limb_in: number | null;
  brace_low_in: number | null;
  brace_high_in: number | null;
  /** Whether it holds wood or horn of a species whose trade is controlled. */
  listed_species: 'none' | 'listed' | 'unknown';
  notes: string;
  created_at: string;
}

export interface LimbSetRow extends Row {
  bow_id: string;
  name: string;
  upper_serial: string;
  lower_serial: string;
  amo_length_in: number | null;
  marked_weight_lbf: number | null;
  marked_draw_in: number | null;
  marked_draw_reference: DrawReference;
  riser_name: string;
  riser_length_in: number | null;
  riser_pad_deg: number | null;
  notes: string;
  created_at: string;
}

export interface GeometryRow extends Row {
  bow_id: string;
  limb_set_id: string | null;
  order_id: string | null;
  version: number;
  measured_at: string;
  person_id: string;
  note: string;
  struck_reason: string | null;
}

export interface GeometryStationRow extends Row {
  geometry_id: string;
  limb: Limb;
  from_fade_in: number;
  width_in: number;
  thickness_in: number | null;
  surface: 'bare' | 'over-finish';
}

export interface BowTables {
  bow: BowRow;
  limb_set: LimbSetRow;
  geometry: GeometryRow;
  geometry_station: GeometryStationRow;
}
