import type { DrawReference } from '../../shared/bows.ts';
import type { Flag, Row } from './row.ts';

export interface ScaleRow extends Row {
  name: string;
  resolution_lbf: number;
  active: Flag;
}

export interface ScaleCheckRow extends Row {
  scale_id: string;
  checked_at: string;
  checked_by: string;
  low_load_lbf: number;
  low_reading_lbf: number;
  high_load_lbf: number;
  high_reading_lbf: number;
}

export interface ReadingRow extends Row {
  order_id: string;
  bow_id: string;
  phase: 'arrival' | 'work' | 'after-sanding' | 'final';
  draw_reference: DrawReference;
  scale_id: string;
  rig_zero_lbf: number;
  brace_in: number;
  string_note: string;
  support_point: string;
  pull_point: string;
  tiller_in: number | null;
  temperature_f: number | null;
  flexed_first: Flag;
  note: string;
  weighed_at: string;
  person_id: string;
  scale_error_lbf: number | null;
  struck_reason: string | null;
  limb_set_id: string | null;
  riser_note: string;
  string_track: string;
  moisture_pct: number | null;
  strung_minutes: number | null;
}

export interface ReadingPullRow extends Row {
  reading_id: string;
  position: number;
  draw_in: number;
  force_lbf: number;
}

export interface ReadingTables {
  scale: ScaleRow;
  scale_check: ScaleCheckRow;
  reading: ReadingRow;
  reading_pull: ReadingPullRow;
}
