import type { Flag, Row } from './row.ts';

export interface ConsumableRow extends Row {
  name: string;
  category:
    | 'abrasive'
    | 'solvent'
    | 'finish'
    | 'hardener'
    | 'thinner'
    | 'ink'
    | 'string'
    | 'overlay'
    | 'other';
  unit: 'sheet' | 'disc' | 'mL' | 'fl oz' | 'g' | 'each';
  grit_json: string | null;
  barcode: string;
  shelf: string;
  weekly_use: number | null;
  weekly_use_spread: number | null;
  wait_weeks: number | null;
  wait_weeks_spread: number | null;
  run_out_percent: number | null;
  order_quantity: number | null;
  on_order: number;
  /** Days it keeps once opened; null where opening changes nothing. */
  opened_days: number | null;
  hazards_json: string;
  note: string;
  active: Flag;
}

export interface LotRow extends Row {
  consumable_id: string;
  /** As printed on it; empty where none is. */
  number: string;
  /** Of the shop's own label: `L` and digits. */
  barcode: string;
  received_on: string;
  expires_on: string | null;
  opened_on: string | null;
  /** What the container cost. */
  cost_cents: number | null;
  note: string;
}

export interface StockMoveRow extends Row {
  consumable_id: string;
  lot_id: string;
  kind: 'received' | 'issued' | 'counted' | 'discarded' | 'returned' | 'undone';
  /** In above 0, out below, in the consumable's unit. */
  quantity: number;
  order_id: string | null;
  batch_id: string | null;
  reason: string;
  at: string;
  person_id: string;
}

export interface FinishSystemRow extends Row {
  name: string;
  kind: 'two-part' | 'one-part' | 'aerosol' | 'hand-rubbed-oil';
  sheet_json: string;
  resin_id: string | null;
  hardener_id: string | null;
  thinner_id: string | null;
  active: Flag;
}

export interface OrderFinishRow extends Row {
  order_id: string;
  finish_system_id: string;
  /** The sheet as it was when it was chosen. */
  sheet_json: string;
  chosen_at: string;
  person_id: string;
}

export interface BatchRow extends Row {
  finish_system_id: string;
  sheet_json: string;
  name: string;
  mixed_at: string;
  mix_f: number;
  resin_g: number | null;
  hardener_g: number | null;
  thinner_g: number | null;
  resin_ml: number | null;
  hardener_ml: number | null;
  thinner_ml: number | null;
  usable_from: string;
  usable_until: string;
  discarded_at: string | null;
  discarded_why: string;
  note: string;
  person_id: string;
}

export interface AirReadingRow extends Row {
  at: string;
  air_f: number;
  humidity_percent: number;
  surface_f: number | null;
  dew_point_f: number;
  note: string;
  person_id: string;
  struck_reason: string | null;
}

export interface SpraySessionRow extends Row {
  finish_system_id: string;
  batch_id: string | null;
  lot_id: string | null;
  air_reading_id: string | null;
  at: string;
  note: string;
  override_reason: string | null;
  person_id: string;
}

export interface CoatRow extends Row {
  session_id: string;
  order_id: string;
  bow_id: string;
  purpose: 'seal' | 'first-clear' | 'clear' | 'oil';
  sections_json: string;
  /** How many coats this entry stands for. */
  coats: number;
  wet_mil: number | null;
  dry_mil: number | null;
  scuffed_json: string | null;
  hung_since: string | null;
  at: string;
  struck_reason: string | null;
}

export interface SurfaceReadingRow extends Row {
  order_id: string;
  at: string;
  surface_f: number;
  person_id: string;
}

export interface SandingRow extends Row {
  order_id: string;
  bow_id: string;
  section: string;
  substrate: 'glass' | 'wood' | 'overlay';
  grit_json: string;
  strokes: number | null;
  wiped: Flag;
  is_last: Flag;
  note: string;
  at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface FinishTables {
  consumable: ConsumableRow;
  lot: LotRow;
  stock_move: StockMoveRow;
  finish_system: FinishSystemRow;
  order_finish: OrderFinishRow;
  batch: BatchRow;
  air_reading: AirReadingRow;
  spray_session: SpraySessionRow;
  coat: CoatRow;
  surface_reading: SurfaceReadingRow;
  sanding: SandingRow;
}
