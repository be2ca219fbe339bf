import type { DrawReference, GlassHow, Limb } from '../../shared/bows.ts';
import type { Answer, Channel, ConsentKind } from '../../shared/consents.ts';
import type { EntryItem } from '../../shared/entries.ts';
import type { PaperKind } from '../../shared/papers.ts';
import type { Role } from '../../shared/people.ts';
import type { GoingHome, Stage } from '../../shared/stages.ts';
import type { AgreementTables } from './agreement-tables.ts';
import type { BenchTables } from './bench-tables.ts';
import type { FinishTables } from './finish-tables.ts';
import type { Flag, Row } from './row.ts';

export type * from './agreement-tables.ts';
export type * from './bench-tables.ts';
export type * from './finish-tables.ts';

export interface AddressColumns {
  street: string;
  city: string;
  region: string;
  postal_code: string;
  country: string;
}

export interface ShopRow extends Row, AddressColumns {
  name: string;
  phone: string;
  email: string;
  paper_format: 'letter' | 'a4';
  tag_format: '4x6' | 'a6';
  contents_on_tag: Flag;
  is_demo: Flag;
  reminder_days_json: string;
  storage_fee_days: number;
  abandoned_days: number;
  tax_name: string;
  /** Parts in a million: 8.875 % is 88,750. */
  tax_rate_ppm: number;
  deposit_percent: number;
  rush_fee_cents: number;
  return_freight_cents: number;
  marking_round_lbf: number;
  arrow_grains_per_lb: number;
  care_terms: string;
  rack_slots: number;
  /** Part of the sprayed finish that ends on slender work. */
  transfer_efficiency: number;
}

export interface PersonRow extends Row {
  name: string;
  initials: string;
  role: Role;
  active: Flag;
}

export interface CustomerRow extends Row, AddressColumns {
  name: string;
  email: string;
  phone: string;
  preferred_contact: 'email' | 'phone' | 'any';
  shooting_style: 'split' | 'three-under' | 'unknown';
  own_draw_in: number | null;
  notes: string;
  created_at: string;
}

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

export interface OrderCounterRow {
  year: number;
  last: number;
}

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

export interface CarrierRow extends Row {
  name: string;
  as_of: string;
  profile_json: string;
  claim_days: number;
  active: Flag;
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

export interface AttachmentRow extends Row {
  order_id: string | null;
  bow_id: string | null;
  finding_id: string | null;
  incident_id: string | null;
  shipment_id: string | null;
  about: 'bow' | 'packaging' | 'finding' | 'incident' | 'value' | 'message' | 'other';
  file_name: string;
  media_type: string;
  sha256: string;
  bytes: number;
  width_px: number | null;
  height_px: number | null;
  taken_at: string | null;
  has_location: Flag;
  caption: string;
  added_at: string;
  person_id: string;
  struck_reason: string | null;
}

export interface TaskRow extends Row {
  order_id: string | null;
  what: string;
  due_on: string;
  for_person_id: string | null;
  created_at: string;
  created_by: string;
  done_at: string | null;
  done_by: string | null;
  done_note: string;
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

export interface ConsentRow extends Row {
  order_id: string;
  kind: ConsentKind;
  text: string;
  text_sha256: string;
  subject: string;
  subject_sha256: string;
  asked_at: string;
  asked_how: string;
  asked_by: string;
  /** The wording of the shop it was made from; null where it was written before there were any. */
  wording_id: string | null;
}

export interface ConsentAnswerRow extends Row {
  consent_id: string;
  answer: Answer;
  answered_at: string;
  channel: Channel;
  answered_by: string;
  contact: string;
  words: string;
  cost_change_cents: number;
  text_sha256: string;
  recorded_at: string;
  recorded_by: string;
  /** Strokes as drawn on the screen. */
  signature_json: string | null;
  /** The message or photograph that shows the answer. */
  attachment_id: string | null;
}

export interface PaperRow extends Row {
  order_id: string | null;
  /** What it is about where that is not an order: a bow, a lot, a batch. */
  about_id: string | null;
  kind: PaperKind;
  format: string;
  copy: string;
  action: 'printed' | 'saved';
  file_name: string;
  pages: number;
  sha256: string;
  /** Of everything printed on it but the date: another one means the paper would come out different. */
  facts_sha256: string;
  order_row_version: number | null;
  made_at: string;
  person_id: string;
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

/** Tables that a command may write, with a history of every row. */
export interface RecordTables extends BenchTables, AgreementTables, FinishTables {
  shop: ShopRow;
  person: PersonRow;
  customer: CustomerRow;
  bow: BowRow;
  limb_set: LimbSetRow;
  geometry: GeometryRow;
  geometry_station: GeometryStationRow;
  shop_order: OrderRow;
  hold: HoldRow;
  reminder: ReminderRow;
  arrival: ArrivalRow;
  belonging: BelongingRow;
  undershoot: UndershootRow;
  incident: IncidentRow;
  carrier: CarrierRow;
  shipment: ShipmentRow;
  attachment: AttachmentRow;
  task: TaskRow;
  entry: EntryRow;
  finding: FindingRow;
  scale: ScaleRow;
  scale_check: ScaleCheckRow;
  reading: ReadingRow;
  reading_pull: ReadingPullRow;
  consent: ConsentRow;
  consent_answer: ConsentAnswerRow;
  paper: PaperRow;
  order_history: OrderHistoryRow;
}

export interface CommandRow {
  id: string;
  name: string;
  person_id: string;
  device: string;
  at: string;
  order_id: string | null;
  bow_id: string | null;
  customer_id: string | null;
  result_json: string;
  /** The command this one took back. */
  undoes_id: string | null;
}

export interface CommandChangeRow {
  command_id: string;
  seq: number;
  table_name: string;
  row_id: string;
  before_json: string | null;
  after_json: string | null;
  row_version: number;
}

export interface DraftRow {
  id: string;
  kind: 'intake';
  person_id: string;
  body_json: string;
  saved_at: string;
}

export interface SearchRow {
  kind: 'customer' | 'bow' | 'order';
  ref: string;
  words: string;
  rank: number;
}

export interface Tables extends RecordTables {
  order_counter: OrderCounterRow;
  command: CommandRow;
  command_change: CommandChangeRow;
  draft: DraftRow;
  search: SearchRow;
}
