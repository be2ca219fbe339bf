import type { DrawReference } from '../../shared/bows.ts';
import type { Answer, Channel, ConsentKind } from '../../shared/consents.ts';
import type { EntryItem } from '../../shared/entries.ts';
import type { Role } from '../../shared/people.ts';
import type { Stage } from '../../shared/stages.ts';

type Flag = 0 | 1;

/** Every row a command writes carries an id and a version that grows with each change. */
interface Row {
  id: string;
  row_version: number;
}

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
  facing: 'E-glass' | 'clear over veneer' | 'carbon' | 'wood' | 'bamboo' | 'unknown';
  notes: string;
  created_at: string;
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
  created_at: string;
}

export interface HoldRow extends Row {
  order_id: string;
  kind: 'customer' | 'material' | 'claim' | 'other';
  reason: string;
  since: string;
  remind_on: string | null;
  released_at: string | null;
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
}

export interface PaperRow extends Row {
  order_id: string;
  kind: 'work-order' | 'shipping-tag';
  format: string;
  copy: string;
  action: 'printed' | 'saved';
  file_name: string;
  pages: number;
  sha256: string;
  order_row_version: number;
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
export interface RecordTables {
  shop: ShopRow;
  person: PersonRow;
  customer: CustomerRow;
  bow: BowRow;
  shop_order: OrderRow;
  hold: HoldRow;
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
