import type { EntryItem } from '../../shared/entries.ts';
import type { GoingHome, Stage } from '../../shared/stages.ts';
import type { Flag, Row } from './row.ts';

export interface OrderRow extends Row {
  number: string;
  customer_id: string | null;
  bow_id: string | null;
  services_json: string;
  route_json: string;
  stage: Stage;
  stage_since: string;
  target_weight_lbf: number | null;
  target_draw_in: number | null;
  tiller_target: string;
  promised_on: string | null;
  estimate_cents: number | null;
  inscription: string;
  ship_to: string;
  private_notes: string;
  customer_notes: string;
  limb_set_id: string | null;
  came_as: 'whole-bow' | 'limbs-only';
  /** Why the bow goes home without the work being finished; null on the route of work. */
  going_home: GoingHome | null;
  going_home_reason: string;
  /** Of the day the price was made up; null while no line was written. */
  tax_name: string | null;
  tax_rate_ppm: number | null;
  created_at: string;
}

export interface OrderHistoryRow extends Row {
  order_id: string;
  at: string;
  person_id: string;
  kind: string;
  summary: string;
  from_stage: Stage | null;
  to_stage: Stage | null;
  reason: string | null;
}

export interface HoldRow extends Row {
  order_id: string;
  kind: 'customer' | 'material' | 'claim' | 'other';
  reason: string;
  since: string;
  remind_on: string | null;
  released_at: string | null;
  storage_fee_on: string | null;
  abandoned_on: string | null;
}

export interface ReminderRow extends Row {
  hold_id: string;
  sent_at: string;
  how: string;
  note: string;
  person_id: string;
}

export interface ArrivalRow extends Row {
  order_id: string;
  opened_on: string;
  came_by: string;
  packaging: string;
  packaging_kept: Flag;
  packaging_damaged: Flag;
  condition: string;
  nothing_came_along: Flag;
  resting_since: string | null;
  looked_over: Flag;
  strung: 'not-yet' | 'strung' | 'not-strung';
  not_strung_because: string;
  alignment: string;
  brace_in: number | null;
  tiller_in: number | null;
  string_track: string;
  note: string;
  person_id: string;
  completed_at: string | null;
  completed_by: string | null;
}

export interface BelongingRow extends Row {
  order_id: string;
  what: string;
  back_at: string | null;
  back_by: string | null;
  back_note: string;
}

export interface EntryRow extends Row {
  order_id: string;
  item: EntryItem;
  outcome: 'ok' | 'not-ok';
  done_on: string;
  person_id: string;
  note: string;
  override_reason: string | null;
  recorded_at: string;
  struck_reason: string | null;
}

export interface FindingRow extends Row {
  order_id: string;
  bow_id: string | null;
  grade: 'cosmetic' | 'watch' | 'stop';
  place: string;
  note: string;
  found_at: string;
  found_by: string;
  resolved_at: string | null;
  resolved_how: string | null;
}

export interface UndershootRow extends Row {
  order_id: string;
  measured_lbf: number;
  target_lbf: number;
  draw_in: number;
  offer: 'accept' | 'price' | 'remedy';
  price_change_cents: number;
  words: string;
  proposed_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface IncidentRow extends Row {
  order_id: string;
  bow_id: string | null;
  kind: 'damaged-here' | 'damaged-in-transit' | 'lost-in-transit';
  happened_on: string;
  what: string;
  finding_id: string | null;
  found_at: string;
  found_by: string;
  claim_with: string;
  claim_until: string | null;
  claim_filed_on: string | null;
  claim_number: string;
  owner_told_on: string | null;
  owner_told_how: string;
  remedy: string;
  settled_at: string | null;
  settled_how: string;
}

export interface ShipmentRow extends Row {
  order_id: string;
  direction: 'in' | 'out';
  carrier_id: string | null;
  carrier_name: string;
  shape: 'box' | 'round-tube' | 'three-sided-tube';
  length_in: number | null;
  width_in: number | null;
  height_in: number | null;
  weight_lb: number | null;
  declared_cents: number | null;
  value_evidence: string;
  insured: Flag;
  tracking: string;
  shipped_on: string | null;
  delivered_on: string | null;
  /** What the carrier's limits made of the parcel when it was measured, as it was shown. */
  assessment_json: string | null;
  note: string;
  recorded_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface OrderTables {
  shop_order: OrderRow;
  order_history: OrderHistoryRow;
  hold: HoldRow;
  reminder: ReminderRow;
  arrival: ArrivalRow;
  belonging: BelongingRow;
  entry: EntryRow;
  finding: FindingRow;
  undershoot: UndershootRow;
  incident: IncidentRow;
  shipment: ShipmentRow;
}
