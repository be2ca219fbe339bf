import type { RemovalMethod, StringTrack } from '../../shared/bench.ts';
import type { Limb } from '../../shared/bows.ts';
import type { Sanding } from '../../shared/weight-plan.ts';
import type { Flag, Row } from './row.ts';

export interface BenchPolicyRow extends Row {
  body_json: string;
}

export interface WeightPlanRow extends Row {
  order_id: string;
  bow_id: string;
  limb_set_id: string | null;
  version: number;
  method: string;
  geometry_id: string | null;
  reading_id: string | null;
  draw_in: number;
  weight_lbf: number;
  weight_sd_lbf: number;
  target_lbf: number;
  reserve_lbf: number;
  /** What the work aims at: target, reserve and what sanding still takes. */
  stop_at_lbf: number;
  /** After sanding, with its 80 % band. */
  forecast_lbf: number;
  forecast_low_lbf: number;
  forecast_high_lbf: number;
  tiller_target_in: number;
  sanding: Sanding;
  allowance_mean_thou: number;
  allowance_sd_thou: number;
  /** How many closed jobs of the shop the allowance rests on; 0: common practice. */
  allowance_jobs: number;
  effectiveness_mean: number;
  effectiveness_sd: number;
  effectiveness_jobs: number;
  /** Part of the weight that a thousandth off both faces of both limbs takes. */
  drop_per_thou: number;
  slope_lbf_per_in: number;
  brace_lbf_per_in: number;
  input_json: string;
  method_json: string;
  response_json: string;
  confirmed_because: string;
  accepted_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface RemovalRow extends Row {
  order_id: string;
  bow_id: string;
  limb_set_id: string | null;
  plan_id: string | null;
  method: RemovalMethod;
  tool: string;
  edge_radius_in: number | null;
  /** Part of the weight that the model takes off, widths as re-measured where they were. */
  modelled_drop: number | null;
  /** One standard deviation of that part, from cutting or from the calliper. */
  drop_sd: number | null;
  forecast_lbf: number | null;
  forecast_sd_lbf: number | null;
  planned_at: string;
  done_at: string | null;
  remeasured_at: string | null;
  note: string;
  person_id: string;
  struck_reason: string | null;
}

export interface RemovalCutRow extends Row {
  removal_id: string;
  limb: Limb;
  from_fade_in: number;
  planned_left_in: number;
  planned_right_in: number;
  done_left_in: number | null;
  done_right_in: number | null;
  width_before_in: number | null;
  width_after_in: number | null;
}

export interface RemovalFaceRow extends Row {
  removal_id: string;
  limb: Limb;
  face: 'back' | 'belly';
  planned_thou: number;
  done_thou: number | null;
  measured_thou: number | null;
}

export interface GlassCheckRow extends Row {
  order_id: string;
  bow_id: string;
  removal_id: string | null;
  show_through: Flag;
  strands: Flag;
  run_out: Flag;
  exposed_core: Flag;
  outcome: 'ok' | 'not-ok';
  note: string;
  checked_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface TillerReadingRow extends Row {
  order_id: string;
  bow_id: string;
  removal_id: string | null;
  tiller_in: number;
  upper_track: StringTrack;
  lower_track: StringTrack;
  brace_in: number | null;
  note: string;
  read_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface SurpriseRow extends Row {
  order_id: string;
  reading_id: string;
  innovation_se: number;
  forecast_lbf: number;
  forecast_sd_lbf: number;
  answers_json: string;
  note: string;
  answered_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface BenchTables {
  bench_policy: BenchPolicyRow;
  weight_plan: WeightPlanRow;
  removal: RemovalRow;
  removal_cut: RemovalCutRow;
  removal_face: RemovalFaceRow;
  glass_check: GlassCheckRow;
  tiller_reading: TillerReadingRow;
  surprise: SurpriseRow;
}
